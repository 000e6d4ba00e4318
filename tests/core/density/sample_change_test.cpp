#include "core/density/sample_change.h"

#include "core/density/codes.h"
#include "core/samples/codes.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace treadwell::density {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

entries::DryMatterSample sampleOf(double percent) {
    return {DryMatter::fromPercent(percent), {}, {}, {}, {}};
}

/// 120 t/h for two hours from noon under one tractor, without a sample.
SeasonMaker unsampled() {
    SeasonMaker maker;
    const Instant start = at("2026-02-10T08:00:00Z");
    maker.add(entries::SiloDefined{someSilo()}, start);
    maker.add(entries::TractorDefined{someTractor(1, 14)}, start);
    maker.add(someWork(1, farm::Activity::packing), start);
    for (int i = 0; i < 20; ++i) maker.add(someLoad(12), at("2026-02-10T12:00:00Z") + i * 6min);
    return maker;
}

SampleChange changeBy(SeasonMaker& maker, Instant taken, double percent, Instant now) {
    const auto before = season::Season::fold(maker.entries);
    maker.add(sampleOf(percent), taken);
    return changeBySample(before, season::Season::fold(maker.entries), {}, now);
}

bool says(const SampleChange& change, Code code) {
    const auto messages = messagesOf(change, farm::SiteRules{});
    return std::ranges::any_of(messages, [&](const Message& message) { return message.code == code; });
}

TEST(SampleChange, TheFirstSampleOfADayMovesItsLoadsAndTheSilo) {
    SeasonMaker maker = unsampled();
    const Instant now = at("2026-02-10T14:00:00Z");
    const SampleChange change = changeBy(maker, now, 30, now);
    EXPECT_FALSE(change.cropBefore);
    ASSERT_TRUE(change.cropNow);
    EXPECT_NEAR(change.cropNow->dryMatter.mean.percent(), 30, 1e-9);
    EXPECT_EQ(change.loads, 20);
    ASSERT_TRUE(change.siloBefore && change.siloNow);
    EXPECT_LT(change.siloNow->density.median(), change.siloBefore->density.median())
        << "wetter crop has fewer minutes for its dry matter";
    EXPECT_TRUE(says(change, code::sampleFirst));
    EXPECT_TRUE(says(change, code::dryMatterWet));
    EXPECT_TRUE(says(change, code::sampleMovedSilo));
}

TEST(SampleChange, ALaterSampleMovesWhatIsToComeAlone) {
    SeasonMaker maker = unsampled();
    maker.add(sampleOf(35), at("2026-02-10T11:00:00Z"));
    const Instant now = at("2026-02-10T14:00:00Z");
    const SampleChange change = changeBy(maker, now, 41, now);
    ASSERT_TRUE(change.cropBefore && change.cropNow);
    EXPECT_GT(change.cropNow->dryMatter.mean, change.cropBefore->dryMatter.mean);
    EXPECT_LT(change.cropNow->dryMatter.sd, change.cropBefore->dryMatter.sd);
    EXPECT_GT(change.cropNow->target.density, change.cropBefore->target.density) << "porosity governs";
    EXPECT_LT(change.cropNow->loose, change.cropBefore->loose) << "the same dry matter in less water";
    EXPECT_EQ(change.loads, 0);
    EXPECT_TRUE(says(change, code::sampleMovedCrop));
    EXPECT_TRUE(says(change, code::sampleMovedTarget));
    EXPECT_FALSE(says(change, code::sampleMovedSilo));
}

TEST(SampleChange, OfASeasonWithoutASiloOnlyTheCropIsTold) {
    SeasonMaker maker;
    const Instant now = at("2026-02-10T14:00:00Z");
    const SampleChange change = changeBy(maker, now, 35, now);
    EXPECT_TRUE(change.cropNow);
    EXPECT_FALSE(change.siloNow);
    EXPECT_EQ(messagesOf(change, farm::SiteRules{}).size(), 1u);
}

}  // namespace
}  // namespace treadwell::density
