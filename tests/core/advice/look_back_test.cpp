#include "core/advice/look_back.h"

#include "core/advice/codes.h"
#include "core/advice/wording.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

namespace treadwell::advice {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;
using entries::AdviceDecision;

const Instant kNoon = at("2026-02-10T12:00:00Z");

SeasonMaker filling() {
    SeasonMaker maker;
    maker.add(entries::SiloDefined{someSilo(1)}, kNoon - 4h);
    maker.add(entries::SiloDefined{someSilo(2)}, kNoon - 4h);
    maker.add(entries::TractorDefined{someTractor(1, 14)}, kNoon - 4h);
    maker.add(someWork(1, farm::Activity::packing), kNoon - 1h);
    for (int i = 0; i < 20; ++i) maker.add(someLoad(12), kNoon + i * 6min);
    return maker;
}

entries::AdviceDecided decided(AdviceDecision decision, std::uint8_t silo = 1) {
    entries::AdviceDecided note;
    note.silo = idOf<farm::SiloTag>(silo);
    note.advice = "pack:Tractor 2";
    note.decision = decision;
    note.before = DryDensity::fromKilogramsPerCubicMetre(212);
    note.after = DryDensity::fromKilogramsPerCubicMetre(236);
    return note;
}

TEST(LookBack, PutsWhatCameBesideWhatWasDecided) {
    SeasonMaker maker = filling();
    maker.add(decided(AdviceDecision::shown), kNoon + 29min);
    maker.add(decided(AdviceDecision::accepted), kNoon + 30min);
    maker.add(decided(AdviceDecision::declined, 2), kNoon + 35min);
    maker.add(decided(AdviceDecision::declined), kNoon + 60min);
    const auto season = season::Season::fold(maker.entries);
    density::ReadingsHistory history;
    const auto found = lookBack(season, kBunker, kNoon + 90min, history);
    ASSERT_EQ(found.size(), 2u) << "what was only shown, or at another silo, is not looked back on";
    EXPECT_EQ(found[0].what.decision, AdviceDecision::declined);
    EXPECT_FALSE(found[0].came) << "it cannot show yet";
    EXPECT_EQ(found[1].at, kNoon + 30min);
    const auto then = density::readingsAt(season, kBunker, kNoon + 75min);
    EXPECT_EQ(found[1].came, then.layer.estimate->density.median());
}

TEST(ActionsNamed, TellTheStepsOfAStableName) {
    const auto codes = [](std::string_view name) {
        std::vector<Code> found;
        for (const Message& message : actionsNamed(name)) found.push_back(message.code);
        return found;
    };
    EXPECT_EQ(codes("pack:Otter+layer"), (std::vector{code::advicePack, code::adviceThinner}));
    EXPECT_EQ(codes("packPart:Finch+spread:Heron+delivery"),
              (std::vector{code::advicePackSome, code::adviceSpread, code::adviceSlower}));
    EXPECT_EQ(codes("leave:Otter"), std::vector{code::adviceLeave});
    EXPECT_EQ(codes("asNow"), std::vector{code::adviceAsNow});
    EXPECT_EQ(actionsNamed("pack:Old + New").front(),
              (Message{code::advicePack, {std::string{"Old + New"}}}));
}

}  // namespace
}  // namespace treadwell::advice
