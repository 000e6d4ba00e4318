#include "core/intake/catch_up.h"

#include "core/intake/codes.h"
#include "core/intake/match.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

namespace treadwell::intake {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

const Instant kNoon = at("2026-02-10T12:00:00Z");

CatchUp sixLoads() {
    entries::Load usual = someLoad(12);
    usual.source = entries::MassSource::usual;
    return {usual, 6, at("2026-02-10T10:20:00Z"), at("2026-02-10T11:05:00Z")};
}

const entries::Load& loadOf(const Proposal& proposal) {
    return std::get<entries::Load>(proposal.body);
}

TEST(CatchUp, SpreadsTheLoadsEvenlyAndMarksEach) {
    const auto found = catchUp(sixLoads(), kNoon);
    ASSERT_TRUE(found);
    ASSERT_EQ(found->size(), 6u);
    EXPECT_EQ(found->front().happened, at("2026-02-10T10:23:45Z"));
    for (std::size_t i = 1; i < 6; ++i) {
        EXPECT_EQ((*found)[i].happened - (*found)[i - 1].happened, 7min + 30s);
    }
    for (const Proposal& proposal : *found) {
        const Seconds spread = loadOf(proposal).timeSpread.value();
        EXPECT_LE(
            proposal.happened - std::chrono::microseconds{static_cast<std::int64_t>(spread.count() * 1e6)},
            sixLoads().from);
        EXPECT_GE(Seconds{proposal.happened - sixLoads().from} + spread, Seconds{45min});
        EXPECT_EQ(loadOf(proposal).mass, AsFedMass::fromTonnes(12));
    }
}

// The guess is of all six; their tickets find one each, however unevenly the trucks came.
TEST(CatchUp, TicketsThatComeLaterFindTheirLoads) {
    const auto found = catchUp(sixLoads(), kNoon);
    ASSERT_TRUE(found);
    std::vector<TappedLoad> tapped;
    for (const Proposal& proposal : *found) tapped.push_back({{}, proposal.happened, loadOf(proposal)});
    std::vector<TicketLoad> tickets;
    for (const auto minutes : {1, 3, 5, 30, 41, 44}) {
        entries::Load weighed = someLoad(11.4);
        weighed.truck = idOf<farm::TruckTag>(static_cast<std::uint8_t>(1 + minutes % 3));
        tickets.push_back({sixLoads().from + std::chrono::minutes{minutes}, weighed});
    }
    const auto matches = matchLoads(tickets, tapped, AsFedMass::fromKilograms(20));
    for (std::size_t i = 0; i < matches.size(); ++i) EXPECT_EQ(matches[i], i) << "in the order of time";
}

TEST(CatchUp, RefusesWhatCannotBeMeant) {
    const auto refused = [](auto change) {
        CatchUp loads = sixLoads();
        change(loads);
        const auto found = catchUp(loads, kNoon);
        return found ? std::string{} : found.error().field;
    };
    EXPECT_EQ(refused([](CatchUp& loads) { loads.count = 0; }), "count");
    EXPECT_EQ(refused([](CatchUp& loads) { loads.count = kMostCaughtUp + 1; }), "count");
    EXPECT_EQ(refused([](CatchUp& loads) { loads.from = loads.to; }), "from");
    EXPECT_EQ(refused([](CatchUp& loads) { loads.from -= 24h; }), "from");
    EXPECT_EQ(refused([](CatchUp& loads) { loads.to = kNoon + 1s; }), "to");
    EXPECT_EQ(refused([](CatchUp& loads) { loads.each.mass = AsFedMass{}; }), "mass");
}

}  // namespace
}  // namespace treadwell::intake
