#include "tests/core/intake/farm_context.h"

#include <gtest/gtest.h>

namespace treadwell::intake {
namespace {

entries::Entry entryOf(entries::Body body, const char* happened) {
    entries::Entry entry;
    entry.header.id = idOf<entries::EntryId>(9);
    entry.header.happened = utc(happened);
    entry.body = std::move(body);
    return entry;
}

TEST(Learn, ATicketsDayIsThatOfTheFarm) {
    Context context;
    learn(context,
          entryOf(entries::SeasonStarted{"Ostrelmark farm", "Europe/Berlin"}, "2026-09-14T06:00:00Z"));
    entries::Load load;
    load.ticket = "17";
    learn(context, entryOf(load, "2026-09-14T22:30:00Z"));
    const auto known = context.loads.find("17");
    ASSERT_NE(known, context.loads.end());
    EXPECT_EQ(toIso8601(known->second.day), "2026-09-15");
    EXPECT_EQ(known->second.id, idOf<entries::EntryId>(9));
}

TEST(Learn, AVoidedLoadStaysKnownAndAVoidedNameDoesNot) {
    Context context;
    entries::Load load;
    load.ticket = "17";
    load.evidence = sha256("a row");
    learn(context, entryOf(load, "2026-09-15T08:00:00Z"), true);
    EXPECT_TRUE(context.known.contains(*load.evidence));
    EXPECT_TRUE(context.loads.find("17")->second.voided);
    const entries::TruckDefined truck{{idOf<farm::TruckId>(4), "Amsel", AsFedMass::fromTonnes(12), {}}};
    learn(context, entryOf(truck, "2026-09-15T08:00:00Z"), true);
    EXPECT_FALSE(context.trucks.find("Amsel", "truck"));
    learn(context, entryOf(truck, "2026-09-15T09:00:00Z"));
    EXPECT_EQ(context.trucks.find("Amsel", "truck"), idOf<farm::TruckId>(4));
}

TEST(Learn, AnUnknownKindTeachesNothing) {
    Context context;
    learn(context, entryOf({}, "2026-09-15T08:00:00Z"));
    EXPECT_TRUE(context.known.empty());
}

TEST(FactHash, TellsFactsApartByContentAndTime) {
    const Instant at = utc("2026-09-15T08:00:00Z");
    const Hash note = factHash(entries::Note{"rain"}, at);
    EXPECT_EQ(note, factHash(entries::Note{"rain"}, at));
    EXPECT_NE(note, factHash(entries::Note{"sun"}, at));
    EXPECT_NE(note, factHash(entries::Note{"rain"}, at + std::chrono::seconds{1}));
    EXPECT_NE(note, factHash(entries::VoidEntry{"rain"}, at));
}

}  // namespace
}  // namespace treadwell::intake
