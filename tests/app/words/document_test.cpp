#include "app/words/document.h"

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

TEST(PlainText, SetsATableInColumns) {
    EXPECT_EQ(plainText(smallDocument(), {}),
              "Day sheet of A, B\n\nWhat came in\n------------\n"
              "Truck  As fed\n"
              "Käfer   9.5 t\n"
              "Ox     12.0 t\n"
              "Total  -\n");
}

TEST(PlainText, FollowsTheUnitsAndTheDecimalSign) {
    const Style us{.units = UnitSystem::us, .decimalSign = ','};
    EXPECT_THAT(plainText(smallDocument(), us), HasSubstr("10,5 ton"));
}

TEST(PlainText, NeverIsWiderThanAskedAndLosesNothing) {
    const review::Document sheet = review::exampleSheet();
    for (const int width : {40, 60, 78, 200}) {
        const std::string text = plainText(sheet, {}, width);
        std::istringstream lines{text};
        for (std::string line; std::getline(lines, line);) {
            EXPECT_LE(line.size(), static_cast<std::size_t>(width)) << line;
        }
        EXPECT_THAT(text, HasSubstr("Bunker 1"));
        EXPECT_THAT(text, HasSubstr("kg DM/m3"));
        EXPECT_THAT(text, HasSubstr("34.8 %"));
        EXPECT_THAT(text, HasSubstr("(not named)"));
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
    EXPECT_EQ(root["sections"].get_array().size(), 19u);
    simdjson::dom::element silo = root.at_pointer("/sections/1/blocks/0/rows/0");
    EXPECT_EQ(std::string_view{silo["silo"]}, "Bunker 1");
    EXPECT_EQ(std::int64_t{silo["loads"]}, 10);
    EXPECT_NEAR(double{silo["mass"]["value"]}, 120, 1e-9);
    EXPECT_EQ(std::string_view{silo["mass"]["unit"]}, "t");
    simdjson::dom::element state = root.at_pointer("/sections/0/blocks/0");
    EXPECT_EQ(std::string_view{state["code"]}, "reviewNotClosed");
    EXPECT_EQ(std::string_view{root.at_pointer("/sections/1/blocks/4")["series"]}, "delivery");
}

}  // namespace
}  // namespace treadwell::words
