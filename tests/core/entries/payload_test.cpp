#include "core/entries/payload.h"

#include <gtest/gtest.h>
#include <simdjson.h>

namespace treadwell::entries {
namespace {

using Kind = PayloadValue::Kind;

TEST(PayloadDocument, GivesWhatEveryKindOfValueHolds) {
    PayloadDocument document;
    const auto read = document.read(
        R"({"a":-7,"b":2.5,"c":"caf\u00e9 \"x\"","d":true,"e":null,"f":{"g":1,"h":[]},"i":[[1,2],{"j":3}],)"
        R"("k":18446744073709551615,"a":8} )");
    ASSERT_TRUE(read);
    const PayloadValue& object = **read;
    EXPECT_EQ(object.find("a")->integer, -7) << "of two of one name the first speaks";
    EXPECT_DOUBLE_EQ(object.find("a")->number, -7);
    EXPECT_EQ(object.find("b")->kind, Kind::number);
    EXPECT_DOUBLE_EQ(object.find("b")->number, 2.5);
    EXPECT_EQ(object.find("c")->text, "caf\u00e9 \"x\"");
    EXPECT_TRUE(object.find("d")->truth);
    EXPECT_EQ(object.find("e")->kind, Kind::null);
    EXPECT_EQ(object.find("f")->find("g")->integer, 1);
    EXPECT_EQ(object.find("f")->find("h")->extent, 1u);
    std::vector<std::uint32_t> extents;
    for (const PayloadValue& item : *object.find("i")) extents.push_back(item.extent);
    EXPECT_EQ(extents, (std::vector<std::uint32_t>{3, 2}));
    EXPECT_EQ(object.find("k")->kind, Kind::number) << "beyond int64";
    EXPECT_DOUBLE_EQ(object.find("k")->number, 18446744073709551615.0);
    EXPECT_EQ(object.find("g"), nullptr);
}

TEST(PayloadDocument, ReadsOneAfterAnother) {
    PayloadDocument document;
    const std::string longText(100'000, 'x');
    EXPECT_EQ((*document.read("{\"a\":\"" + longText + "\"}"))->find("a")->text, longText);
    EXPECT_FALSE(document.read("{"));
    EXPECT_EQ((*document.read(R"({"a":1})"))->extent, 2u);
    EXPECT_EQ((*document.read("{}"))->extent, 1u);
}

// The same parser's other reader, which looks at the whole text before it gives anything, is the yardstick.
TEST(PayloadDocument, RefusesAllThatIsNoWholeObject) {
    PayloadDocument document;
    simdjson::dom::parser whole;
    int refused = 0;
    for (const std::string_view json : {"",
                                        " ",
                                        "null",
                                        "[]",
                                        "7",
                                        "\"a\"",
                                        "{",
                                        "}",
                                        "{}}",
                                        "{} {}",
                                        "{}x",
                                        "{\"a\"}",
                                        "{\"a\":}",
                                        "{\"a\":1,}",
                                        "{,}",
                                        "{\"a\":1 \"b\":2}",
                                        "{\"a\":[1,]}",
                                        "{\"a\":[1 2]}",
                                        "{\"a\":[1}",
                                        "{\"a\":{\"b\":1}",
                                        "{\"a\":01}",
                                        "{\"a\":1.}",
                                        "{\"a\":.5}",
                                        "{\"a\":+1}",
                                        "{\"a\":1e}",
                                        "{\"a\":1e999}",
                                        "{\"a\":-}",
                                        "{\"a\":1x}",
                                        "{\"a\":tru}",
                                        "{\"a\":truex}",
                                        "{\"a\":nul}",
                                        "{\"a\":nullx}",
                                        "{\"a\":falsy}",
                                        "{\"a\":NaN}",
                                        "{\"a\":\"\\x\"}",
                                        "{\"a\":\"\\u12\"}",
                                        "{\"a\":\"\\ud800\"}",
                                        "{\"a\":\"\n\"}",
                                        "{\"a\":\"b}",
                                        "{a:1}",
                                        "{'a':1}",
                                        "{\"a\":\"\xff\"}",
                                        "{\"a\\x\":1}",
                                        "{\"a\":123456789012345678901}",
                                        "{\"a\":1}\x01",
                                        "{\"a\":1}",
                                        " {\"a\" : [ 1 ] } ",
                                        "{\"a\":1e5,\"b\":-0.0,\"c\":9223372036854775807}"}) {
        simdjson::dom::object object;
        const bool accepted = whole.parse(simdjson::padded_string{json}).get(object) == simdjson::SUCCESS;
        EXPECT_EQ(document.read(json).has_value(), accepted) << json;
        refused += accepted ? 0 : 1;
    }
    EXPECT_GT(refused, 40);
}

}  // namespace
}  // namespace treadwell::entries
