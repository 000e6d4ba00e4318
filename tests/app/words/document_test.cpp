#include "app/words/document.h"

#include "app/words/document_table.h"
#include "core/base/number_text.h"
#include "core/review/codes.h"
#include "tests/core/review/example_day.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <simdjson.h>

#include <algorithm>
#include <sstream>

namespace treadwell::words {
namespace {

using review::Cell;
using testing::HasSubstr;

review::Document smallDocument() {
    review::Table table{"loads",
                        {{"truck", code::columnTruck}, {"mass", code::columnMass}},
                        {{std::string{"Käfer"}, Amount{Dimension::asFedMass, 9'500.0}},
                         {std::string{"Ox"}, Amount{Dimension::asFedMass, 12'000.0}},
                         {Message{code::reviewTotal, {}}, Cell{}}}};
    review::Document document{"small", {code::reviewDaySheet, {std::string{"A"}, std::string{"B"}}}, {}};
    document.sections.push_back({"deliveries", code::reviewDeliveries, {std::move(table)}});
    return document;
}

/// The cells of one line of CSV.
std::vector<std::string> cellsOf(const std::string& line) {
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        if (line[i] == '"') {
            if (quoted && i + 1 < line.size() && line[i + 1] == '"')
                cells.back() += line[++i];
            else
                quoted = !quoted;
        } else if (line[i] == ',' && !quoted) {
            cells.emplace_back();
        } else if (line[i] != '\r' || quoted) {
            cells.back() += line[i];
        }
    }
    return cells;
}

/// What a cell of CSV looks like in words, from its own text alone but for the kind of cell it is.
std::string shownAs(const Cell& cell, const std::string& text, const std::string& unit) {
    if (text.empty()) return "-";
    if (const auto* amount = std::get_if<Amount>(&cell)) {
        const Amount read{amount->dimension,
                          unitOf(amount->dimension, UnitSystem::metric).toSi(numberFromText(text).value())};
        std::string shown = inWords(read, {});
        if (!unit.empty()) shown.resize(shown.size() - unit.size());
        while (!shown.empty() && shown.back() == ' ') shown.pop_back();
        return shown;
    }
    if (std::holds_alternative<double>(cell)) return fixedText(numberFromText(text).value(), 1);
    if (std::holds_alternative<Instant>(cell)) return clockText({}, instantFromIso8601(text).value());
    if (std::holds_alternative<review::Word>(cell)) return inWords(cell, {});
    return text;
}

TEST(PlainText, SetsATableInColumns) {
    EXPECT_EQ(plainText(smallDocument(), {}),
              "Day sheet of A, B\n\nWhat came in\n------------\n"
              "Truck  As fed\n"
              "            t\n"
              "Käfer     9.5\n"
              "Ox       12.0\n"
              "Total       -\n");
}

// Columns that are too wide together go on below, with the column that names the rows.
TEST(PlainText, GoesOnBelowWhereALineIsTooNarrow) {
    review::Document document = smallDocument();
    auto& table = std::get<review::Table>(document.sections.front().blocks.front());
    for (int i = 0; i < 4; ++i) {
        table.columns.push_back({"note", code::columnNote});
        for (auto& row : table.rows) row.emplace_back(std::string{"unbreakable-word"});
    }
    const std::string text = plainText(document, {}, 40);
    std::size_t rows = 0;
    for (std::size_t at = text.find("Käfer"); at != std::string::npos; at = text.find("Käfer", at + 1))
        ++rows;
    EXPECT_GE(rows, 2u) << text;
    std::size_t words = 0;
    for (std::size_t at = text.find("unbreakable"); at != std::string::npos;
         at = text.find("unbreakable", at + 1))
        ++words;
    EXPECT_EQ(words, 12u) << "every cell, once:\n" << text;
}

TEST(PlainText, KeepsTheUnitAtTheCellWhereAColumnHasSeveral) {
    review::Document document = smallDocument();
    auto& table = std::get<review::Table>(document.sections.front().blocks.front());
    table.rows.push_back({std::string{"Spread"}, Amount{Dimension::layerThickness, 0.15}});
    EXPECT_THAT(plainText(document, {}), HasSubstr("9.5 t\n"));
    EXPECT_THAT(plainText(document, {}), HasSubstr("15 cm\n"));
}

TEST(Wrapped, BreaksAtBlanksAndLongWordsAtTheLine) {
    EXPECT_EQ(wrapped("one two three", 7), (std::vector<std::string>{"one two", "three"}));
    EXPECT_EQ(wrapped("abcdefgh ij", 5), (std::vector<std::string>{"abcde", "fgh", "ij"}));
    EXPECT_EQ(wrapped("Käfermühle", 5), (std::vector<std::string>{"Käfer", "mühle"}));
    EXPECT_EQ(wrapped("", 5), std::vector<std::string>{""});
}

TEST(MessageText, IsTheTitleAndTheSummary) {
    const std::string text = messageText(review::exampleSheet(), {});
    EXPECT_THAT(text, testing::StartsWith("Day sheet of Lindenhof, 2026-02-10\n"
                                          "10 loads, 120.0 t as fed, 41.8 t DM; dry matter 34.8 %\n"));
    EXPECT_THAT(text, HasSubstr("Bunker 1, the day's crop when full: "));
    EXPECT_LT(text.size(), 600u);
    EXPECT_THAT(text, testing::Not(HasSubstr("Truck")));
}

TEST(PlainText, FollowsTheUnitsAndTheDecimalSign) {
    const Style us{.units = UnitSystem::us, .decimalSign = ','};
    EXPECT_THAT(plainText(smallDocument(), us), HasSubstr("10,5\n"));
}

TEST(PlainText, NeverIsWiderThanAskedAndLosesNothing) {
    const review::Document sheet = review::exampleSheet();
    for (const int width : {40, 60, 78, 200}) {
        const std::string text = plainText(sheet, {}, width);
        std::istringstream lines{text};
        for (std::string line; std::getline(lines, line);) {
            EXPECT_LE(columnsOf(line), static_cast<std::size_t>(width)) << line;
        }
        EXPECT_THAT(text, HasSubstr("Bunker 1"));
        EXPECT_THAT(text, HasSubstr("kg DM/m3"));
        EXPECT_THAT(text, HasSubstr("34.8 %"));
        EXPECT_THAT(text, HasSubstr("(not"));
    }
}

TEST(PlainText, TellsTheFarmsTime) {
    Style style;
    style.zone = FarmZone::named("America/Sao_Paulo").value();
    EXPECT_THAT(plainText(review::exampleSheet(), style), HasSubstr("09:25"));
}

TEST(DocumentJson, HoldsEveryCellWithItsUnit) {
    JsonWriter json;
    writeJson(json, review::exampleSheet(), {});
    simdjson::dom::parser parser;
    simdjson::dom::element root = parser.parse(json.text());
    EXPECT_EQ(std::string_view{root["document"]}, "daySheet");
    EXPECT_EQ(root["sections"].get_array().size(), 27u);
    simdjson::dom::element silo = root.at_pointer("/sections/2/blocks/0/rows/0");
    EXPECT_EQ(std::string_view{silo["silo"]}, "Bunker 1");
    EXPECT_EQ(std::int64_t{silo["loads"]}, 10);
    EXPECT_NEAR(double{silo["mass"]["value"]}, 120, 1e-9);
    EXPECT_EQ(std::string_view{silo["mass"]["unit"]}, "t");
    simdjson::dom::element state = root.at_pointer("/sections/0/blocks/0");
    EXPECT_EQ(std::string_view{state["code"]}, "reviewNotClosed");
    EXPECT_EQ(std::string_view{root.at_pointer("/sections/2/blocks/4")["series"]}, "delivery");
}

/// What a cell of JSON looks like in words; its quantities carry their unit.
std::string shownAs(const Cell& cell, const simdjson::dom::element& member, const std::string& unit) {
    if (member.is_null()) return "-";
    if (const auto* amount = std::get_if<Amount>(&cell)) {
        const Unit& metric = unitOf(amount->dimension, UnitSystem::metric);
        EXPECT_EQ(std::string_view{member["unit"]}, metric.key);
        std::string shown = inWords(Amount{amount->dimension, metric.toSi(double{member["value"]})}, {});
        if (!unit.empty()) shown.resize(shown.size() - unit.size());
        while (!shown.empty() && shown.back() == ' ') shown.pop_back();
        return shown;
    }
    if (std::holds_alternative<Message>(cell)) return std::string{std::string_view{member["text"]}};
    if (std::holds_alternative<std::int64_t>(cell)) return std::to_string(std::int64_t{member});
    if (std::holds_alternative<double>(cell)) return fixedText(double{member}, 1);
    const std::string text{std::string_view{member}};
    if (std::holds_alternative<Instant>(cell)) return clockText({}, instantFromIso8601(text).value());
    return std::holds_alternative<review::Word>(cell) ? inWords(cell, {}) : text;
}

TEST(DocumentJson, HoldsEveryCellAsTheTextShowsIt) {
    const review::Document sheet = review::exampleSheet();
    JsonWriter json;
    writeJson(json, sheet, {});
    simdjson::dom::parser parser;
    simdjson::dom::element root = parser.parse(json.text());
    std::size_t cells = 0;
    for (std::size_t s = 0; s < sheet.sections.size(); ++s) {
        const simdjson::dom::element section = root["sections"].at(s);
        EXPECT_EQ(std::string_view{section["section"]}, sheet.sections[s].key);
        ASSERT_EQ(section["blocks"].get_array().size(), sheet.sections[s].blocks.size());
        for (std::size_t b = 0; b < sheet.sections[s].blocks.size(); ++b) {
            const simdjson::dom::element block = section["blocks"].at(b);
            if (const auto* message = std::get_if<Message>(&sheet.sections[s].blocks[b])) {
                EXPECT_EQ(std::string_view{block["text"]}, inWords(*message, {}));
            }
            const auto* table = std::get_if<review::Table>(&sheet.sections[s].blocks[b]);
            if (table == nullptr) continue;
            const TableInWords words = inWords(*table, {});
            ASSERT_EQ(block["rows"].get_array().size(), table->rows.size());
            for (std::size_t r = 0; r < table->rows.size(); ++r) {
                for (std::size_t c = 0; c < table->columns.size(); ++c, ++cells) {
                    const simdjson::dom::element member = block["rows"].at(r)[table->columns[c].key];
                    EXPECT_EQ(shownAs(table->rows[r][c], member, words.units[c]), words.rows[r][c])
                        << table->key << ' ' << table->columns[c].key;
                }
            }
        }
    }
    EXPECT_GT(cells, 150u);
}

// A wide sheet's lines hold every cell of every table: what the CSV holds whole reads the same when rounded.
TEST(DocumentCsv, HoldsEveryCellAsTheTextShowsIt) {
    const review::Document sheet = review::exampleSheet();
    std::istringstream lines{csvText(sheet, {})};
    std::string line;
    std::getline(lines, line);
    EXPECT_EQ(line, "title,daySheet,\"Day sheet of Lindenhof, 2026-02-10\"\r");
    std::size_t rows = 0, cells = 0;
    for (const review::Section& section : sheet.sections) {
        for (const review::Block& block : section.blocks) {
            const auto* table = std::get_if<review::Table>(&block);
            if (table == nullptr) {
                const auto* series = std::get_if<review::Series>(&block);
                for (std::size_t i = 0; i < (series ? series->points.size() + 1 : 1); ++i)
                    std::getline(lines, line);
                continue;
            }
            std::getline(lines, line);
            EXPECT_THAT(line,
                        testing::StartsWith(std::string{section.key} + ',' + std::string{table->key} + ','));
            const TableInWords words = inWords(*table, {});
            for (std::size_t r = 0; r < table->rows.size(); ++r, ++rows) {
                std::getline(lines, line);
                const std::vector<std::string> fields = cellsOf(line);
                ASSERT_EQ(fields.size(), table->columns.size() + 2) << line;
                for (std::size_t c = 0; c < table->columns.size(); ++c, ++cells) {
                    EXPECT_EQ(shownAs(table->rows[r][c], fields[c + 2], words.units[c]), words.rows[r][c])
                        << line;
                }
            }
        }
    }
    EXPECT_FALSE(std::getline(lines, line)) << line;
    EXPECT_GT(rows, 20u);
    EXPECT_GT(cells, 150u);
}

// What a farm's own words would do in a spreadsheet.
TEST(DocumentCsv, KeepsAFormulaAWord) {
    review::Document document = smallDocument();
    std::get<review::Table>(document.sections.front().blocks.front()).rows[0][0] = std::string{"=1+1"};
    EXPECT_THAT(csvText(document, {}), HasSubstr(",'=1+1,"));
}

}  // namespace
}  // namespace treadwell::words
