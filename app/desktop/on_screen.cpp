#include "app/desktop/on_screen.h"

#include <algorithm>

namespace treadwell {

namespace {

constexpr QSize kGrip{160, 60};  // pixels of the window's head that a finger can take hold of

}  // namespace

QRect heldOnScreen(const QRect& window, const QList<QRect>& screens) {
    const QRect head{window.topLeft(), QSize{window.width(), kGrip.height()}};
    const auto holds = [&head](const QRect& screen) {
        const QRect seen = screen.intersected(head);
        return seen.width() >= std::min(kGrip.width(), head.width()) && seen.height() >= kGrip.height() / 2;
    };
    if (screens.isEmpty() || std::any_of(screens.begin(), screens.end(), holds)) return window;
    QRect held{QPoint{}, window.size().boundedTo(screens.front().size())};
    held.moveCenter(screens.front().center());
    return held;
}

}  // namespace treadwell
