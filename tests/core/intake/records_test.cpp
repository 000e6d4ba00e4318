#include "core/intake/records.h"

#include "core/intake/tickets.h"
#include "tests/core/intake/farm_context.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace treadwell::intake {
namespace {

std::string named(const Error& error) {
    return std::string{toText(error.code())} + " in words";
}

TEST(RecordsOf, HoldWhatIsReadWhatIsNotAndWhatIsSettled) {
    const auto intake = readTickets(
        "Ticket,Time,Vehicle,Net t\n"
        "1,2026-09-15T08:00:00Z,Amsel,8.43\n"
        "2,2026-09-15T08:20:00Z,Zebra,8.1\n"
        "3,some time,Amsel,8.25\n"
        "3,some time,Amsel,8.25\n",
        farmContext());
    ASSERT_TRUE(intake);
    Intake all = *intake;
    all.settled.push_back(idOf<entries::EntryId>(9));
    const Instant now = utc("2026-09-15T18:00:00Z");
    const auto records = recordsOf(all, "t.csv", "tickets", now, named);
    ASSERT_EQ(records.size(), 4u);
    EXPECT_TRUE(std::holds_alternative<entries::Load>(records[0].body));
    EXPECT_EQ(records[0].evidence->hash, std::get<entries::Load>(records[0].body).evidence);
    const auto& unknown = std::get<entries::RowSetAside>(records[1].body);
    EXPECT_EQ(unknown, (entries::RowSetAside{"t.csv", "tickets", 3, 3, "truck", "nameUnknown",
                                             "nameUnknown in words", records[1].evidence->hash}));
    EXPECT_EQ(records[1].happened, utc("2026-09-15T08:20:00Z"));
    EXPECT_EQ(std::get<entries::RowSetAside>(records[2].body).line, 4);
    EXPECT_EQ(records[2].happened, now);  // its own time cannot be read
    EXPECT_EQ(records[3].target, idOf<entries::EntryId>(9));
    EXPECT_TRUE(std::holds_alternative<entries::VoidEntry>(records[3].body));
    for (const Proposal& record : records) EXPECT_TRUE(entries::validate(record.body));

    all.quarantine[0].isKnown = true;
    all.settled.clear();
    EXPECT_EQ(recordsOf(all, "t.csv", "tickets", now, named).size(), 2u);
}

}  // namespace
}  // namespace treadwell::intake
