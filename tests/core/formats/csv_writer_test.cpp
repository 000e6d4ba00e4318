#include "core/formats/csv_writer.h"

#include "core/formats/csv_reader.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

namespace treadwell::formats {
namespace {

TEST(CsvWriter, WritesRfc4180) {
    CsvWriter writer;
    writer.word("name").word("net_kg").endRow();
    writer.text("a \"b\", c\nd").number(12.5).endRow();
    writer.text("").number(std::int64_t{7}).endRow().empty().empty().endRow();
    EXPECT_EQ(writer.content(), "name,net_kg\r\n\"a \"\"b\"\", c\nd\",12.5\r\n,7\r\n,\r\n");
}

TEST(CsvWriter, KeepsASpreadsheetFromTakingTextForAFormula) {
    for (const char* formula : {"=1+1", "+1", "-1", "@name", "\t=1"}) {
        CsvWriter writer;
        writer.text(formula).word("x").endRow();
        const auto table =
            readCsv("a,b\r\n" + writer.content(), {.delimiter = ',', .decimalSign = DecimalSign::point});
        ASSERT_TRUE(table);
        EXPECT_EQ(table->records.at(0).cells.at(0), '\'' + std::string{formula});
    }
    EXPECT_EQ(CsvWriter{}.number(-1.5).content(), "-1.5");
}

TEST(CsvWriter, ReadsBack) {
    const std::vector<std::string> cells{
        " blank before", "blank behind ", "semi;colon", "two\r\nlines", "\"", "caf\u00E9", ""};
    CsvWriter writer;
    for (std::size_t i = 0; i < cells.size(); ++i) writer.word("c" + std::to_string(i));
    writer.endRow();
    for (const std::string& cell : cells) writer.text(cell);
    writer.endRow();
    const auto table = readCsv(writer.content());
    ASSERT_TRUE(table);
    EXPECT_EQ(table->delimiter, ',');
    EXPECT_EQ(table->records.at(0).cells, cells);
}

TEST(CsvWriter, RefusesWhatIsNoNumber) {
    CsvWriter writer;
    EXPECT_THROW(writer.number(std::numeric_limits<double>::quiet_NaN()), std::invalid_argument);
}

}  // namespace
}  // namespace treadwell::formats
