#include "app/words/entry.h"

#include "tests/app/words/translations.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

namespace treadwell::words {
namespace {

using namespace testing_support;

std::string nameOf(const Uuid& id) {
    if (id == idOf<farm::SiloTag>(1).value) return "Long bunker";
    return {};
}

TEST(EntryInWords, SaysEveryFieldThatIsThere) {
    entries::Load load = someLoad(12.34);
    load.ticket = "A17";
    EXPECT_EQ(inWords(load, nameOf, Style{}), "mass 12.3 t, silo Long bunker, source weighed, ticket A17");
    EXPECT_EQ(inWords(load, nameOf, Style{.units = UnitSystem::us}),
              "mass 13.6 ton, silo Long bunker, source weighed, ticket A17");
    load.truck = idOf<farm::TruckTag>(9);
    EXPECT_NE(inWords(load, nameOf, Style{}).find("truck 00000000-0000-0000-0000-000000000009"),
              std::string::npos)
        << "an id without a name stands for itself";
}

TEST(EntryInWords, NumbersTheItemsOfAList) {
    const entries::HeightReading reading{Length::fromMetres(1), Length::fromMetres(2),
                                         Length::fromMetres(1.5)};
    EXPECT_EQ(inWords(entries::HeightSurvey{idOf<farm::SiloTag>(1), {reading, reading}}, nameOf, Style{}),
              "readings 1: across 2.00 m, along 1.00 m, height 1.50 m; readings 2: across 2.00 m, along 1.00 "
              "m, height 1.50 m; silo Long bunker");
}

TEST(EntryInWords, AnUnknownKindSaysNothing) {
    EXPECT_EQ(inWords(entries::Body{}, nameOf, Style{}), "");
    EXPECT_EQ(kindInWords("layer_seen", Style{}), "layer seen");
}

TEST(PortugueseEntries, EveryTermIsThereAndFinished) {
    const Translations portuguese =
        readTranslations(TREADWELL_SOURCE "/resources/translations/treadwell_pt_BR.ts");
    std::size_t terms = 0;
    for (const auto& [context, english] : entryTerms()) {
        const auto& known = portuguese.at(context);
        const auto found = known.find(english);
        ASSERT_NE(found, known.end()) << context << ": " << english;
        EXPECT_TRUE(found->second.finished && !found->second.text.empty()) << english;
        ++terms;
    }
    EXPECT_EQ(portuguese.at(kFieldContext).size() + portuguese.at(kWordContext).size(), terms)
        << "a translation of something that no entry says";
}

}  // namespace
}  // namespace treadwell::words
