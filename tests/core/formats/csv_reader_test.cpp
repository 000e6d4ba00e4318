#include "core/formats/csv_reader.h"

#include "core/formats/codes.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace treadwell::formats {
namespace {

using testing::ElementsAre;

CsvTable read(std::string_view bytes, const CsvOptions& options = {}) {
    auto table = readCsv(bytes, options);
    if (!table) throw std::runtime_error(std::string{toText(table.error().code())});
    return *std::move(table);
}

Error errorOf(std::string_view bytes) {
    const auto table = readCsv(bytes);
    return table ? Error{} : table.error();
}

class Delimiters : public testing::TestWithParam<char> {};

TEST_P(Delimiters, AreFoundOutsideQuotes) {
    const std::string d{GetParam()};
    const CsvTable table = read("name" + d + "net\n\"a;,\t|" + d + "b\"" + d + "5\nc" + d + "6\n");
    EXPECT_EQ(table.delimiter, GetParam());
    ASSERT_EQ(table.records.size(), 2u);
    EXPECT_THAT(table.records[0].cells, ElementsAre("a;,\t|" + d + "b", "5"));
}

INSTANTIATE_TEST_SUITE_P(Dialects, Delimiters, testing::Values(';', ',', '\t', '|'));

TEST(ReadCsv, DecimalCommasAreNoDelimiters) {
    const CsvTable table = read("a;b;c\n1,5;2,5;3,5\n");
    EXPECT_EQ(table.delimiter, ';');
    EXPECT_EQ(table.decimalSign, DecimalSign::comma);
    EXPECT_THAT(table.records[0].cells, ElementsAre("1,5", "2,5", "3,5"));
}

TEST(ReadCsv, AsksWhereTwoDelimitersPartTheRowsAlike) {
    const Error error = errorOf("a;b,c\n1;2,3\n");
    EXPECT_EQ(error.code(), code::delimiterAmbiguous);
    EXPECT_EQ(error.field, "delimiter");
    CsvOptions options;
    options.delimiter = signOf(Delimiter::semicolon);
    EXPECT_THAT(read("a;b,c\n1;2,3\n", options).header.cells, ElementsAre("a", "b,c"));
    EXPECT_EQ(read("a;b,c;d\n1;2,3;4\n").delimiter, ';');
}

TEST(ReadCsv, TakesADeclaredDelimiterAndCountsItsLine) {
    for (const char* declaration : {"sep=|\r\n", "SEP=|\n", "\"sep=|\"\n", "\xEF\xBB\xBFsep=|\n"}) {
        const CsvTable table = read(std::string{declaration} + "a|b\n1;2|3\n");
        EXPECT_EQ(table.delimiter, '|');
        EXPECT_EQ(table.header.line, 2);
        EXPECT_THAT(table.records.at(0).cells, ElementsAre("1;2", "3"));
    }
}

TEST(ReadCsv, AGivenDelimiterOutranksAll) {
    const CsvTable table =
        read("sep=;\na,b;c\n1,2;3\n", {.delimiter = ',', .decimalSign = DecimalSign::point});
    EXPECT_THAT(table.header.cells, ElementsAre("a", "b;c"));
}

TEST(ReadCsv, LinesEndInAnyWay) {
    for (const char* end : {"\n", "\r\n", "\r"}) {
        const std::string e{end};
        const CsvTable table = read("a,b" + e + "1,2" + e + e + "3,4");
        ASSERT_EQ(table.records.size(), 2u);
        EXPECT_EQ(table.records[0].line, 2);
        EXPECT_EQ(table.records[1].line, 4);
        EXPECT_EQ(table.records[1].raw, "3,4");
    }
}

// RFC 4180, section 2, rules 5 to 7: quoted cells, line breaks in them, doubled quotes.
TEST(ReadCsv, QuotedCellsHoldEverything) {
    const CsvTable table = read("a,b\r\n\"b \r\n\r\nbb\",\"a \"\"quoted\"\" word\"\r\n7,8\r\n");
    ASSERT_EQ(table.records.size(), 2u);
    EXPECT_THAT(table.records[0].cells, ElementsAre("b \r\n\r\nbb", "a \"quoted\" word"));
    EXPECT_EQ(table.records[0].line, 2);
    EXPECT_EQ(table.records[0].raw, "\"b \r\n\r\nbb\",\"a \"\"quoted\"\" word\"");
    EXPECT_EQ(table.records[1].line, 5);
}

TEST(ReadCsv, KeepsRaggedRowsAsTheyStand) {
    const CsvTable table = read("a;b;c\n1;2\n1;2;3;;\n1;2;3;4\n");
    ASSERT_EQ(table.records.size(), 3u);
    EXPECT_TRUE(table.isRagged(table.records[0]));
    EXPECT_FALSE(table.isRagged(table.records[1]));
    EXPECT_TRUE(table.isRagged(table.records[2]));
    EXPECT_EQ(table.records[2].raw, "1;2;3;4");
}

TEST(ReadCsv, EmptyCellsAreCells) {
    EXPECT_THAT(read("a\tb\tc\n\t\t\n\t5\t\n").records.at(0).cells, ElementsAre("", "", ""));
    EXPECT_THAT(read("a,b,c\n,,\n").records.at(0).cells, ElementsAre("", "", ""));
}

TEST(ReadCsv, BlanksAroundACellAreNotPartOfIt) {
    EXPECT_THAT(read("a, b\n 1 ,\" 2 \"\n").records.at(0).cells, ElementsAre("1", " 2 "));
}

TEST(ReadCsv, OneColumnNeedsNoDelimiter) {
    EXPECT_THAT(read("height_m\n2.5\n").records.at(0).cells, ElementsAre("2.5"));
}

TEST(ReadCsv, ReadsWindows1252) {
    const CsvTable table = read("feld;netto\nM\xFChle;12,5\n");
    EXPECT_EQ(table.encoding, Encoding::windows1252);
    EXPECT_EQ(table.records.at(0).cells.at(0), "M\u00FChle");
}

TEST(ReadCsv, SaysWhatIsWrongWithTheFile) {
    for (const char* empty : {"", "\n \n", "sep=;\n", "\xEF\xBB\xBF"})
        EXPECT_EQ(errorOf(empty).code(), code::headerMissing);
    const Error open = errorOf("a,b\n1,2\n3,\"4\n5,6\n");
    EXPECT_EQ(open.code(), code::quoteOpen);
    EXPECT_EQ(open.place.line, 3);
    EXPECT_EQ(errorOf("a;b\n1;1.234\n").code(), code::decimalAmbiguous);
    EXPECT_EQ(errorOf("a;b\n1,5;1.5\n").code(), code::decimalMixed);
}

TEST(ReadCsv, AGivenDecimalSignSettlesTheDoubt) {
    EXPECT_EQ(read("a;b\n1;1.234\n", {.delimiter = {}, .decimalSign = DecimalSign::comma}).decimalSign,
              DecimalSign::comma);
}

std::string quoted(const std::string& cell) {
    std::string text = "\"";
    for (const char c : cell) text += c == '"' ? std::string{"\"\""} : std::string{c};
    return text + '"';
}

// RFC 4180, 2.6 and 2.7: quoted cells hold delimiters, line ends and doubled quotes.
RC_GTEST_PROP(ReadCsvProperty, QuotedCellsComeBackInEveryDialect, ()) {
    const auto delimiter = *rc::gen::elementOf(std::string{",;\t|"});
    const std::string lineEnd = *rc::gen::element<std::string>("\r\n", "\n", "\r");
    const auto anyCell = rc::gen::container<std::string>(rc::gen::elementOf(std::string{"ab ;,\t|\"'1.\n"}));
    const auto width = *rc::gen::inRange<std::size_t>(2, 5);
    const auto rows = *rc::gen::container<std::vector<std::vector<std::string>>>(
        rc::gen::container<std::vector<std::string>>(width, anyCell));
    std::string file;
    for (std::size_t i = 0; i < width; ++i)
        file += (i == 0 ? "" : std::string{delimiter}) + "h" + std::to_string(i);
    for (const auto& row : rows) {
        file += lineEnd;
        for (std::size_t i = 0; i < width; ++i)
            file += (i == 0 ? "" : std::string{delimiter}) + quoted(row[i]);
    }
    if (*rc::gen::arbitrary<bool>()) file += lineEnd;
    const CsvTable table = read(file, {.delimiter = delimiter, .decimalSign = DecimalSign::point});
    RC_ASSERT(table.records.size() == rows.size());
    for (std::size_t i = 0; i < rows.size(); ++i) RC_ASSERT(table.records[i].cells == rows[i]);
}

}  // namespace
}  // namespace treadwell::formats
