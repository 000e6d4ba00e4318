#include "core/intake/tickets.h"

#include "core/base/codes.h"
#include "core/formats/codes.h"
#include "core/intake/codes.h"
#include "core/quantity/relations.h"
#include "core/samples/codes.h"
#include "tests/core/intake/farm_context.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace treadwell::intake {
namespace {

const std::string kHeader = "Ticket;Date;Time;Vehicle;Field;Gross kg;Tare kg;Net kg;Status\n";

Intake read(const std::string& rows, const Context& context = farmContext()) {
    auto intake = readTickets(kHeader + rows, context);
    if (!intake) throw std::runtime_error(std::string{toText(intake.error().code())});
    EXPECT_EQ(accountedFor(*intake), intake->rows);
    return *std::move(intake);
}

Error fileError(const std::string& bytes, const Context& context = farmContext()) {
    const auto intake = readTickets(bytes, context);
    return intake ? Error{} : intake.error();
}

const entries::Load& loadAt(const Intake& intake, std::size_t index) {
    return std::get<entries::Load>(intake.proposals.at(index).body);
}

TEST(ReadTickets, ProposesALoad) {
    const Intake intake = read("17;15.09.2026;10:00:30;amsel;QUORNSTIEG;23840,0;11900,0;11940,0;ok\n");
    ASSERT_EQ(intake.proposals.size(), 1u);
    const entries::Load& load = loadAt(intake, 0);
    EXPECT_EQ(load.silo, idOf<farm::SiloId>(1));
    EXPECT_EQ(load.truck, idOf<farm::TruckId>(4));
    EXPECT_EQ(load.field, idOf<farm::FieldId>(6));
    EXPECT_DOUBLE_EQ(load.mass.kilograms(), 11940);
    EXPECT_EQ(load.source, entries::MassSource::weighed);
    EXPECT_EQ(load.ticket, "17");
    EXPECT_TRUE(load.evidence);
    EXPECT_EQ(intake.proposals[0].happened, utc("2026-09-15T08:00:30Z"));
    EXPECT_EQ(intake.proposals[0].line, 2);
    EXPECT_FALSE(intake.proposals[0].target);
}

TEST(ReadTickets, ARowNeedsNeitherTruckNorFieldNorTicket) {
    const Intake intake = read(";15.09.2026;10:00;;;23840,5;11900,5;;\n");
    ASSERT_EQ(intake.proposals.size(), 1u);
    EXPECT_FALSE(loadAt(intake, 0).truck);
    EXPECT_FALSE(loadAt(intake, 0).ticket);
    EXPECT_DOUBLE_EQ(loadAt(intake, 0).mass.kilograms(), 11940);
}

struct BadRow {
    const char* row;
    Code code;
    std::int64_t column;
};

class BadRows : public testing::TestWithParam<BadRow> {};

TEST_P(BadRows, GoToQuarantineWithPlaceReasonAndText) {
    const Intake intake = read(std::string{GetParam().row} + '\n');
    EXPECT_TRUE(intake.proposals.empty());
    ASSERT_EQ(intake.quarantine.size(), 1u);
    EXPECT_EQ(intake.quarantine[0].reason.code(), GetParam().code)
        << toText(intake.quarantine[0].reason.code());
    EXPECT_EQ(intake.quarantine[0].reason.place, (Place{"", 2, GetParam().column}));
    EXPECT_EQ(intake.quarantine[0].raw, GetParam().row);
}

INSTANTIATE_TEST_SUITE_P(
    Rows, BadRows,
    testing::Values(BadRow{"1;15.09.2026;10:00;Zebra;;2,0;1,0;1,0;", code::nameUnknown, 4},
                    BadRow{"1;15.09.2026;10:00;;Nowhere;2,0;1,0;1,0;", code::nameUnknown, 5},
                    BadRow{"1;31.09.2026;10:00;;;24000,0;12000,0;12000,0;", code::wallTimeUnreadable, 3},
                    BadRow{"1;15.09.2026;;;;24000,0;12000,0;12000,0;", code::valueMissing, 3},
                    BadRow{"1;15.09.2026;10:00;;;24000,0;12000,0;12021,0;", code::netDisagrees, 8},
                    BadRow{"1;15.09.2026;10:00;;;12000,0;24000,0;;", code::grossBelowTare, 6},
                    BadRow{"1;15.09.2026;10:00;;;12000,0;24000,0;-12000,0;", code::grossBelowTare, 6},
                    BadRow{"1;15.09.2026;10:00;;;;;-12000,0;", code::valueOutOfRange, 8},
                    BadRow{"1;15.09.2026;10:00;;;24000,0;;;", code::valueMissing, 8},
                    BadRow{"1;15.09.2026;10:00;;;;;12 t;", code::numberUnreadable, 8},
                    BadRow{"1;15.09.2026;10:00;;;;;12.5;", code::valueOutOfRange, 8},
                    BadRow{"1;15.09.2026;10:00;;;;;120000,0;", code::valueOutOfRange, 8},
                    BadRow{"1;15.09.2026;10:00;;;;;12000,0;perhaps", code::wordUnknown, 9},
                    BadRow{";15.09.2026;10:00;;;;;12000,0;void", code::valueMissing, 1},
                    BadRow{"1;15.09.2026;10:00", code::rowRagged, 0},
                    BadRow{"1;15.09.2026;10:00;;;;;12000,0;ok;more", code::rowRagged, 0}));

TEST(ReadTickets, HoldsNetToGrossLessTareWithinOneScaleInterval) {
    EXPECT_EQ(read("1;15.09.2026;10:00;;;24000,0;12000,0;12020,0;\n").used, 1);
    Context context = farmContext();
    context.scaleInterval = AsFedMass::fromKilograms(50);
    EXPECT_EQ(read("1;15.09.2026;10:00;;;24000,0;12000,0;12050,0;\n", context).used, 1);
    EXPECT_EQ(read("1;15.09.2026;10:00;;;24000,0;12000,0;12051,0;\n", context).used, 0);
}

TEST(ReadTickets, PutsSwappedWeighingsRightWhereTheNetBearsItOut) {
    const Intake intake = read("1;15.09.2026;10:00;;;12000,0;24000,0;12000,0;\n");
    ASSERT_EQ(intake.proposals.size(), 1u);
    EXPECT_DOUBLE_EQ(loadAt(intake, 0).mass.kilograms(), 12000);
    ASSERT_EQ(intake.proposals[0].notes.size(), 1u);
    EXPECT_EQ(intake.proposals[0].notes[0].code, code::weighingsSwapped);
}

TEST(ReadTickets, ExactCopiesAndSumsAddNothing) {
    const std::string row = "1;15.09.2026;10:00;;;24000,0;12000,0;12000,0;ok\n";
    const Intake intake = read(row + row + "Total;;;;;;;12000,0;\n;;;;Summe\n");
    EXPECT_EQ(intake.used, 1);
    EXPECT_EQ(intake.duplicates, 1);
    EXPECT_EQ(intake.totals, 2);
}

TEST(ReadTickets, HoldsSumsAgainstTheTicketsAboveThem) {
    const std::string first = "1;15.09.2026;10:00;;;;;12000,5;\n";
    const std::string second = "2;15.09.2026;11:00;;;;;10000,5;\n3;15.09.2026;11:30;;;;;9000,5;void\n";
    EXPECT_TRUE(read(first + second + "Total;;;;;;;22001,0;\n").remarks.empty());
    EXPECT_TRUE(read(first + "Sum;;;;;;;12000,5;\n" + second + "Sum;;;;;;;10000,5;\nTotal;;;;;;;22001,0;\n")
                    .remarks.empty());
    const Intake missing = read(first + second + "Total;;;;;;;34001,5;\n");
    EXPECT_EQ(missing.used, 2) << "a doubtful sum stops no ticket";
    ASSERT_EQ(missing.remarks.size(), 1u);
    const auto mass = [](double kilograms) { return AsFedMass::fromKilograms(kilograms).amount(); };
    EXPECT_EQ(missing.remarks[0], (Message{code::ticketSumDiffers,
                                           {std::int64_t{5}, mass(34001.5), mass(22001), mass(12000.5)}}));
}

TEST(ReadTickets, ASumWithoutAUnitIsInThatOfTheTickets) {
    const std::string rows =
        "Ticket;Date;Time;Net;Unit\n1;15.09.2026;10:00;12,5;t\n2;15.09.2026;11:00;10,5;t\n";
    EXPECT_TRUE(readTickets(rows + "Total;;;23,0;\n", farmContext())->remarks.empty());
    EXPECT_EQ(readTickets(rows + "Total;;;23,1;\n", farmContext())->remarks.size(), 1u);
}

TEST(ReadTickets, TwoScalesNumberTheirTicketsEachForItself) {
    const std::string rows =
        "Scale;Ticket;Date;Time;Net kg;Status\n"
        "A;7;15.09.2026;10:00;12000,5;\nB;7;15.09.2026;10:20;13000,5;\nB;7;15.09.2026;10:20;;void\n";
    const Intake intake = *readTickets(rows, farmContext());
    ASSERT_EQ(intake.proposals.size(), 1u) << "only that of the other scale is void";
    EXPECT_EQ(loadAt(intake, 0).ticket, "A/7");
    EXPECT_DOUBLE_EQ(loadAt(intake, 0).mass.kilograms(), 12000.5);
    EXPECT_EQ(intake.voided, 2);
    EXPECT_TRUE(intake.ignoredColumns.empty());
}

TEST(ReadTickets, ATicketIsItsNumberAndItsDay) {
    const Intake intake = read(
        "1;15.09.2026;10:00;;;;;12000,5;\n"
        "1;16.09.2026;10:00;;;;;12000,5;\n"
        "1;15.09.2026;11:00;;;;;13000,5;\n");
    EXPECT_EQ(intake.used, 2);
    ASSERT_EQ(intake.quarantine.size(), 1u);
    EXPECT_EQ(intake.quarantine[0].reason.code(), code::ticketRepeated);
    EXPECT_EQ(intake.quarantine[0].reason.place.line, 4);
}

TEST(ReadTickets, AVoidRowTakesBackItsTicketWhereverItStands) {
    const std::string good = "1;15.09.2026;10:00;;;;;12000,5;ok\n";
    const std::string voiding = "1;15.09.2026;10:07;;;;;12000,5;void\n";
    for (const std::string& rows : {good + voiding, voiding + good}) {
        const Intake intake = read(rows + "2;15.09.2026;10:20;;;;;12000,5;ok\n");
        EXPECT_EQ(intake.used, 1);
        EXPECT_EQ(intake.voided, 2);
        EXPECT_EQ(loadAt(intake, 0).ticket, "2");
    }
    EXPECT_EQ(read(voiding).voided, 1);
}

TEST(ReadTickets, ImportingAgainAddsNothing) {
    const std::string rows =
        "1;15.09.2026;10:00;Amsel;;;;12000,5;ok\n"
        "2;15.09.2026;10:10;;;;;12000,5;ok\n";
    Context context = farmContext();
    record(context, read(rows, context));
    const Intake again = read(rows + "3;15.09.2026;10:20;;;;;12000,5;ok\n", context);
    EXPECT_EQ(again.alreadyImported, 2);
    EXPECT_EQ(again.used, 1);
    // The same rows in another dialect: comma, decimal point, other order of columns, Windows line ends.
    const auto other = readTickets(
        "Status,Ticket,Date,Time,Vehicle,Field,Gross kg,Tare kg,Net "
        "kg\r\nok,1,15.09.2026,10:00,Amsel,,,,\"12000,5\"\r\n",
        context);
    ASSERT_TRUE(other);
    EXPECT_EQ(other->alreadyImported, 1);
}

TEST(ReadTickets, ARecordedTicketIsVoidedOnceAndNotBroughtBack) {
    const std::string good = "1;15.09.2026;10:00;;;;;12000,5;ok\n";
    const std::string voiding = "1;15.09.2026;10:07;;;;;12000,5;storno\n";
    Context context = farmContext();
    record(context, read(good, context));
    const Intake voids = read(good + voiding, context);
    ASSERT_EQ(voids.proposals.size(), 1u);
    EXPECT_EQ(voids.proposals[0].target, context.loads.find("1")->second.id);
    EXPECT_EQ(std::get<entries::VoidEntry>(voids.proposals[0].body).reason, "storno (1)");
    EXPECT_EQ(voids.alreadyImported, 1);

    context.loads.find("1")->second.voided = true;
    const Intake again = read(good + voiding, context);
    EXPECT_EQ(again.used, 0);
    EXPECT_EQ(again.alreadyImported, 2);
}

TEST(ReadTickets, ARecordedTicketWithOtherFiguresIsNotASecondLoad) {
    Context context = farmContext();
    record(context, read("1;15.09.2026;10:00;;;;;12000,5;\n", context));
    const Intake changed = read("1;15.09.2026;10:00;;;;;12500,5;\n", context);
    ASSERT_EQ(changed.quarantine.size(), 1u);
    EXPECT_EQ(changed.quarantine[0].reason.code(), code::ticketRepeated);
}

struct UnitCase {
    std::string file;
    double kilograms;
};

class Units : public testing::TestWithParam<UnitCase> {};

// Exact conversions of the international pound and the short ton (value from memory: 0.45359237 kg, 2000 lb).
TEST_P(Units, AreTakenFromHeaderOrRow) {
    const auto intake = readTickets(GetParam().file, farmContext());
    ASSERT_TRUE(intake);
    EXPECT_NEAR(loadAt(*intake, 0).mass.kilograms(), GetParam().kilograms, 1e-9);
}

INSTANTIATE_TEST_SUITE_P(Files, Units,
                         testing::Values(UnitCase{"time,net_t\n2026-09-15T10:00:00Z,12.34\n", 12340},
                                         UnitCase{"time,net_lb\n2026-09-15T10:00:00Z,25000.0\n", 11339.80925},
                                         UnitCase{"time,net,unit\n2026-09-15T10:00:00Z,10.5,tons\n",
                                                  9525.43977},
                                         UnitCase{"time;Netto;Einheit\n15.09.2026 10:00;12,5;t\n", 12500}));

const std::string kBadRow = "1;15.09.2026;10:00;Zebra;;24000,0;12000,0;12000,0;ok";

Context withAside(const Intake& intake, bool voided = false) {
    Context context = farmContext();
    entries::Entry entry;
    entry.header.id = idOf<entries::EntryId>(77);
    entry.body = entries::RowSetAside{"t.csv",
                                      "tickets",
                                      2,
                                      4,
                                      "truck",
                                      "nameUnknown",
                                      "Zebra is unknown",
                                      intake.quarantine.at(0).evidence.hash};
    learn(context, entry, voided);
    return context;
}

TEST(ReadTickets, ARowSetAsideIsAFileOfItsOwn) {
    const Intake intake = read("\n" + kBadRow + '\n');
    const Quarantined& row = intake.quarantine.at(0);
    EXPECT_EQ(row.evidence.content, "sep=;\n" + kHeader + kBadRow + '\n');
    EXPECT_EQ(row.happened, utc("2026-09-15T08:00:00Z"));
    EXPECT_FALSE(row.isKnown);
    Context context = farmContext();
    context.trucks.add("Zebra", idOf<farm::TruckId>(9));
    const auto again = readTickets(row.evidence.content, context);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->used, 1);
    EXPECT_EQ(again->proposals.at(0).evidence, row.evidence);
}

TEST(ReadTickets, ARowThatWasSetAsideIsKnownUntilItIsReadOrTakenBack) {
    const Intake first = read(kBadRow + '\n');
    const Intake again = read(kBadRow + '\n', withAside(first));
    ASSERT_EQ(again.quarantine.size(), 1u);
    EXPECT_TRUE(again.quarantine[0].isKnown);
    EXPECT_TRUE(again.settled.empty());

    const Intake takenBack = read(kBadRow + '\n', withAside(first, true));
    EXPECT_TRUE(takenBack.quarantine.empty());
    EXPECT_EQ(takenBack.alreadyImported, 1);

    Context context = withAside(first);
    context.trucks.add("Zebra", idOf<farm::TruckId>(9));
    const Intake now = read(kBadRow + '\n', context);
    EXPECT_EQ(now.used, 1);
    EXPECT_THAT(now.settled, testing::ElementsAre(idOf<entries::EntryId>(77)));
}

TEST(ReadTickets, SaysWhatIsWrongWithTheFile) {
    EXPECT_EQ(fileError("time,net\n2026-09-15T10:00:00Z,12.5\n").code(), code::massUnitMissing);
    EXPECT_EQ(fileError("time,net_m\n2026-09-15T10:00:00Z,12.5\n").code(), code::massUnitUnknown);
    EXPECT_EQ(fileError("time,gross_kg\n").code(), code::columnMissing);
    EXPECT_EQ(fileError("net_kg\n12.5\n").code(), code::columnMissing);
    EXPECT_EQ(fileError("net_kg,netto_kg,time\n").code(), code::columnTwice);
    EXPECT_EQ(fileError("date,time,net_kg\n04/05/2026,10:00,1\n").code(), code::dateOrderAmbiguous);
    EXPECT_EQ(fileError("time;net_t\n2026-09-15T10:00:00Z;12.340\n").code(), code::decimalAmbiguous);
    EXPECT_EQ(fileError("").code(), code::headerMissing);
}

TEST(ReadTickets, TheCallerSettlesWhatTheFileLeavesOpen) {
    Context context = farmContext("America/Sao_Paulo");
    context.map.massUnit = formats::MassUnit::t;
    context.map.dateOrder = DateOrder::dayFirst;
    context.map.decimalSign = formats::DecimalSign::point;
    const auto intake = readTickets("date;time;net\n04/05/2026;10:00;12.340\n", context);
    ASSERT_TRUE(intake);
    EXPECT_DOUBLE_EQ(loadAt(*intake, 0).mass.kilograms(), 12340);
    EXPECT_EQ(intake->proposals[0].happened, utc("2026-05-04T13:00:00Z"));
}

TEST(ReadTickets, NotesATimeThatTheClockShowedTwice) {
    const Intake intake = read("1;25.10.2026;02:30;;;;;12000,5;\n");
    ASSERT_EQ(intake.proposals.at(0).notes.size(), 1u);
    EXPECT_EQ(intake.proposals[0].notes[0].code, code::clockChanged);
}

TEST(ReadTickets, ASiloIsNamedByTheRowOrGiven) {
    Context context = farmContext();
    context.silo.reset();
    const auto named = readTickets("time,silo,net_kg\n2026-09-15T10:00:00Z,long bunker,12000\n", context);
    ASSERT_TRUE(named);
    EXPECT_EQ(loadAt(*named, 0).silo, idOf<farm::SiloId>(1));
    const auto unnamed = readTickets("time,net_kg\n2026-09-15T10:00:00Z,12000\n", context);
    ASSERT_TRUE(unnamed);
    EXPECT_EQ(unnamed->quarantine.at(0).reason.code(), code::valueMissing);
    EXPECT_EQ(unnamed->quarantine.at(0).reason.field, "silo");
}

}  // namespace
}  // namespace treadwell::intake
