#include "core/review/feed_sheet.h"

#include "core/face/codes.h"
#include "core/review/codes.h"
#include "tests/core/review/example_day.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace treadwell::review {
namespace {

using namespace testing_support;

Document sheetOf(const SeasonMaker& maker, const FeedQuestion& question = {}) {
    const auto season = season::Season::fold(maker.entries);
    return feedSheet(season, season.farm().silos.begin()->second, at("2027-01-20T12:00:00Z"), question)
        .value();
}

std::vector<Code> codesIn(const Document& sheet, std::string_view section) {
    std::vector<Code> codes;
    for (const Block& block : sectionOf(sheet, section).blocks) {
        if (const auto* message = std::get_if<Message>(&block)) codes.push_back(message->code);
    }
    return codes;
}

TEST(FeedSheet, WithoutAPlanOrALogSaysWhatIsMissing) {
    const Document sheet = sheetOf(filledLifts());
    EXPECT_THAT(codesIn(sheet, "end"), testing::ElementsAre(code::feedNoPlan));
    EXPECT_THAT(codesIn(sheet, "removed"), testing::ElementsAre(code::reviewNothing));
    EXPECT_THAT(codesIn(sheet, "balance"), testing::ElementsAre(code::reviewNothing));
}

// The log is the plan: the day after it, its daily mean, its dry matter, its face.
TEST(FeedSheet, GoesOnAsTheLogEnds) {
    SeasonMaker maker = filledLifts();
    const auto silo = idOf<farm::SiloTag>(1);
    maker.add(entries::FeedRemoved{silo, AsFedMass::fromTonnes(24), DryMatter::fromPercent(34),
                                   Length::fromMetres(59)},
              at("2027-01-10T08:00:00Z"));
    maker.add(entries::FeedRemoved{silo, AsFedMass::fromTonnes(20), DryMatter::fromPercent(34),
                                   Length::fromMetres(58)},
              at("2027-01-11T08:00:00Z"));
    const Document sheet = sheetOf(maker, {.loss = Loss::fromPercent(10)});
    const Table week = tableOf(sheet, "week", "week");
    ASSERT_EQ(week.rows.size(), 7u);
    EXPECT_EQ(week.rows[0][0], Cell{std::string{"2027-01-12"}});
    EXPECT_NEAR(std::get<Amount>(week.rows[0][1]).si, 58, 1e-9);
    EXPECT_EQ(tableOf(sheet, "removed", "removed").rows.size(), 2u);
    EXPECT_THAT(codesIn(sheet, "balance"),
                testing::ElementsAre(code::feedShrink, code::feedLoss, code::feedPartByField));
    // Asked for something else, that counts.
    const Document asked =
        sheetOf(maker, {.perDay = AsFedMass::fromTonnes(44), .loss = Loss::fromPercent(10)});
    const auto advance = [](const Document& document) {
        return std::get<Amount>(tableOf(document, "week", "week").rows[0][3]).si;
    };
    EXPECT_NEAR(advance(asked) / advance(sheet), 2.0, 1e-6);
}

// 1,400 t were tipped. A silo that is empty after a tenth of them: the log is short, not the silo.
TEST(FeedSheet, DoubtsALossThatNoSiloHas) {
    const auto emptiedBy = [](double tonnes) {
        SeasonMaker maker = filledLifts();
        for (int day = 0; day < 10; ++day) {
            maker.add(
                entries::FeedRemoved{kBunker, AsFedMass::fromTonnes(tonnes / 10), DryMatter::fromPercent(35),
                                     day == 9 ? std::optional{Length{}} : std::nullopt},
                at("2027-01-10T08:00:00Z") + std::chrono::days{day});
        }
        return codesIn(sheetOf(maker, {.loss = Loss::fromPercent(10)}), "balance");
    };
    EXPECT_THAT(emptiedBy(1260), testing::ElementsAre(code::feedShrink, code::feedLoss));
    EXPECT_THAT(emptiedBy(140),
                testing::ElementsAre(code::feedShrink, code::feedLoss, code::feedLossUnlikely));
}

// More than 5 K above the core: Borreani & Tabacco 2010, J. Dairy Sci. 93:2620 (published).
TEST(FeedSheet, TellsAFaceThatHeats) {
    SeasonMaker maker = filledLifts();
    const auto silo = idOf<farm::SiloTag>(1);
    maker.add(
        entries::FaceTemperature{silo, Temperature::fromCelsius(25), Temperature::fromCelsius(24), {}, {}},
        at("2027-01-10T08:00:00Z"));
    EXPECT_THAT(codesIn(sheetOf(maker), "heat"), testing::ElementsAre(code::feedHeatSeen));
    maker.add(entries::FaceTemperature{silo, Temperature::fromCelsius(31), Temperature::fromCelsius(24),
                                       Length::fromMetres(4), Length::fromMetres(2)},
              at("2027-01-12T08:00:00Z"));
    const Document sheet = sheetOf(maker);
    EXPECT_THAT(codesIn(sheet, "heat"), testing::ElementsAre(code::feedHeats));
    const Table heat = tableOf(sheet, "heat", "heat");
    ASSERT_EQ(heat.rows.size(), 2u);
    EXPECT_EQ(heat.rows[0][2], Cell{}) << "where it was not said";
}

}  // namespace
}  // namespace treadwell::review
