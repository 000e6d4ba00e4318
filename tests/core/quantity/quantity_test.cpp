#include "core/base/codes.h"
#include "core/quantity/relations.h"
#include "core/quantity/unit_table.h"
#include "core/quantity/weather.h"

#include <gtest/gtest.h>

#include <set>

namespace treadwell {
namespace {

template <class A, class B>
concept Adds = requires(A a, B b) {
    a + b;
};
template <class A, class B>
concept Multiplies = requires(A a, B b) {
    a* b;
};
template <class A, class B>
concept Divides = requires(A a, B b) {
    a / b;
};
template <class A, class B>
concept Compares = requires(A a, B b) {
    a < b;
};

// Wrong uses do not compile.
static_assert(!Adds<AsFedMass, DryMass> && !Adds<AsFedMass, MachineMass> && !Adds<AsFedMass, double>);
static_assert(!Adds<AsFedDensity, DryDensity> && !Adds<AsFedRate, DryRate>);
static_assert(!Compares<AsFedMass, DryMass> && !Compares<AsFedDensity, DryDensity>);
static_assert(!std::is_constructible_v<AsFedMass, double> && !std::is_convertible_v<AsFedMass, double>);
static_assert(!std::is_convertible_v<AsFedMass, DryMass> && !std::is_constructible_v<DryMass, AsFedMass>);
static_assert(!Multiplies<AsFedMass, AsFedMass> && !Multiplies<Volume, Length> &&
              !Multiplies<DryMass, DryMatter>);
static_assert(!Divides<AsFedMass, DryMatter> && !Divides<AsFedMass, DryDensity> &&
              !Divides<DryMass, AsFedDensity>);
static_assert(!Multiplies<MachineMass, DryMatter>);

// Right ones give the right dimension.
static_assert(std::is_same_v<decltype(AsFedMass{} * DryMatter{}), DryMass>);
static_assert(std::is_same_v<decltype(DryDensity{} / DryMatter{}), AsFedDensity>);
static_assert(std::is_same_v<decltype(DryMass{} / AsFedMass{}), DryMatter>);
static_assert(std::is_same_v<decltype(Length{} * Length{}), Area>);
static_assert(std::is_same_v<decltype(AsFedMass{} / AsFedMass{}), double>);

TEST(Quantity, ConversionsAreTheExactOnes) {
    EXPECT_DOUBLE_EQ(AsFedMass::fromPounds(1).kilograms(), 0.45359237);
    EXPECT_DOUBLE_EQ(AsFedMass::fromShortTons(1).kilograms(), 907.18474);
    EXPECT_DOUBLE_EQ(Length::fromFeet(1).metres(), 0.3048);
    EXPECT_NEAR(DryDensity::fromPoundsPerCubicFoot(1).kilogramsPerCubicMetre(), 16.01846, 5e-6);
    EXPECT_DOUBLE_EQ(PackingIntensity::fromMinutesPerTonne(1).minutesPerTonne(), 1);
    EXPECT_NEAR(AsFedRate::fromShortTonsPerHour(50).tonnesPerHour(), 45.359237, 1e-12);
}

TEST(Quantity, DryMatterIsTheBridge) {
    const AsFedMass load = AsFedMass::fromTonnes(12);
    const DryMatter dm = DryMatter::fromPercent(35);
    EXPECT_NEAR((load * dm).tonnes(), 4.2, 1e-12);
    EXPECT_NEAR((load * dm / dm).tonnes(), 12, 1e-12);
}

TEST(UnitTable, EveryDimensionHasARowWithDistinctSymbols) {
    std::set<std::string_view> names;
    for (const UnitRow& row : unitTable()) {
        EXPECT_TRUE(names.insert(row.name).second) << row.name;
        EXPECT_GT(row.metric.factor, 0);
        EXPECT_GT(row.us.factor, 0);
        EXPECT_FALSE(row.metric.key.empty());
        EXPECT_EQ(&unitsOf(row.dimension), &row);
    }
    EXPECT_EQ(unitTable().size(), static_cast<std::size_t>(Dimension::dryingRate) + 1);
}

TEST(UnitTable, ReadsWhatItPrints) {
    for (const UnitRow& row : unitTable()) {
        for (const UnitSystem system : {UnitSystem::metric, UnitSystem::us}) {
            const Unit& unit = unitOf(row.dimension, system);
            const auto si =
                siFromText(row.dimension, amountText({row.dimension, unit.toSi(12)}, system), "x");
            ASSERT_TRUE(si) << row.name;
            EXPECT_NEAR(*si, unit.toSi(12), 1e-9 * unit.factor) << row.name;
        }
    }
}

TEST(UnitTable, CommandLineSpellings) {
    EXPECT_NEAR(quantityFromText<AsFedRate>("130ton/h", "rate")->tonnesPerHour(), 117.934016, 1e-6);
    EXPECT_NEAR(quantityFromText<MachineMass>("20000lb", "tractor")->tonnes(), 9.0718474, 1e-9);
    EXPECT_NEAR(quantityFromText<Length>("6in", "layer")->centimetres(), 15.24, 1e-12);
    EXPECT_NEAR(quantityFromText<DryMatter>(" 35 % ", "dry matter")->fraction(), 0.35, 1e-12);
}

TEST(UnitTable, TemperaturesHaveAnOffset) {
    EXPECT_NEAR(quantityFromText<Temperature>("86F", "high")->celsius(), 30, 1e-12);
    EXPECT_NEAR(quantityFromText<Temperature>("-40 C", "low")->fahrenheit(), -40, 1e-12);
    EXPECT_EQ(amountText(Temperature::fromCelsius(10).amount(), UnitSystem::us), "50 \u00B0F");
    EXPECT_EQ(amountText(DegreeDays::fromFahrenheit(900).amount(), UnitSystem::metric), "500 \u00B0C d");
}

TEST(UnitTable, WhatOverflowsInSiIsRefused) {
    const auto si = siFromText(Dimension::machineMass, std::string(306, '9') + "t", "tractor");
    ASSERT_FALSE(si);
    EXPECT_EQ(si.error().code(), code::valueNotFinite);
}

TEST(UnitTable, WhatCannotBeReadIsSaid) {
    EXPECT_EQ(siFromText(Dimension::machineMass, "14", "tractor").error().code(), code::unitMissing);
    EXPECT_EQ(siFromText(Dimension::machineMass, "14m", "tractor").error().code(), code::unitUnknown);
    EXPECT_EQ(siFromText(Dimension::machineMass, "3,5t", "tractor").error().code(), code::textNotNumber);
    EXPECT_EQ(siFromText(Dimension::machineMass, "  ", "tractor").error().code(), code::textEmpty);
    EXPECT_EQ(siFromText(Dimension::machineMass, "14m", "tractor").error().field, "tractor");
}

}  // namespace
}  // namespace treadwell
