#include "core/advice/from_season.h"

#include "core/advice/advise.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

namespace treadwell::advice {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

SeasonMaker filling(int loads) {
    SeasonMaker maker;
    const Instant start = at("2026-02-10T08:00:00Z");
    maker.add(entries::SiloDefined{someSilo()}, start);
    maker.add(entries::SiloDefined{someSilo(2)}, start);
    for (std::uint8_t i = 1; i <= 3; ++i)
        maker.add(entries::TractorDefined{someTractor(i, 20 - 3 * i)}, start);
    maker.add(someWork(1, farm::Activity::packing, 0.5), start);
    maker.add(someWork(3, farm::Activity::packing, 1.0, 2), start);
    for (int i = 0; i < loads; ++i) maker.add(someLoad(12), at("2026-02-10T12:00:00Z") + i * 6min);
    return maker;
}

std::optional<AdviceSituation> situationOf(const SeasonMaker& maker) {
    const auto season = season::Season::fold(maker.entries);
    return situationFrom(season, density::readingsAt(season, kBunker, at("2026-02-10T13:54:00Z")));
}

TEST(FromSeason, TheFleetOfThisSiloAndThoseStandingBy) {
    const auto situation = situationOf(filling(20));
    ASSERT_TRUE(situation);
    EXPECT_NEAR(situation->delivery.tonnesPerHour(), 120, 1e-9);
    ASSERT_EQ(situation->tractors.size(), 2u) << "the one at the other silo is not ours to move";
    EXPECT_EQ(situation->tractors[0].share, Share::fromFraction(0.5));
    EXPECT_EQ(situation->tractors[1].activity, farm::Activity::away);
    const auto advice = advise(*situation);
    ASSERT_TRUE(advice);
    EXPECT_GT(advice->candidates.size(), 1u);
}

TEST(FromSeason, WithoutAPaceThereIsNothingToAdvise) {
    EXPECT_FALSE(situationOf(filling(2)));
}

}  // namespace
}  // namespace treadwell::advice
