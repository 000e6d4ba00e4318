#include "core/season/dry_matter.h"

#include "core/season/season.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <random>

namespace treadwell::season {
namespace {

using namespace std::chrono_literals;
using entries::DryMatterMethod;
using testing_support::idOf;
using testing_support::SeasonMaker;
using testing_support::someLoad;

const Instant kMorning = *instantFromIso8601("2026-09-15T08:00:00Z");

void addSample(SeasonMaker& maker, Instant at, double percent, DryMatterMethod method = DryMatterMethod::oven,
               std::optional<farm::FieldId> field = {}) {
    maker.add(entries::DryMatterSample{DryMatter::fromPercent(percent), method, field, {}, {}}, at);
}

void addLoad(SeasonMaker& maker, Instant at, std::optional<farm::FieldId> field = {}) {
    entries::Load load = someLoad(10);
    load.field = field;
    maker.add(load, at);
}

std::vector<const LoadTipped*> loadsOf(const Day& day) {
    std::vector<const LoadTipped*> loads;
    for (const LoadTipped& load : day.loads) loads.push_back(&load);
    return loads;
}

Day dayOf(const SeasonMaker& maker) {
    return *Season::fold(maker.entries).days().front();
}

TEST(MeanDryMatter, NoneWithoutLoads) {
    EXPECT_FALSE(meanDryMatter({}));
}

TEST(MeanDryMatter, LoadsOnOneSampleErrTogether) {
    SeasonMaker maker;
    addSample(maker, kMorning, 34);
    for (int load = 0; load < 20; ++load) addLoad(maker, kMorning);
    const auto mean = meanDryMatter(loadsOf(dayOf(maker)));
    EXPECT_NEAR(mean->mean.percent(), 34, 1e-9);
    EXPECT_NEAR(mean->sd.percent(), 3.7, 1e-9) << "twenty loads know no more than their one sample";
}

TEST(MeanDryMatter, FieldsWithoutASampleErrApartInWhatFieldsDiffer) {
    SeasonMaker maker;
    addSample(maker, kMorning, 34);
    addLoad(maker, kMorning, idOf<farm::FieldTag>(1));
    addLoad(maker, kMorning, idOf<farm::FieldTag>(2));
    const auto mean = meanDryMatter(loadsOf(dayOf(maker)));
    EXPECT_NEAR(mean->sd.percent(), std::hypot(3.7, 4 / std::sqrt(2.0)), 1e-9);
}

// The local level model drawn 4,000 times: how far the carried mean of the loads lies from the true one.
TEST(MeanDryMatter, ErrsAsTheModelDrawnAtRandomDoes) {
    constexpr int kDraws = 4000;
    std::mt19937_64 random{20260915};
    std::normal_distribution<double> normal;
    double squares = 0.0, told = 0.0;
    for (int draw = 0; draw < kDraws; ++draw) {
        SeasonMaker maker;
        double truth = 35.0, sum = 0.0;
        for (int hour = 0; hour < 8; ++hour) {
            const Instant at = kMorning + std::chrono::hours{hour};
            truth += normal(random);
            if (hour % 3 == 0) addSample(maker, at, truth + 3.7 * normal(random));
            addLoad(maker, at);
            sum += truth;
        }
        const auto mean = meanDryMatter(loadsOf(dayOf(maker)));
        squares += std::pow(mean->mean.percent() - sum / 8, 2);
        told = mean->sd.percent();
    }
    EXPECT_NEAR(std::sqrt(squares / kDraws) / told, 1.0, 4.0 / std::sqrt(2.0 * kDraws));
}

TEST(CarryDryMatter, AMetersBiasIsLearnedFromItsPairsAndTakenOff) {
    SeasonMaker maker;
    for (int pair = 0; pair < 6; ++pair) {
        addSample(maker, kMorning + pair * 1h, 37, DryMatterMethod::meter);
        addSample(maker, kMorning + pair * 1h + 10min, 34);
    }
    addSample(maker, kMorning + 6h, 38, DryMatterMethod::meter);
    const Day day = dayOf(maker);
    const samples::MeterBias bias = meterBiasOf(day.after);
    EXPECT_EQ(bias.pairs, 6);
    EXPECT_NEAR(bias.bias.percent(), 3, 0.3) << "held back a little by what is usual";
    EXPECT_NEAR(day.samples.back().believed.mean.percent(), 38 - bias.bias.percent(), 1e-9);
    EXPECT_GT(day.samples.back().believed.sd, samples::kSampleSd);
    EXPECT_NEAR(day.samples.back().reading.dryMatter.percent(), 38, 1e-9) << "the fact stands";
}

TEST(CarryDryMatter, WhereDishAndMeterSawOneCropTheDishSpeaks) {
    SeasonMaker maker;
    addSample(maker, kMorning, 34);
    addSample(maker, kMorning + 10min, 40, DryMatterMethod::meter);
    addLoad(maker, kMorning + 10min);
    EXPECT_NEAR(dayOf(maker).loads[0].dryMatter.percent(), 34, 1e-9);
}

// Who samples a truck names its load alone; the dish beside it may name the field, or that load too.
TEST(CarryDryMatter, ASampleThatNamesOnlyItsLoadIsPairedByTheFieldOfThatLoad) {
    for (const bool dishOfLoad : {false, true}) {
        for (const std::uint8_t sampledField : {std::uint8_t{1}, std::uint8_t{2}}) {
            SeasonMaker maker;
            entries::Load tipped = someLoad(10);
            tipped.field = idOf<farm::FieldTag>(sampledField);
            const entries::EntryId load = maker.add(tipped, kMorning);
            const auto sample = [](double percent, DryMatterMethod method) {
                return entries::DryMatterSample{DryMatter::fromPercent(percent), method, {}, {}, {}};
            };
            auto meter = sample(37, DryMatterMethod::meter);
            auto dish = sample(34, DryMatterMethod::oven);
            (dishOfLoad ? dish : meter).load = load;
            (dishOfLoad ? meter : dish).field = idOf<farm::FieldTag>(1);
            maker.add(meter, kMorning);
            maker.add(dish, kMorning + 5min);
            EXPECT_EQ(meterBiasOf(dayOf(maker).after).pairs, sampledField == 1 ? 1 : 0)
                << (dishOfLoad ? "the dish" : "the meter") << " names its load alone";
        }
    }
}

TEST(CarryDryMatter, OfAnotherFieldOrMuchLaterIsNoPair) {
    SeasonMaker maker;
    addSample(maker, kMorning, 34, DryMatterMethod::microwave, idOf<farm::FieldTag>(1));
    addSample(maker, kMorning, 40, DryMatterMethod::meter, idOf<farm::FieldTag>(2));
    addSample(maker, kMorning + 31min, 40, DryMatterMethod::meter, idOf<farm::FieldTag>(1));
    EXPECT_EQ(meterBiasOf(dayOf(maker).after).pairs, 0);
}

// A sample that names a load speaks of it, whatever was carried to it, and of its field as any other does.
TEST(CarryDryMatter, ALoadsOwnSampleSpeaksOfItWithItsOwnError) {
    SeasonMaker maker;
    addSample(maker, kMorning, 34);
    addLoad(maker, kMorning + 10min);
    entries::Load sampled = someLoad(10);
    const auto load = maker.add(sampled, kMorning + 20min);
    addLoad(maker, kMorning + 40min);
    entries::DryMatterSample sample{DryMatter::fromPercent(41), DryMatterMethod::oven, {}, {}, {}, load};
    maker.add(sample, kMorning + 25min);  // weighed in after the load had come
    const Day day = dayOf(maker);
    EXPECT_NEAR(day.loads[0].dryMatter.percent(), 34, 1e-9);
    EXPECT_EQ(day.loads[1].basis, DryMatterBasis::loadSample);
    EXPECT_NEAR(day.loads[1].dryMatter.percent(), 41, 1e-9);
    EXPECT_NEAR(day.loads[1].dryMatterSd.percent(), 1.5, 1e-9);
    EXPECT_EQ(day.loads[2].basis, DryMatterBasis::fieldSample);
    EXPECT_GT(day.loads[2].dryMatter.percent(), 36) << "it is a sample of the field too";
    EXPECT_LT(day.loads[2].dryMatter.percent(), 40);

    sample.dryMatter = DryMatter::fromPercent(39);
    maker.add(sample, kMorning + 26min);
    const Day two = dayOf(maker);
    EXPECT_NEAR(two.loads[1].dryMatter.percent(), 40, 1e-9) << "two samples of one load count alike";
    EXPECT_NEAR(two.loads[1].dryMatterSd.percent(), 1.5 / std::sqrt(2.0), 1e-9);
}

TEST(CarryDryMatter, ASampleOfALoadIsOneOfItsField) {
    SeasonMaker maker;
    addSample(maker, kMorning, 34);
    entries::Load sampled = someLoad(10);
    sampled.field = idOf<farm::FieldTag>(2);
    const auto load = maker.add(sampled, kMorning + 20min);
    addLoad(maker, kMorning + 40min, idOf<farm::FieldTag>(2));
    maker.add(entries::DryMatterSample{DryMatter::fromPercent(41), DryMatterMethod::oven, {}, {}, {}, load},
              kMorning + 25min);
    const Day day = dayOf(maker);
    EXPECT_EQ(day.loads[1].basis, DryMatterBasis::fieldSample);
    EXPECT_NEAR(day.loads[1].dryMatter.percent(), 41, 1e-9);
}

TEST(CarryDryMatter, OneOfALoadThatIsNotThereIsOneOfTheFieldAlone) {
    SeasonMaker maker;
    addLoad(maker, kMorning + 40min);
    maker.add(
        entries::DryMatterSample{
            DryMatter::fromPercent(41), DryMatterMethod::oven, {}, {}, {}, idOf<entries::EntryTag>(99)},
        kMorning + 25min);
    EXPECT_EQ(dayOf(maker).loads[0].basis, DryMatterBasis::fieldSample);
}

TEST(MeanDryMatter, LoadsWithSamplesOfTheirOwnErrApart) {
    SeasonMaker maker;
    for (int i = 0; i < 4; ++i) {
        const auto load = maker.add(someLoad(10), kMorning + i * 10min);
        maker.add(
            entries::DryMatterSample{DryMatter::fromPercent(34), DryMatterMethod::oven, {}, {}, {}, load},
            kMorning + i * 10min);
    }
    EXPECT_NEAR(meanDryMatter(loadsOf(dayOf(maker)))->sd.percent(), 1.5 / 2, 1e-9);
}

// The first hour of a season, before anybody has sampled.
TEST(CarryDryMatter, LastSeasonsMeanStandsInUntilThereIsASample) {
    SeasonMaker maker;
    entries::SeasonCarried carried;
    carried.from.push_back({"Two Creeks", {}, idOf<entries::EntryTag>(1)});
    carried.dryMatter = DryMatter::fromPercent(32.4);
    maker.add(carried, kMorning - 1h);
    addLoad(maker, kMorning);
    const Day first = dayOf(maker);
    EXPECT_EQ(first.loads[0].basis, DryMatterBasis::assumed);
    EXPECT_NEAR(first.loads[0].dryMatter.percent(), 32.4, 1e-9);
    EXPECT_NEAR(first.loads[0].dryMatterSd.percent(), std::hypot(3.7, 4), 1e-9)
        << "as far off as another field is";
    addSample(maker, kMorning + 1h, 36);
    EXPECT_NEAR(dayOf(maker).loads[0].dryMatter.percent(), 36, 1e-9);
}

RC_GTEST_PROP(DryMatterErrorsProperty, LieBetweenNothingAndAllErringTogether, ()) {
    SeasonMaker maker;
    Instant at = kMorning;
    for (int i = *rc::gen::inRange(1, 15); i > 0; --i) {
        at += std::chrono::minutes{*rc::gen::inRange(0, 60)};
        std::optional<farm::FieldId> field;
        if (*rc::gen::arbitrary<bool>()) field = idOf<farm::FieldTag>(*rc::gen::inRange<std::uint8_t>(1, 4));
        if (*rc::gen::inRange(0, 3) == 0) addSample(maker, at, 35, DryMatterMethod::oven, field);
        addLoad(maker, at, field);
    }
    const Day day = dayOf(maker);
    const auto mean = meanDryMatter(loadsOf(day));
    double together = 0.0;
    for (const LoadTipped& load : day.loads)
        together += load.dryMatterSd.fraction() / static_cast<double>(day.loads.size());
    RC_ASSERT(mean->sd.fraction() > 0.0);
    RC_ASSERT(mean->sd.fraction() <= together * (1.0 + 1e-9));
}

}  // namespace
}  // namespace treadwell::season
