#include "app/words/phrases.h"

#include "app/words/words.h"
#include "core/advice/codes.h"
#include "core/attention/codes.h"
#include "core/base/codes.h"
#include "core/crop/codes.h"
#include "core/density/codes.h"
#include "core/entries/codes.h"
#include "core/face/codes.h"
#include "core/farm/codes.h"
#include "core/formats/codes.h"
#include "core/intake/codes.h"
#include "core/journal/codes.h"
#include "core/packing/codes.h"
#include "core/passes/codes.h"
#include "core/plan/codes.h"
#include "core/practice/codes.h"
#include "core/review/codes.h"
#include "core/samples/codes.h"
#include "core/session/codes.h"
#include "tests/app/words/sample_arguments.h"
#include "tests/app/words/translations.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <regex>
#include <set>

namespace treadwell::words {
namespace {

#define TREADWELL_LISTED(name) code::name,

const std::vector<std::vector<Code>> kRooms{
    {TREADWELL_BASE_CODES(TREADWELL_LISTED)},    {TREADWELL_CROP_CODES(TREADWELL_LISTED)},
    {TREADWELL_SAMPLES_CODES(TREADWELL_LISTED)}, {TREADWELL_FARM_CODES(TREADWELL_LISTED)},
    {TREADWELL_ENTRIES_CODES(TREADWELL_LISTED)}, {TREADWELL_JOURNAL_CODES(TREADWELL_LISTED)},
    {TREADWELL_FORMATS_CODES(TREADWELL_LISTED)}, {TREADWELL_PACKING_CODES(TREADWELL_LISTED)},
    {TREADWELL_DENSITY_CODES(TREADWELL_LISTED)}, {TREADWELL_ADVICE_CODES(TREADWELL_LISTED)},
    {TREADWELL_PLAN_CODES(TREADWELL_LISTED)},    {TREADWELL_ATTENTION_CODES(TREADWELL_LISTED)},
    {TREADWELL_PASSES_CODES(TREADWELL_LISTED)},  {TREADWELL_PRACTICE_CODES(TREADWELL_LISTED)},
    {TREADWELL_FACE_CODES(TREADWELL_LISTED)},    {TREADWELL_INTAKE_CODES(TREADWELL_LISTED)},
    {TREADWELL_REVIEW_CODES(TREADWELL_LISTED)},  {TREADWELL_SESSION_CODES(TREADWELL_LISTED)},
};

#undef TREADWELL_LISTED

const std::vector<Code>& codes() {
    static const std::vector<Code> kAll = [] {
        std::vector<Code> all;
        for (const std::vector<Code>& room : kRooms) all.insert(all.end(), room.begin(), room.end());
        return all;
    }();
    return kAll;
}

TEST(Codes, OfEveryRoomAreListedHere) {
    const auto rooms = std::filesystem::directory_iterator{TREADWELL_SOURCE "/core"};
    const auto saying =
        std::count_if(begin(rooms), end(rooms), [](const std::filesystem::directory_entry& room) {
            return std::filesystem::exists(room.path() / "codes.h");
        });
    EXPECT_EQ(saying, std::ssize(kRooms));
}

TEST(Codes, HaveNamesOfTheirOwn) {
    std::set<std::string_view> names;
    for (const Code code : codes()) EXPECT_TRUE(names.insert(code.name()).second) << code.name();
}

std::set<std::string> placeholdersOf(const std::string& phrase) {
    static const std::regex kPlaceholder{"\\{[^}]*\\}"};
    return {std::sregex_token_iterator{phrase.begin(), phrase.end(), kPlaceholder}, {}};
}

std::set<std::string> placeholdersFor(std::size_t arguments) {
    std::set<std::string> all;
    for (std::size_t i = 1; i <= arguments; ++i) all.insert('{' + std::to_string(i) + '}');
    return all;
}

const Translations& portuguese() {
    static const Translations kRead =
        readTranslations(TREADWELL_SOURCE "/resources/translations/treadwell_pt_BR.ts");
    return kRead;
}

Style portugueseStyle() {
    return {.decimalSign = ',', .translate = [](const char* context, const char* english) {
                return portuguese().at(context).at(english).text;
            }};
}

TEST(Phrases, HaveAPlaceForEveryArgument) {
    for (const Code code : codes()) {
        EXPECT_EQ(placeholdersOf(phraseTemplate(code)), placeholdersFor(sampleArguments(code).size()))
            << toText(code);
    }
}

TEST(Phrases, LeaveNoPlaceholderWhenRendered) {
    for (const Code code : codes()) {
        for (const Style& style : {Style{}, Style{.units = UnitSystem::us}, portugueseStyle()}) {
            const std::string text = inWords(Message{code, sampleArguments(code)}, style);
            EXPECT_THAT(text, testing::Not(testing::HasSubstr("{"))) << toText(code);
            EXPECT_FALSE(text.empty()) << toText(code);
        }
    }
}

TEST(Phrases, AreTellingApart) {
    std::set<std::string> seen;
    for (const Code code : codes()) EXPECT_TRUE(seen.insert(phraseTemplate(code)).second) << toText(code);
}

// The program cautions; it never permits.
TEST(Phrases, NeverPermit) {
    const std::regex permission{"\\b(safe|safely|allowed|clear|seguro|segura|permitido|liberado)\\b",
                                std::regex::icase};
    for (const Code code : codes()) {
        EXPECT_FALSE(std::regex_search(phraseTemplate(code), permission)) << toText(code);
    }
    for (const auto& [english, translation] : portuguese().at(kPhraseContext)) {
        EXPECT_FALSE(std::regex_search(translation.text, permission)) << translation.text;
    }
}

TEST(PortuguesePhrases, AreAllThereAndFinished) {
    const auto& phrases = portuguese().at(kPhraseContext);
    for (const Code code : codes()) {
        const auto found = phrases.find(phraseTemplate(code));
        ASSERT_NE(found, phrases.end()) << toText(code) << ": " << phraseTemplate(code);
        EXPECT_TRUE(found->second.finished) << toText(code);
        EXPECT_FALSE(found->second.text.empty()) << toText(code);
        EXPECT_EQ(placeholdersOf(found->second.text), placeholdersOf(found->first)) << toText(code);
    }
}

TEST(PortuguesePhrases, AreThoseOfACode) {
    for (const auto& [english, translation] : portuguese().at(kPhraseContext)) {
        EXPECT_TRUE(std::any_of(codes().begin(), codes().end(),
                                [&](Code code) { return english == phraseTemplate(code); }))
            << "no code says: " << english;
    }
}

TEST(PortuguesePhrases, SpeakOfMateriaSeca) {
    const Message message{code::saturated, {Amount{Dimension::dryDensity, 262.0}}};
    EXPECT_EQ(inWords(message, portugueseStyle()),
              "Saturado em 262 kg MS/m3: compactar mais não ajuda; espere efluente");
}

// Every unit of the table in which a word stands has its translation.
TEST(PortugueseUnits, AreAllThere) {
    for (const UnitRow& row : unitTable()) {
        for (const UnitSystem system : {UnitSystem::metric, UnitSystem::us}) {
            Style style = portugueseStyle();
            style.units = system;
            const std::string text = inWords(Amount{row.dimension, 1.0}, style);
            EXPECT_THAT(text, testing::Not(testing::HasSubstr("DM"))) << row.name;
            EXPECT_THAT(text, testing::Not(testing::HasSubstr("per"))) << row.name;
        }
    }
}

}  // namespace
}  // namespace treadwell::words
