#pragma once

#include "core/face/face.h"
#include "core/review/document.h"

namespace treadwell::review {

/// A silo's cores beside what was predicted, what they did to its band, and the map of the face: face::faceOf
/// of this silo at `now`.
[[nodiscard]] Document faceSheet(const season::Season& season, const farm::Silo& silo, Instant now,
                                 const face::Face& face);

/// What belongs to work at an open silo; for the sheets that go with it.
[[nodiscard]] Section faceCautionsOf(const farm::Silo& silo, Instant now);

}  // namespace treadwell::review
