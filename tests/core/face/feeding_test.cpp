#include "core/face/feeding.h"

#include "core/density/readings.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

namespace treadwell::face {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

/// A silo in lifts: 150 loads of 14 t a day apart in two halves.
struct Filled {
    Filled() {
        SeasonMaker maker;
        const Instant begin = at("2026-09-15T06:00:00Z");
        maker.add(entries::SeasonStarted{"Lindenhof", "UTC"}, begin);
        maker.add(entries::SiloDefined{someLifts()}, begin);
        maker.add(entries::TractorDefined{someTractor(1, 14)}, begin);
        maker.add(someWork(1, farm::Activity::packing), begin);
        maker.add(entries::DryMatterSample{DryMatter::fromPercent(35), {}, {}, {}, {}}, begin);
        for (int i = 0; i < 150; ++i)
            maker.add(someLoad(14),
                      begin + i * std::chrono::minutes{6} + std::chrono::hours{i < 75 ? 0 : 24});
        season = season::Season::fold(maker.entries);
        readings = density::readingsAt(season, idOf<farm::SiloTag>(1), at("2026-10-01T00:00:00Z"));
        field = density::fieldOf(season, *readings.layers, density::Filled::asItLies);
    }
    Result<FeedOut> feed(const FeedPlan& plan, std::optional<LocalDay> week = {}) const {
        return feedOutOf(season, *readings.layers, *field, plan, week.value_or(plan.from));
    }
    season::Season season;
    density::Readings readings;
    std::optional<density::Field> field;
};

const Filled& filled() {
    static const Filled kFilled;
    return kFilled;
}

constexpr LocalDay kFrom = 2027y / std::chrono::January / 10d;

FeedPlan plan(double perDay_t, double loss_percent) {
    const Loss loss = Loss::fromPercent(loss_percent);
    return {kFrom, AsFedMass::fromTonnes(perDay_t), DryMatter::fromPercent(35), loss, loss, loss};
}

// 2,100 t at 35 % are 735 t of dry matter; 10 % lost leave 661.5 t, 63 days of 10.5 t.
TEST(FeedOut, EndsWhenAllIsFed) {
    const auto out = filled().feed(plan(30, 10));
    ASSERT_TRUE(out) << toText(out.error().code());
    EXPECT_NEAR(out->placed.tonnes(), 735, 1e-6);
    EXPECT_NEAR(out->toFeed.tonnes(), 661.5, 1e-6);
    EXPECT_NEAR(out->days, 63, 1e-6);
    EXPECT_LE(out->earlyEnd, out->end);
    EXPECT_GE(out->lateEnd, out->end);
    // exp(1.2816 * 0.015) = 1.0194: a good day on either side.
    EXPECT_LE((std::chrono::local_days{out->lateEnd} - std::chrono::local_days{out->earlyEnd}).count(), 4);
}

TEST(FeedOut, ABandOfLossWidensTheEnd) {
    FeedPlan wide = plan(30, 10);
    wide.lowLoss = Loss::fromPercent(4);
    wide.highLoss = Loss::fromPercent(18);
    const auto out = filled().feed(wide);
    // 0.96 / 0.9 and 0.82 / 0.9 of 63 days: 67.2 and 57.4, a little wider by the mass.
    const auto days = [&](LocalDay end) {
        return (std::chrono::local_days{end} - std::chrono::local_days{kFrom}).count() + 1;
    };
    EXPECT_EQ(days(out->lateEnd), 68);
    EXPECT_EQ(days(out->earlyEnd), 58);
}

// Lifts of one height all along: the face goes back as evenly as it is fed, 60 m in 63 days.
TEST(FeedOut, TheFaceGoesBackByWhatIsFed) {
    const auto out = filled().feed(plan(30, 10));
    ASSERT_EQ(out->coming.size(), 7u);
    EXPECT_NEAR(out->coming.front().from.metres(), 60, 1e-6);
    double dry = 0.0;
    for (std::size_t i = 0; i < 7; ++i) {
        const FeedDay& day = out->coming[i];
        EXPECT_NEAR(day.advance().metres(), 60.0 / 63, 1e-5);
        EXPECT_EQ(day.from, i > 0 ? out->coming[i - 1].to : day.from);
        density::Box box = filled().field->whole();
        box.low.along = day.to;
        box.high.along = day.from;
        dry += filled().field->mean(box)->dry.tonnes();
        EXPECT_LE(day.loosest, day.density.median());
    }
    EXPECT_NEAR(dry * 0.9, 7 * 30 * 0.35, 1e-3);
}

// Every face of level layers cuts both days.
TEST(FeedOut, NamesTheDaysWhoseLayersAreCut) {
    const auto out = filled().feed(plan(30, 10));
    EXPECT_EQ(out->coming.front().laid, (std::vector<LocalDay>{2026y / std::chrono::September / 15d,
                                                               2026y / std::chrono::September / 16d}));
}

TEST(FeedOut, TheWeekAskedForEndsWithTheCrop) {
    const LocalDay late = 2027y / std::chrono::March / 10d;  // 59 days later
    const auto out = filled().feed(plan(30, 10), late);
    ASSERT_EQ(out->coming.size(), 4u);
    EXPECT_EQ(out->coming.front().day, late);
    EXPECT_NEAR(out->coming.back().to.metres(), 0, 1e-4);
    EXPECT_EQ(out->coming.back().day, out->end);
}

TEST(FeedOut, RefusesWhatCannotBe) {
    EXPECT_EQ(filled().feed(plan(0, 10)).error().field, "perDay");
    EXPECT_EQ(filled().feed(plan(30, 70)).error().field, "loss");
    FeedPlan crossed = plan(30, 10);
    crossed.lowLoss = Loss::fromPercent(20);
    EXPECT_EQ(filled().feed(crossed).error().field, "loss");
}

// 100 lb at 65 % moisture losing 5.25 lb of dry matter: 5.25 % shrink, 15 % loss (published).
TEST(SiloBalance, KeepsShrinkAndLossApart) {
    const auto mass = AsFedMass::fromTonnes(100), fed = AsFedMass::fromTonnes(94.75);
    const auto balance = balanceOf(mass, DryMass::fromTonnes(35), fed, DryMass::fromTonnes(29.75));
    ASSERT_TRUE(balance);
    EXPECT_NEAR(balance->shrink.percent(), 5.25, 1e-9);
    EXPECT_NEAR(balance->loss.percent(), 15.0, 1e-9);
    EXPECT_EQ(balanceOf(mass, DryMass::fromTonnes(35), AsFedMass::fromTonnes(101), DryMass::fromTonnes(30))
                  .error()
                  .field,
              "massOut");
    EXPECT_EQ(balanceOf(mass, DryMass::fromTonnes(35), fed, DryMass::fromTonnes(36)).error().field, "dryOut");
}

// More than 5 K: Borreani & Tabacco 2010, published.
TEST(Heating, IsTakenFromMoreThanFiveKelvinOn) {
    EXPECT_FALSE(heats(Temperature::fromCelsius(29), Temperature::fromCelsius(24)));
    EXPECT_TRUE(heats(Temperature::fromCelsius(29.1), Temperature::fromCelsius(24)));
    EXPECT_FALSE(heats(Temperature::fromCelsius(20), Temperature::fromCelsius(24)));
}

}  // namespace
}  // namespace treadwell::face
