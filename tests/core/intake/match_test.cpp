#include "core/intake/match.h"

#include "core/intake/codes.h"
#include "core/intake/tickets.h"
#include "tests/core/intake/farm_context.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <set>

namespace treadwell::intake {
namespace {

using testing::ElementsAre;

constexpr std::nullopt_t kNone = std::nullopt;
const AsFedMass kInterval = AsFedMass::fromKilograms(20);
const std::optional<farm::TruckId> kAmsel = idOf<farm::TruckId>(4);
const std::optional<farm::TruckId> kKaefer = idOf<farm::TruckId>(5);

Instant at(int minute) {
    return utc("2026-09-15T08:00:00Z") + std::chrono::minutes{minute};
}

entries::Load loadOf(std::optional<farm::TruckId> truck, double tonnes = 8) {
    entries::Load load;
    load.silo = idOf<farm::SiloId>(1);
    load.truck = truck;
    load.mass = AsFedMass::fromTonnes(tonnes);
    return load;
}

TappedLoad tap(int minute, std::optional<farm::TruckId> truck, double doubtMinutes = 0) {
    TappedLoad tapped{idOf<entries::EntryId>(static_cast<std::uint8_t>(minute)), at(minute), loadOf(truck)};
    if (doubtMinutes > 0) tapped.load.timeSpread = Seconds{doubtMinutes * 60};
    return tapped;
}

TicketLoad ticket(int minute, std::optional<farm::TruckId> truck) {
    return {at(minute), loadOf(truck, 8.4)};
}

std::vector<std::optional<std::size_t>> match(std::vector<TicketLoad> tickets,
                                              std::vector<TappedLoad> tapped) {
    return matchLoads(tickets, tapped, kInterval);
}

TEST(MatchLoads, ByTruckAndTime) {
    EXPECT_THAT(match({ticket(0, kAmsel), ticket(3, kKaefer), ticket(40, kAmsel)},
                      {tap(7, kKaefer), tap(8, kAmsel), tap(44, kAmsel)}),
                ElementsAre(1, 0, 2));
    EXPECT_THAT(match({ticket(0, kAmsel)}, {tap(31, kAmsel)}), ElementsAre(kNone));
    EXPECT_THAT(match({ticket(0, kAmsel)}, {tap(30, kAmsel)}), ElementsAre(0));
    EXPECT_THAT(match({ticket(0, kAmsel)}, {tap(2, kKaefer)}), ElementsAre(kNone));
    EXPECT_THAT(match({}, {tap(2, kKaefer)}), ElementsAre());
    EXPECT_THAT(match({ticket(0, kAmsel)}, {}), ElementsAre(kNone));
}

// Twenty minutes a round: the second load was not tapped in, and its ticket takes none of the others.
TEST(MatchLoads, ALoadThatWasForgottenLeavesItsTicketAlone) {
    EXPECT_THAT(
        match({ticket(0, kAmsel), ticket(20, kAmsel), ticket(40, kAmsel)}, {tap(5, kAmsel), tap(45, kAmsel)}),
        ElementsAre(0, kNone, 1));
}

TEST(MatchLoads, AGuessedTimeIsHeldToItsDoubt) {
    EXPECT_THAT(match({ticket(0, kAmsel)}, {tap(60, kAmsel, 22.5)}), ElementsAre(kNone));
    EXPECT_THAT(match({ticket(0, kAmsel)}, {tap(50, kAmsel, 22.5)}), ElementsAre(0));
}

TEST(MatchLoads, WhereOneSideDoesNotKnowTheTruckTheTimeDecides) {
    EXPECT_THAT(match({ticket(0, kAmsel), ticket(10, kKaefer)}, {tap(2, {}, 20), tap(12, {}, 20)}),
                ElementsAre(0, 1));
    EXPECT_THAT(match({ticket(0, {})}, {tap(4, kAmsel)}), ElementsAre(0));
    // A tap with the right truck is taken before one without.
    EXPECT_THAT(match({ticket(0, kAmsel)}, {tap(1, {}), tap(9, kAmsel)}), ElementsAre(1));
}

TEST(MatchLoads, WhatWasWeighedMustWeighTheSame) {
    TappedLoad weighed = tap(3, kAmsel);
    weighed.load.source = entries::MassSource::weighed;
    EXPECT_THAT(match({ticket(0, kAmsel)}, {weighed}), ElementsAre(kNone));
    weighed.load.mass = AsFedMass::fromTonnes(8.38);
    EXPECT_THAT(match({ticket(0, kAmsel)}, {weighed}), ElementsAre(0));
}

RC_GTEST_PROP(MatchLoadsProperty, NoLoadIsTakenTwiceAndEveryPairCouldBeOne, ()) {
    const auto truck = [] { return *rc::gen::element(kAmsel, kKaefer, std::optional<farm::TruckId>{}); };
    std::vector<TicketLoad> tickets;
    std::vector<TappedLoad> tapped;
    for (int i = *rc::gen::inRange(0, 12); i > 0; --i)
        tickets.push_back(ticket(*rc::gen::inRange(0, 200), truck()));
    for (int i = *rc::gen::inRange(0, 12); i > 0; --i)
        tapped.push_back(tap(*rc::gen::inRange(0, 200), truck()));
    const auto found = match(tickets, tapped);
    RC_ASSERT(found.size() == tickets.size());
    std::set<std::size_t> taken;
    for (std::size_t i = 0; i < found.size(); ++i) {
        if (!found[i]) continue;
        RC_ASSERT(taken.insert(*found[i]).second);
        const TappedLoad& load = tapped.at(*found[i]);
        const auto& own = tickets[i].load.truck;
        RC_ASSERT(bool{!own || !load.load.truck || own == load.load.truck});
        RC_ASSERT(std::chrono::abs(load.at - tickets[i].at) <= kScaleToSilo);
    }
}

/// The same through a file: two loads were tapped in and one was caught up on, one was forgotten.
class TicketsAfterTaps : public testing::Test {
  protected:
    TicketsAfterTaps() {
        context.tapped = {tap(6, kAmsel), tap(26, kKaefer), tap(60, {}, 20), tap(90, kAmsel)};
        context.tapped[0].load.field = idOf<farm::FieldId>(6);
        auto read = readTickets(
            "Ticket,Time,Vehicle,Net t\n"
            "1,2026-09-15T08:00:00Z,Amsel,8.43\n"
            "2,2026-09-15T08:20:00Z,Zebra,8.1\n"
            "3,2026-09-15T08:21:00Z,K\u00E4fer,8.2\n"
            "4,2026-09-15T08:50:00Z,K\u00E4fer,8.5\n"
            "5,2026-09-15T10:10:00Z,Amsel,8.6\n",
            context);
        if (!read) throw std::runtime_error(std::string{toText(read.error().code())});
        intake = *std::move(read);
    }

    Context context = farmContext();
    Intake intake;
};

TEST_F(TicketsAfterTaps, CorrectTheLoadsThatWereTappedIn) {
    ASSERT_EQ(intake.proposals.size(), 4u);
    const Proposal& first = intake.proposals[0];
    const auto& load = std::get<entries::Load>(first.body);
    EXPECT_EQ(first.target, context.tapped[0].id);
    EXPECT_EQ(first.happened, at(6));  // when it was tipped, not when it was weighed
    EXPECT_EQ(load.mass, AsFedMass::fromTonnes(8.43));
    EXPECT_EQ(load.source, entries::MassSource::weighed);
    EXPECT_EQ(load.ticket, "1");
    EXPECT_EQ(load.field, context.tapped[0].load.field);
    ASSERT_TRUE(first.match);
    EXPECT_EQ(first.match->mass, AsFedMass::fromTonnes(8));
    EXPECT_EQ(first.match->at, at(6));
    ASSERT_EQ(first.notes.size(), 1u);
    EXPECT_EQ(first.notes[0].code, code::ticketMeetsLoad);
    EXPECT_EQ(intake.proposals[1].target, context.tapped[1].id);
}

TEST_F(TicketsAfterTaps, ReplaceAGuessWithItsTime) {
    const Proposal& guess = intake.proposals[2];
    EXPECT_EQ(guess.target, context.tapped[2].id);
    EXPECT_EQ(guess.happened, at(50));
    EXPECT_FALSE(std::get<entries::Load>(guess.body).timeSpread);
    EXPECT_EQ(std::get<entries::Load>(guess.body).truck, kKaefer);
}

TEST_F(TicketsAfterTaps, WhatHasNoPartnerIsNewOrTold) {
    EXPECT_FALSE(intake.proposals[3].target);  // ticket 5 lies 40 minutes after the last tap
    EXPECT_EQ(intake.quarantine.size(), 1u);   // Zebra is no truck of this farm
    ASSERT_EQ(intake.remarks.size(), 1u);
    EXPECT_EQ(intake.remarks[0].code, code::loadWithoutTicket);
}

}  // namespace
}  // namespace treadwell::intake
