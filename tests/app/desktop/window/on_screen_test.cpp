#include "app/desktop/on_screen.h"

#include <gtest/gtest.h>

namespace treadwell {
namespace {

const QRect kLaptop{0, 0, 1366, 768};
const QRect kBeside{1366, 0, 1920, 1080};

TEST(HeldOnScreen, AWindowThatIsInSightStays) {
    const QRect window{1500, 40, 1280, 800};
    EXPECT_EQ(heldOnScreen(window, {kLaptop, kBeside}), window);
    const QRect half{1200, 700, 1280, 800};
    EXPECT_EQ(heldOnScreen(half, {kLaptop}), half) << "its head can be taken hold of";
}

TEST(HeldOnScreen, AWindowWhoseScreenIsGoneComesBackWhole) {
    const QRect window{1500, 40, 1280, 800};
    const QRect held = heldOnScreen(window, {kLaptop});
    EXPECT_TRUE(kLaptop.contains(held));
    EXPECT_EQ(held.width(), 1280);
    EXPECT_EQ(held.height(), 768) << "no higher than the screen";
}

TEST(HeldOnScreen, WithoutAScreenNothingMoves) {
    const QRect window{1500, 40, 1280, 800};
    EXPECT_EQ(heldOnScreen(window, {}), window);
}

}  // namespace
}  // namespace treadwell
