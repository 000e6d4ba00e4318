#include "core/intake/names.h"

#include "core/entries/entry.h"
#include "core/intake/codes.h"
#include "tests/core/intake/farm_context.h"

#include <gtest/gtest.h>

namespace treadwell::intake {
namespace {

TEST(FoldedName, PassesOverCaseBlanksAndWaysOfWritingAnAccent) {
    EXPECT_EQ(foldedName("  Long \t Bunker "), "long bunker");
    EXPECT_EQ(foldedName("K\u00C4FER"), "k\u00E4fer");
    EXPECT_EQ(foldedName("Ka\u0308fer"), "k\u00E4fer");
    EXPECT_EQ(foldedName("S\u00C3O JOA\u0303O"), "s\u00E3o jo\u00E3o");
    EXPECT_EQ(foldedName("\u0141\u00F3d\u017A \u0178"), "\u0142\u00F3d\u017A \u00FF");
    EXPECT_EQ(foldedName("\u00D7\u00F7"), "\u00D7\u00F7");
    EXPECT_EQ(foldedName(""), "");
}

TEST(FoldedName, KeepsDifferentLettersApart) {
    EXPECT_NE(foldedName("K\u00E4fer"), foldedName("Kafer"));
    EXPECT_NE(foldedName("Long bunker"), foldedName("Longbunker"));
}

TEST(PlainWords, AreTheWordsOfAHeader) {
    EXPECT_EQ(plainWords("Net_kg"), "net kg");
    EXPECT_EQ(plainWords("Peso l\u00EDquido (kg)"), "peso liquido kg");
    EXPECT_EQ(plainWords("Share [%]"), "share percent");
    EXPECT_EQ(plainWords("G\u00FCltig / Ma\u00DF"), "gultig mass");
    EXPECT_EQ(plainWords("--"), "");
}

TEST(Names, FindWhatIsCalledSo) {
    Names<farm::TruckId> trucks;
    trucks.add("Amsel", idOf<farm::TruckId>(1));
    trucks.add("amsel", idOf<farm::TruckId>(1));
    EXPECT_EQ(trucks.find("AMSEL ", "truck"), idOf<farm::TruckId>(1));
    const auto unknown = trucks.find("Biber", "truck");
    ASSERT_FALSE(unknown);
    EXPECT_EQ(unknown.error().code(), code::nameUnknown);
    EXPECT_EQ(unknown.error().field, "truck");
}

TEST(Names, DoNotChooseAmongSeveral) {
    Names<farm::TruckId> trucks;
    trucks.add("Amsel", idOf<farm::TruckId>(1));
    trucks.add("AMSEL", idOf<farm::TruckId>(2));
    trucks.add("Amsel", idOf<farm::TruckId>(1));
    const auto shared = trucks.find("amsel", "truck");
    ASSERT_FALSE(shared);
    EXPECT_EQ(shared.error().code(), code::nameShared);
}

}  // namespace
}  // namespace treadwell::intake
