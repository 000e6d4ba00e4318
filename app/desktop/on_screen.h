#pragma once

#include <QList>
#include <QRect>

namespace treadwell {

/// Where a window may stay: where it is while enough of it is in sight to be taken hold of, else in the
/// middle of the first screen, no larger than that. `screens` as far as they are free; none leave it as it
/// is.
[[nodiscard]] QRect heldOnScreen(const QRect& window, const QList<QRect>& screens);

}  // namespace treadwell
