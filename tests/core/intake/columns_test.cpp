#include "core/intake/columns.h"

#include "core/intake/codes.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace treadwell::intake {
namespace {

constexpr std::array kTicketColumns{Column::ticket, Column::date,  Column::time, Column::truck,
                                    Column::field,  Column::gross, Column::tare, Column::net,
                                    Column::unit,   Column::status};

Result<Columns> columnsOf(std::vector<std::string> header) {
    return Columns::of({1, std::move(header), {}}, kTicketColumns);
}

TEST(Columns, ANamedColumnIsLookedForUnderItsHeaderAlone) {
    const formats::CsvRecord header{1, {"Time", "Weight 1 [t]", "Net kg", "Weight 2"}, {}};
    const std::vector<ColumnName> named{{Column::net, "weight 1 t"}, {Column::tare, "Weight 2"}};
    const auto columns = Columns::of(header, kTicketColumns, named);
    ASSERT_TRUE(columns);
    EXPECT_EQ(columns->indexOf(Column::net), 1u);
    EXPECT_EQ(columns->unitOf(Column::net), "t");
    EXPECT_EQ(columns->meaningOf(3), Column::tare);
    EXPECT_EQ(columns->meaningOf(2), std::nullopt);
    EXPECT_THAT(columns->ignored(), testing::ElementsAre("Net kg"));

    const auto missing =
        Columns::of(header, kTicketColumns, std::vector<ColumnName>{{Column::net, "Weight 3"}});
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().code(), code::columnNotThere);
    EXPECT_EQ(missing.error().field, "net");
    // What this list of columns does not want is another file's.
    EXPECT_TRUE(Columns::of(header, kTicketColumns, std::vector<ColumnName>{{Column::wet, "Weight 3"}}));
}

class TradeWords : public testing::TestWithParam<std::vector<std::string>> {};

TEST_P(TradeWords, NameTheSameColumns) {
    const auto columns = columnsOf(GetParam());
    ASSERT_TRUE(columns);
    constexpr std::array kOrder{Column::ticket, Column::date,  Column::time, Column::truck,
                                Column::field,  Column::gross, Column::tare, Column::net};
    for (std::size_t i = 0; i < kOrder.size(); ++i)
        EXPECT_EQ(columns->indexOf(kOrder[i]), i) << GetParam()[i];
    for (const Column weight : {Column::gross, Column::tare, Column::net})
        EXPECT_EQ(columns->unitOf(weight), "kg");
    EXPECT_THAT(columns->ignored(), testing::IsEmpty());
}

INSTANTIATE_TEST_SUITE_P(
    Languages, TradeWords,
    testing::Values(std::vector<std::string>{"Ticket No.", "Date", "Time", "Vehicle", "Field", "Gross kg",
                                             "Tare kg", "Net kg"},
                    std::vector<std::string>{"Wiegeschein-Nr.", "Datum", "Uhrzeit", "Kennzeichen", "Schlag",
                                             "Brutto [kg]", "Tara [kg]", "Netto [kg]"},
                    std::vector<std::string>{"Ticket N\u00BA", "Data", "Hora", "Caminh\u00E3o", "Talh\u00E3o",
                                             "Peso bruto (kg)", "Peso tara (kg)", "Peso l\u00EDquido (kg)"},
                    std::vector<std::string>{"ticket_no", "DATE", "TIME", "truck", "field", "gross_kg",
                                             "tare_kg", "net_kg"}));

TEST(Columns, SayWhichHeadersTheyPassOver) {
    const auto columns = columnsOf({"Driver", "Net t", "Remarks", ""});
    ASSERT_TRUE(columns);
    EXPECT_THAT(columns->ignored(), testing::ElementsAre("Driver", "Remarks", ""));
    EXPECT_EQ(columns->unitOf(Column::net), "t");
    EXPECT_EQ(columns->unitOf(Column::gross), "");
}

TEST(Columns, AreNotChosenAmongTwo) {
    const auto columns = columnsOf({"Net kg", "Netto"});
    ASSERT_FALSE(columns);
    EXPECT_EQ(columns.error().code(), code::columnTwice);
    EXPECT_EQ(columns.error().field, "net");
    EXPECT_EQ(columns.error().place.column, 2);
}

TEST(Columns, SayWhatIsMissing) {
    const auto columns = columnsOf({"a", "b"});
    ASSERT_TRUE(columns);
    const auto net = columns->require(Column::net);
    ASSERT_FALSE(net);
    EXPECT_EQ(net.error().code(), code::columnMissing);
    EXPECT_EQ(net.error().field, "net");
    EXPECT_EQ(net.error().message.arguments, (std::vector<Argument>{std::string{"a, b"}}));
}

}  // namespace
}  // namespace treadwell::intake
