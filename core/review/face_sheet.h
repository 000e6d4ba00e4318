#pragma once

#include "core/face/face.h"
#include "core/review/document.h"

namespace treadwell::review {

/// A silo's cores beside what was predicted, what they did to its band, and the map of one face.
[[nodiscard]] Document faceSheet(const season::Season& season, const farm::Silo& silo, Instant now,
                                 std::optional<Length> along = {});

/// What belongs to work at an open silo; for the sheets that go with it.
[[nodiscard]] Section faceCautionsOf(const farm::Silo& silo, Instant now);

}  // namespace treadwell::review
