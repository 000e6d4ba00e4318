#include "core/attention/cautions.h"

#include "core/attention/codes.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

namespace treadwell::attention {
namespace {

using std::chrono::hours;

farm::Silo silo() {
    farm::Silo silo;
    silo.length = Length::fromMetres(50);
    silo.width = Length::fromMetres(12);
    silo.wallHeight = Length::fromMetres(3);
    return silo;
}

constexpr Instant kNow{std::chrono::hours{24 * 20000}};

const CautionNow* find(const std::vector<CautionNow>& found, Caution caution) {
    for (const CautionNow& each : found) {
        if (each.caution == caution) return &each;
    }
    return nullptr;
}

std::vector<Caution> seen(const std::vector<CautionNow>& found) {
    std::vector<Caution> result;
    for (const CautionNow& each : found) {
        if (each.weight != Weight::standing) result.push_back(each.caution);
    }
    return result;
}

TEST(Cautions, StandInTheTableOnceAndWithASource) {
    std::set<std::string_view> names;
    ASSERT_EQ(cautions().size(), kCautions);
    for (std::size_t i = 0; i < kCautions; ++i) {
        const CautionFacts& facts = cautions()[i];
        EXPECT_EQ(static_cast<std::size_t>(facts.caution), i);
        EXPECT_TRUE(names.insert(enumText(facts.caution)).second);
        EXPECT_FALSE(facts.source.citation.empty());
    }
}

// The most cautious published values: slopes 1:3 (Bolsen) and 1:6 (Carrabba), three machine widths (HSA
// Ireland), three heights from the face (Bolsen & Bolsen), 3.05 m (OSHA), 16 years (29 CFR 570.71), 8 h
// (HSE).
TEST(Cautions, HaveThePublishedDefaults) {
    const auto limit = [](Caution caution) { return factsOf(caution).limit; };
    EXPECT_EQ(limit(Caution::rampSlope), Limit{Slope::fromRunPerRise(3).amount()});
    EXPECT_EQ(limit(Caution::crossSlope), Limit{Slope::fromRunPerRise(6).amount()});
    EXPECT_EQ(limit(Caution::fillAboveWall), Limit{Length{}.amount()});
    EXPECT_EQ(limit(Caution::workingWidth), Limit{3.0});
    EXPECT_EQ(limit(Caution::faceDistance), Limit{3.0});
    EXPECT_EQ(limit(Caution::siloGas), Limit{21.0});
    EXPECT_EQ(limit(Caution::shiftHours), Limit{8.0});
    EXPECT_EQ(limit(Caution::powerLines), Limit{Length::fromMetres(3.05).amount()});
    EXPECT_EQ(limit(Caution::driverAge), Limit{16.0});
    EXPECT_EQ(limit(Caution::drySilage), Limit{DryMatter::fromPercent(60).amount()});
    EXPECT_FALSE(limit(Caution::walls));
}

TEST(Cautions, AQuietSiloHasOnlyStandingOnes) {
    EXPECT_THAT(seen(cautionsFor(silo(), {}, kNow)), testing::IsEmpty());
    EXPECT_NE(find(cautionsFor(silo(), {}, kNow), Caution::peopleOnFoot), nullptr);
}

TEST(Cautions, ARampSteeperThanTheLimitIsSeen) {
    farm::Silo steep = silo();
    steep.rampSlope = Slope::fromRunPerRise(2.9);
    const auto found = cautionsFor(steep, {}, kNow);
    EXPECT_EQ(found.front().caution, Caution::rampSlope);
    EXPECT_EQ(found.front().message,
              (Message{code::cautionRampSteep,
                       {Slope::fromRunPerRise(2.9).amount(), Slope::fromRunPerRise(3).amount()}}));
    const SiteLimit own{Caution::rampSlope, Slope::fromRunPerRise(2.5).amount()};
    EXPECT_THAT(seen(cautionsFor(steep, {.limits = {&own, 1}}, kNow)), testing::IsEmpty());
}

TEST(Cautions, AFillAboveTheWallIsSeenPlannedOrMeasured) {
    farm::Silo crowned = silo();
    crowned.crown = Length::fromMetres(0.5);
    EXPECT_THAT(seen(cautionsFor(crowned, {}, kNow)),
                testing::ElementsAre(Caution::crossSlope, Caution::fillAboveWall));
    const auto found = cautionsFor(silo(), {.highestFill = Length::fromMetres(3.2)}, kNow);
    ASSERT_EQ(seen(found), (std::vector{Caution::fillAboveWall}));
    EXPECT_NEAR(std::get<Amount>(found.front().message.arguments[0]).si, 0.2, 1e-12);
    EXPECT_EQ(find(cautionsFor(silo(), {.highestFill = Length::fromMetres(3)}, kNow), Caution::fillAboveWall),
              nullptr);
}

TEST(Cautions, AWidthIsJudgedOnlyAgainstAKnownMachine) {
    EXPECT_EQ(find(cautionsFor(silo(), {}, kNow), Caution::workingWidth)->weight, Weight::standing);
    EXPECT_EQ(seen(cautionsFor(silo(), {.machineWidth = Length::fromMetres(4.1)}, kNow)),
              (std::vector{Caution::workingWidth}));
    EXPECT_EQ(find(cautionsFor(silo(), {.machineWidth = Length::fromMetres(4)}, kNow), Caution::workingWidth),
              nullptr);
}

TEST(Cautions, SiloGasStaysForThreeWeeksAtEveryStage) {
    for (const Stage stage : {Stage::filling, Stage::closed, Stage::open}) {
        const auto after = [&](double days) {
            const auto ago = std::chrono::duration_cast<Instant::duration>(days * hours{24});
            return cautionsFor(silo(), {.stage = stage, .lastLoad = kNow - ago}, kNow);
        };
        EXPECT_NE(find(after(0), Caution::siloGas), nullptr);
        EXPECT_NE(find(after(21), Caution::siloGas), nullptr);
        EXPECT_EQ(find(after(21.01), Caution::siloGas), nullptr);
    }
}

TEST(Cautions, SiloGasCountsWholeDaysFromTheFirst) {
    const auto day = [](double days) {
        const auto ago = std::chrono::duration_cast<Instant::duration>(days * hours{24});
        const auto cautions = cautionsFor(silo(), {.lastLoad = kNow - ago}, kNow);
        return std::get<std::int64_t>(find(cautions, Caution::siloGas)->message.arguments.at(0));
    };
    EXPECT_EQ(day(0), 1);
    EXPECT_EQ(day(0.001), 1);
    EXPECT_EQ(day(1.5), 2);
    EXPECT_EQ(day(20.9), 21);
}

TEST(Cautions, DrySilageIsBelowFortyPercentMoisture) {
    EXPECT_EQ(find(cautionsFor(silo(), {.dryMatter = DryMatter::fromPercent(60)}, kNow), Caution::drySilage),
              nullptr);
    EXPECT_EQ(seen(cautionsFor(silo(), {.dryMatter = DryMatter::fromPercent(61)}, kNow)),
              (std::vector{Caution::drySilage}));
}

TEST(Cautions, ALongShiftGrowsStrong) {
    const auto weightAfter = [](double atWork) -> std::optional<Weight> {
        const auto found = cautionsFor(silo(), {.longestShift = Seconds{atWork * 3600}}, kNow);
        const CautionNow* shift = find(found, Caution::shiftHours);
        return shift == nullptr ? std::nullopt : std::optional{shift->weight};
    };
    EXPECT_EQ(weightAfter(7.9), std::nullopt);
    EXPECT_EQ(weightAfter(8), Weight::seen);
    EXPECT_EQ(weightAfter(12), Weight::strong);
}

TEST(Cautions, AnOpenSiloSpeaksOfItsFace) {
    const auto found = cautionsFor(silo(), {.stage = Stage::open}, kNow);
    const CautionNow* face = find(found, Caution::faceDistance);
    ASSERT_NE(face, nullptr);
    EXPECT_EQ(face->message.arguments[1], Argument{Length::fromMetres(9).amount()});
    EXPECT_NE(find(found, Caution::cores), nullptr);
    EXPECT_EQ(find(found, Caution::rampSlope), nullptr);
}

TEST(Cautions, WallsStandUntilTheirLimitIsCopied) {
    EXPECT_NE(find(cautionsFor(silo(), {.stage = Stage::closed}, kNow), Caution::walls), nullptr);
    const SiteLimit plate{Caution::walls, Length::fromMetres(3).amount()};
    EXPECT_EQ(
        find(cautionsFor(silo(), {.stage = Stage::closed, .limits = {&plate, 1}}, kNow), Caution::walls),
        nullptr);
}

}  // namespace
}  // namespace treadwell::attention
