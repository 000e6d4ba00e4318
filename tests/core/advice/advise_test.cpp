#include "core/advice/advise.h"

#include "core/advice/codes.h"
#include "tests/core/advice/example.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::advice {
namespace {

using farm::Activity;

Advice adviceFor(const AdviceSituation& situation) {
    return advise(situation).value();
}

// Derived from the equation of Muck & Holmes 2000, Applied Engineering in Agriculture 16(6):613-619: two or
// three tractors of 20 t at 256 t/h, 217.6 -> 237.0 kg DM/m3, +19 +-8.
TEST(Advise, LetsAThirdTractorPack) {
    const Advice advice = adviceFor(
        exampleAt(256, {tractor("Otter", 20), tractor("Finch", 20), tractor("Heron", 20, Activity::away)}));
    EXPECT_EQ(advice.verdict, Verdict::change);
    EXPECT_EQ(advice.best().name, "pack:Heron");
    EXPECT_NEAR(advice.now().outcome.density.si(), 217.6, 0.3);
    EXPECT_NEAR(advice.best().outcome.density.si(), 237.0, 0.3);
    EXPECT_NEAR(advice.best().effect.change.si(), 19, 1);
    EXPECT_NEAR(advice.best().effect.sd.si(), 8, 0.5);
    EXPECT_LT(advice.now().outcome.chance.percent(), 50);
    EXPECT_GT(advice.best().outcome.chance.percent(), 50);
    EXPECT_EQ(advice.best().why.code, code::adviceChosen);
    ASSERT_EQ(advice.says.size(), 1u);
    EXPECT_EQ(advice.says[0].code, code::adviceGain);
    EXPECT_EQ(advice.best().actions, (std::vector<Message>{{code::advicePack, {std::string{"Heron"}}}}));
}

// Two tractors at first, a third and a fourth as deliveries grow (common practice); 20 t each.
TEST(Advise, AsksForMoreTractorsAsTheDeliveryGrows) {
    std::size_t packing = 1;
    std::vector<std::size_t> needed;
    for (const double rate : {100.0, 200.0, 300.0, 400.0}) {
        for (;; ++packing) {
            std::vector<Tractor> tractors;
            for (std::size_t i = 0; i < 6; ++i) {
                tractors.push_back(tractor(std::string(1, static_cast<char>('A' + i)), 20,
                                           i < packing ? Activity::packing : Activity::away));
            }
            if (adviceFor(exampleAt(rate, tractors)).verdict != Verdict::change) break;
        }
        needed.push_back(packing);
    }
    EXPECT_THAT(needed, testing::ElementsAre(1, 2, 3, 4));
}

TEST(Advise, TakesTheCheaperOfTwoThatDo) {
    AdviceSituation situation = exampleAt(
        256, {tractorAt("Otter", 20, 90, Activity::packing), tractorAt("Finch", 20, 90, Activity::packing),
              tractorAt("Heron", 20, 95, Activity::away), tractorAt("Stork", 22, 85, Activity::away)});
    const Advice advice = adviceFor(situation);
    EXPECT_EQ(advice.best().name, "pack:Stork");
    EXPECT_NEAR(advice.best().outcome.cost->perHour(), 85, 1e-9);
    EXPECT_EQ(find(advice, "pack:Heron")->why.code, code::adviceDearer);
    ASSERT_EQ(advice.says.size(), 2u);
    EXPECT_EQ(advice.says[1].code, code::adviceCosts);
}

// Spreading pays nothing extra, so a heavy spreader that changes places with a light packer is free.
TEST(Advise, PutsTheHeavierTractorToPacking) {
    const Advice advice = adviceFor(exampleAt(
        160,
        {tractorAt("Wren", 8, 60, Activity::packing), tractorAt("Otter", 14, 80, Activity::packing),
         tractorAt("Heron", 24, 110, Activity::spreading), tractorAt("Stork", 22, 100, Activity::away)}));
    EXPECT_EQ(advice.verdict, Verdict::change);
    EXPECT_EQ(advice.best().outcome.cost, CostRate{});
    EXPECT_THAT(advice.best().name, testing::HasSubstr("Heron"));
}

TEST(Advise, LeavesSomebodySpreading) {
    const Advice advice =
        adviceFor(exampleAt(256, {tractor("Otter", 20), tractor("Heron", 14, Activity::spreading)}));
    for (const Candidate& candidate : advice.candidates) {
        bool packsAll = false;
        for (const Duty& duty : candidate.change.duties) {
            packsAll |= duty.tractor == 1 && duty.share == Share::fromFraction(1);
        }
        EXPECT_FALSE(packsAll) << candidate.name;
    }
}

// Strength 20.000, 19.870 and 20.900 t (definitions, derived): one tractor of 8.1 t adds nothing to 20 t, a
// second makes both count.
TEST(Advise, TriesTwoTogether) {
    AdviceSituation situation = exampleAt(100, {tractor("Otter", 20), tractor("Wren", 8.1, Activity::away),
                                                tractor("Rook", 8.1, Activity::away)});
    situation.delivery = AsFedRate::fromTonnesPerHour(121);
    const Advice advice = adviceFor(situation);
    EXPECT_EQ(find(advice, "pack:Wren")->effect.change, DryDensity{});
    EXPECT_GT(find(advice, "pack:Rook+pack:Wren")->effect.change, DryDensity{});
}

TEST(Advise, SlowsTheDeliveryOnlyWhereNoTractorHelps) {
    const Advice alone = adviceFor(exampleAt(160, {tractor("Otter", 20)}));
    EXPECT_EQ(alone.verdict, Verdict::change);
    EXPECT_EQ(alone.best().name, "delivery");
    EXPECT_FALSE(alone.best().outcome.cost);
    EXPECT_GE(alone.best().outcome.chance.fraction(), 0.5);
    const Advice helped =
        adviceFor(exampleAt(160, {tractor("Otter", 20), tractor("Heron", 20, Activity::away)}));
    EXPECT_EQ(helped.best().name, "pack:Heron");
}

TEST(Advise, NeverSlowsBelowHalf) {
    const Advice advice = adviceFor(exampleAt(400, {tractor("Otter", 20)}));
    EXPECT_EQ(advice.verdict, Verdict::nothingHelps);
    EXPECT_EQ(find(advice, "delivery")->why.code, code::adviceTooSlow);
}

TEST(Advise, SaysWhatComesClosest) {
    const Advice advice =
        adviceFor(exampleAt(500, {tractor("Otter", 12), tractor("Heron", 14, Activity::away)}));
    EXPECT_EQ(advice.verdict, Verdict::closest);
    EXPECT_EQ(advice.best().name, "pack:Heron");
    EXPECT_EQ(advice.says.back().code, code::adviceClosest);
}

TEST(Advise, SaysThatATractorIsNotNeededAndWhatThatSaves) {
    const Advice advice = adviceFor(exampleAt(
        60, {tractorAt("Otter", 20, 90, Activity::packing), tractorAt("Finch", 20, 110, Activity::packing)}));
    EXPECT_EQ(advice.verdict, Verdict::canLeave);
    EXPECT_EQ(advice.best().name, "leave:Finch");
    EXPECT_NEAR(advice.best().outcome.cost->perHour(), -110, 1e-9);
    EXPECT_GE(advice.best().outcome.passes, 3.0);
    EXPECT_EQ(advice.says.back().code, code::adviceSaves);
}

// At least three passes (advice of the Lower Saxony chamber of agriculture, published): a tractor stays for
// them.
TEST(Advise, KeepsATractorForThePasses) {
    const Advice advice = adviceFor(exampleAt(100, {tractor("Otter", 20), tractor("Finch", 20)}));
    const Candidate* leave = find(advice, "leave:Finch");
    ASSERT_NE(leave, nullptr);
    EXPECT_GE(leave->outcome.chance.percent(), 50);
    EXPECT_LT(leave->outcome.passes, 3.0);
    EXPECT_EQ(leave->why.code, code::adviceFewPasses);
    EXPECT_EQ(advice.verdict, Verdict::allIsWell);
}

// Wet crop: the pores are full and no tractor makes them fuller. Below 25.8 % dry matter 225 kg DM/m3 is
// beyond the limit of Tang, Jofriet & LeLievre 1988, Canadian Agricultural Engineering 30(1):93-98.
TEST(Advise, SaysThatMorePackingDoesNotHelpASaturatedCrop) {
    AdviceSituation situation = exampleAt(200, {tractor("Otter", 20), tractor("Heron", 20, Activity::away)});
    situation.dryMatter = DryMatter::fromPercent(20);
    situation.wantedChance = Chance::fromPercent(90);
    const Advice advice = adviceFor(situation);
    EXPECT_EQ(advice.verdict, Verdict::saturated);
    EXPECT_EQ(advice.chosen, 0u);
    EXPECT_EQ(find(advice, "pack:Heron")->effect.change, DryDensity{});
}

TEST(Advise, CountsNothingOfAThinnerLayer) {
    AdviceSituation situation = exampleAt(90, {tractor("Otter", 14), tractor("Finch", 14)});
    situation.layer = Length::fromCentimetres(25);
    const Advice advice = adviceFor(situation);
    const Candidate* layer = find(advice, "layer");
    ASSERT_NE(layer, nullptr);
    EXPECT_EQ(layer->outcome.density, advice.now().outcome.density);
    ASSERT_TRUE(layer->outcome.upTo);
    EXPECT_GT(*layer->outcome.upTo, layer->outcome.density);
    EXPECT_NEAR(layer->outcome.passes, advice.now().outcome.passes * 15 / 25, 1e-9);
}

TEST(Advise, ThinsALayerAboveTheMaximumWhereThreePassesRemain) {
    AdviceSituation situation = exampleAt(60, {tractor("Otter", 14), tractor("Finch", 14)});
    situation.layer = Length::fromCentimetres(18);
    const Advice advice = adviceFor(situation);
    EXPECT_EQ(advice.verdict, Verdict::thinner);
    EXPECT_EQ(advice.best().name, "layer");
    EXPECT_GE(advice.best().outcome.passes, 3.0);

    situation.maximumLayer = Length::fromCentimetres(18);
    EXPECT_EQ(find(adviceFor(situation), "layer"), nullptr);
}

TEST(Advise, AsksForTheMinutesFirstWhereAThinnerLayerLeavesFewPasses) {
    AdviceSituation situation =
        exampleAt(180, {tractor("Otter", 25), tractor("Finch", 25), tractor("Stork", 10, Activity::away)});
    situation.layer = Length::fromCentimetres(20);
    situation.maximumLayer = Length::fromCentimetres(12);
    const Advice advice = adviceFor(situation);
    EXPECT_EQ(find(advice, "layer")->why.code, code::adviceFewPasses);
    EXPECT_EQ(advice.verdict, Verdict::thinner);
    EXPECT_EQ(advice.best().name, "pack:Stork+layer");
}

TEST(Advise, ComparesAtMostSixtyFourAndCountsTheRest) {
    std::vector<Tractor> tractors{tractor("Otter", 20)};
    for (char c = 'a'; c < 'p'; ++c) tractors.push_back(tractor(std::string(1, c), 12, Activity::away));
    const Advice advice = adviceFor(exampleAt(300, tractors));
    EXPECT_EQ(advice.candidates.size(), kMostCandidates);
    EXPECT_GT(advice.left, 50u);
}

TEST(Advise, WorksWithoutTractors) {
    const Advice advice = adviceFor(exampleAt(100, {}));
    EXPECT_EQ(advice.verdict, Verdict::nothingHelps);
    EXPECT_EQ(advice.candidates.size(), 1u);
}

TEST(Advise, NamesTheFieldThatIsWrong) {
    const auto fieldOf = [](const AdviceSituation& situation) { return advise(situation).error().field; };
    EXPECT_EQ(advise(exampleAt(100, {tractor("A", 10), tractor("A", 12)})).error().code(),
              code::tractorNameTwice);
    EXPECT_EQ(fieldOf(exampleAt(100, {tractor("", 10)})), "tractors[0].name");
    EXPECT_EQ(fieldOf(exampleAt(0, {})), "rate");
    EXPECT_EQ(fieldOf(exampleAt(100, {tractorAt("A", 10, std::nan(""), Activity::away)})),
              "tractors[0].hourlyCost");
    AdviceSituation situation = exampleAt(100, {});
    situation.wantedChance = Chance::fromPercent(100);
    EXPECT_EQ(fieldOf(situation), "wantedChance");
    situation = exampleAt(100, {});
    situation.maximumLayer = Length::fromCentimetres(50);
    EXPECT_EQ(fieldOf(situation), "maximumLayer");
}

TEST(Advise, VerdictsHaveNames) {
    for (const std::string_view name : enumTexts(Verdict{})) EXPECT_FALSE(name.empty());
    EXPECT_EQ(enumText(Verdict::nothingHelps), "nothingHelps");
}

}  // namespace
}  // namespace treadwell::advice
