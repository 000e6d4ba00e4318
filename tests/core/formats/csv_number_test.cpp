#include "core/formats/csv_number.h"

#include "core/formats/codes.h"

#include <gtest/gtest.h>

namespace treadwell::formats {
namespace {

std::vector<CsvRecord> oneColumn(std::vector<std::string> cells) {
    std::vector<CsvRecord> records;
    for (std::string& cell : cells)
        records.push_back({static_cast<std::int64_t>(records.size()) + 2, {std::move(cell)}, {}});
    return records;
}

struct Decided {
    std::vector<std::string> cells;
    DecimalSign sign;
};

class DecimalSigns : public testing::TestWithParam<Decided> {};

TEST_P(DecimalSigns, AreDecidedForTheWholeFile) {
    const auto sign = decimalSignOf(oneColumn(GetParam().cells));
    ASSERT_TRUE(sign);
    EXPECT_EQ(*sign, GetParam().sign);
}

INSTANTIATE_TEST_SUITE_P(
    Files, DecimalSigns,
    testing::Values(Decided{{"12,5"}, DecimalSign::comma}, Decided{{"12.5"}, DecimalSign::point},
                    Decided{{"1.234,5"}, DecimalSign::comma}, Decided{{"1,234.5"}, DecimalSign::point},
                    Decided{{"1.234", "12,5"}, DecimalSign::comma},
                    Decided{{"1,234", "0.5"}, DecimalSign::point}, Decided{{"0.355"}, DecimalSign::point},
                    Decided{{"1.234.567"}, DecimalSign::comma}, Decided{{"1,234,567"}, DecimalSign::point},
                    Decided{{"1234.567"}, DecimalSign::point},
                    Decided{{"15.04.2026", "12,5"}, DecimalSign::comma},
                    Decided{{"-3,5"}, DecimalSign::comma},
                    Decided{{"15.04.2026", "1234"}, DecimalSign::point},
                    Decided{{"T-1,5", "7"}, DecimalSign::point}, Decided{{}, DecimalSign::point}));

TEST(DecimalSignOf, AsksWhereEveryNumberCanBeReadEitherWay) {
    const auto sign = decimalSignOf(oneColumn({"17", "1.234", "12.500"}));
    ASSERT_FALSE(sign);
    EXPECT_EQ(sign.error().code(), code::decimalAmbiguous);
    EXPECT_EQ(sign.error().place, (Place{"", 3, 1}));
    EXPECT_EQ(sign.error().message.arguments, (std::vector<Argument>{std::string{"1.234"}}));
}

TEST(DecimalSignOf, AsksWhereTheFileDisagreesWithItself) {
    const auto sign = decimalSignOf(oneColumn({"12,5", "12.5"}));
    ASSERT_FALSE(sign);
    EXPECT_EQ(sign.error().code(), code::decimalMixed);
}

struct Cell {
    const char* text;
    std::optional<double> asPoint;
    std::optional<double> asComma;
};

class Cells : public testing::TestWithParam<Cell> {};

TEST_P(Cells, AreReadWithTheFilesDecimalSign) {
    EXPECT_EQ(numberFromCell(GetParam().text, DecimalSign::point), GetParam().asPoint);
    EXPECT_EQ(numberFromCell(GetParam().text, DecimalSign::comma), GetParam().asComma);
}

// The rows 1234,5 to 12.5 are those that every reader of German and English numbers must keep apart.
INSTANTIATE_TEST_SUITE_P(
    Signs, Cells,
    testing::Values(Cell{"1234,5", std::nullopt, 1234.5}, Cell{"1.234,5", std::nullopt, 1234.5},
                    Cell{"1.234", 1.234, 1234.0}, Cell{"1,234", 1234.0, 1.234},
                    Cell{"12.5", 12.5, std::nullopt}, Cell{"12'345", 12345.0, 12345.0},
                    Cell{"12 345", 12345.0, 12345.0}, Cell{"12\u202F345,5", std::nullopt, 12345.5},
                    Cell{"-12,5", std::nullopt, -12.5}, Cell{"+7", 7.0, 7.0}, Cell{".5", 0.5, std::nullopt},
                    Cell{",5", std::nullopt, 0.5}, Cell{"5,", std::nullopt, 5.0},
                    Cell{"1,23,456", std::nullopt, std::nullopt}, Cell{"", std::nullopt, std::nullopt},
                    Cell{"-", std::nullopt, std::nullopt}, Cell{".", std::nullopt, std::nullopt},
                    Cell{"nan", std::nullopt, std::nullopt}, Cell{"inf", std::nullopt, std::nullopt},
                    Cell{"1e5", std::nullopt, std::nullopt}, Cell{"12 kg", std::nullopt, std::nullopt},
                    Cell{"--5", std::nullopt, std::nullopt}));

}  // namespace
}  // namespace treadwell::formats
