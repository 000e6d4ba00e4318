#include "core/intake/from_season.h"

#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

namespace treadwell::intake {
namespace {

using testing_support::at;
using testing_support::SeasonMaker;
using testing_support::someLoad;
using testing_support::someSilo;

TEST(ContextOf, KnowsTheFarmAndTheLoadsWithoutATicketAsTheyStand) {
    SeasonMaker maker;
    maker.add(entries::SeasonStarted{"Lindenhof", "America/Sao_Paulo"}, at("2026-02-10T08:00:00Z"));
    maker.add(entries::SiloDefined{someSilo()}, at("2026-02-10T08:00:00Z"));
    const auto tapped = maker.add(someLoad(12), at("2026-02-10T12:00:00Z"));
    entries::Load mended = someLoad(11);
    maker.add(mended, at("2026-02-10T12:05:00Z"), tapped);
    const auto gone = maker.add(someLoad(13), at("2026-02-10T12:10:00Z"));
    maker.add(entries::VoidEntry{"twice"}, at("2026-02-10T12:20:00Z"), gone);
    entries::Load weighed = someLoad(14);
    weighed.ticket = "17";
    maker.add(weighed, at("2026-02-10T12:30:00Z"));

    const Context context = contextOf(season::Season::fold(maker.entries));
    EXPECT_EQ(context.zone.name(), "America/Sao_Paulo");
    EXPECT_EQ(context.silo, someSilo().id);
    EXPECT_EQ(context.loads.count("17"), 1u);
    ASSERT_EQ(context.tapped.size(), 1u);
    EXPECT_EQ(context.tapped[0].id, tapped);
    EXPECT_EQ(context.tapped[0].at, at("2026-02-10T12:05:00Z"));
    EXPECT_EQ(context.tapped[0].load.mass, AsFedMass::fromTonnes(11));

    maker.add(entries::SiloDefined{someSilo(2)}, at("2026-02-10T13:00:00Z"));
    EXPECT_EQ(contextOf(season::Season::fold(maker.entries)).silo, std::nullopt);
}

}  // namespace
}  // namespace treadwell::intake
