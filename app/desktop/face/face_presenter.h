#pragma once

#include "app/desktop/fill/say.h"
#include "app/desktop/samples/samples_presenter.h"
#include "app/desktop/widgets/face_map.h"
#include "core/face/face.h"
#include "core/review/feed_sheet.h"

namespace treadwell::face_page {

// From a season at a moment to what the page shows. All are pure.

[[nodiscard]] widgets::FacePicture pictureOf(const face::Face& face, const farm::Silo& silo,
                                             const fill::Speech& speech);

/// Where the faces of a silo were cored, from the open end back; cores within a metre are of one.
[[nodiscard]] std::vector<Length> facesOf(const face::Face& face);

/// What belongs beside the form that asks for cores.
[[nodiscard]] samples_page::Lines cautionsAt(const farm::Silo& silo, Instant now, const fill::Speech& speech);

/// The sheet of feeding out, or in one section why there is none.
[[nodiscard]] review::Document feedingOf(const season::Season& season, const farm::Silo& silo, Instant now,
                                         const review::FeedQuestion& question);

}  // namespace treadwell::face_page
