#include "core/intake/import_map.h"

#include "core/entries/codes.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace treadwell::intake {
namespace {

ImportMap someMap() {
    ImportMap map;
    map.encoding = formats::Encoding::latin9;
    map.delimiter = formats::Delimiter::bar;
    map.decimalSign = formats::DecimalSign::comma;
    map.dateOrder = DateOrder::monthFirst;
    map.massUnit = formats::MassUnit::ton;
    map.columns = {{Column::net, "Weight \"2\""}, {Column::time, "when"}};
    return map;
}

TEST(ImportMaps, ReadBackAsTheyWereWritten) {
    ImportMaps maps;
    EXPECT_EQ(ImportMaps::parse(maps.text()), maps);
    maps.remember(sha256("one"), someMap());
    maps.remember(sha256("two"), {});
    EXPECT_EQ(ImportMaps::parse(maps.text()), maps);
    EXPECT_EQ(maps.find(sha256("one")), someMap());
    EXPECT_EQ(maps.find(sha256("three")), ImportMap{});
    maps.remember(sha256("one"), {});
    EXPECT_EQ(maps.all.size(), 2u);
    EXPECT_EQ(maps.find(sha256("one")), ImportMap{});
}

TEST(ImportMaps, RefuseATextThatIsNotTheirs) {
    EXPECT_EQ(ImportMaps::parse("{").error().code(), code::payloadUnreadable);
    EXPECT_EQ(ImportMaps::parse("{}").error().code(), code::payloadFieldMissing);
    EXPECT_EQ(ImportMaps::parse(R"({"import_maps":[{"header":"00","map":{"columns":[]}}]})").error().code(),
              code::payloadFieldWrong);
}

TEST(ImportMap, NewAnswersOutrankEarlierOnes) {
    ImportMap given;
    given.decimalSign = formats::DecimalSign::point;
    given.columns = {{Column::net, "Netto"}};
    const ImportMap filled = given.filledFrom(someMap());
    EXPECT_EQ(filled.decimalSign, formats::DecimalSign::point);
    EXPECT_EQ(filled.massUnit, formats::MassUnit::ton);
    EXPECT_THAT(filled.columns,
                testing::ElementsAre(ColumnName{Column::net, "Netto"}, ColumnName{Column::time, "when"}));
    EXPECT_EQ(someMap().filledFrom({}), someMap());
}

TEST(HeaderFingerprint, IsOfTheFirstLineThatSaysSomething) {
    const auto plain = headerFingerprint("a;b\n1;2\n");
    EXPECT_EQ(headerFingerprint("\xEF\xBB\xBF\r\nsep=;\r\na;b\r\n3;4\r\n"), plain);
    EXPECT_EQ(headerFingerprint("a;b"), plain);
    EXPECT_NE(headerFingerprint("a;c\n1;2\n"), plain);
    EXPECT_EQ(headerFingerprint(""), std::nullopt);
    EXPECT_EQ(headerFingerprint(" \n\t\r\n"), std::nullopt);
}

}  // namespace
}  // namespace treadwell::intake
