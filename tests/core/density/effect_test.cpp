#include "core/density/effect.h"

#include <gtest/gtest.h>

namespace treadwell::density {
namespace {

TEST(Effect, ALossIsAsUnsureAsAGain) {
    const DryDensity low = DryDensity::fromSi(200), high = DryDensity::fromSi(240);
    const Effect gain = effectOf(low, high), loss = effectOf(high, low);
    EXPECT_EQ(gain.change, -loss.change);
    EXPECT_EQ(gain.sd, loss.sd);
    EXPECT_EQ(gain.low80, -loss.high80);
    EXPECT_GT(gain.low80, DryDensity{});
}

TEST(Effect, NoChangeIsCertain) {
    const DryDensity same = DryDensity::fromSi(200);
    EXPECT_EQ(effectOf(same, same).sd, DryDensity{});
}

}  // namespace
}  // namespace treadwell::density
