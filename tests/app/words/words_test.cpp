#include "app/words/words.h"

#include "core/base/codes.h"
#include "core/density/codes.h"
#include "core/quantity/relations.h"

#include <gtest/gtest.h>

namespace treadwell::words {
namespace {

TEST(InWords, AnAmountFollowsUnitSystemAndDecimalSign) {
    const Amount density = DryDensity::fromKilogramsPerCubicMetre(236.4).amount();
    EXPECT_EQ(inWords(density, Style{}), "236 kg DM/m3");
    EXPECT_EQ(inWords(density, Style{.units = UnitSystem::us}), "14.8 lb DM/ft3");
    EXPECT_EQ(inWords(density, Style{.units = UnitSystem::us, .decimalSign = ','}), "14,8 lb DM/ft3");
    EXPECT_EQ(inWords(Porosity::fromFraction(0.4).amount(), Style{.decimalSign = ','}), "0,40");
}

TEST(InWords, SignsOfARatioStandCloseToTheirNumber) {
    EXPECT_EQ(inWords(Slope::fromRunPerRise(3).amount(), Style{}), "3.0:1");
    EXPECT_EQ(inWords(CostRate::fromPerHour(66).amount(), Style{}), "66.00/h");
}

TEST(InWords, AChanceIsNoCertaintyUnlessItIsOne) {
    const auto chance = [](double fraction) { return inWords(Amount{Dimension::chance, fraction}, Style{}); };
    EXPECT_EQ(chance(0.0), "0 %");
    EXPECT_EQ(chance(0.002), "< 1 %");
    EXPECT_EQ(chance(0.006), "1 %");
    EXPECT_EQ(chance(0.994), "99 %");
    EXPECT_EQ(chance(0.998), "> 99 %");
    EXPECT_EQ(chance(1.0), "100 %");
}

TEST(InWords, ATimeIsTheFarmsClock) {
    const Instant at = *instantFromIso8601("2026-09-15T01:30:00Z");
    EXPECT_EQ(inWords(at, Style{}), "2026-09-15 01:30");
    EXPECT_EQ(inWords(at, Style{.zone = *FarmZone::named("America/Sao_Paulo")}), "2026-09-14 22:30");
}

TEST(InWords, APlainNumberHasThreeDigits) {
    const auto band = [](double sigma) {
        return inWords(Message{code::workingLevel, {sigma}}, Style{.decimalSign = ','});
    };
    EXPECT_EQ(band(434.23), "Site level x 434");
    EXPECT_EQ(band(43.423), "Site level x 43,4");
    EXPECT_EQ(band(4.3423), "Site level x 4,34");
    EXPECT_EQ(band(0.16602), "Site level x 0,166");
}

TEST(InWords, ACodeSaysItsOwnPhrase) {
    EXPECT_EQ(inWords(Message{code::fileUnreadable, {std::string{"a.csv"}, code::noMachines}}, Style{}),
              "a.csv cannot be read (No machine): check the name and the rights to it");
}

// A name may hold braces; it is not read again.
TEST(InWords, AnArgumentIsNoTemplate) {
    EXPECT_EQ(inWords(Message{code::unitMissing, {std::string{"{2}"}, std::string{"t"}}}, Style{}),
              "\"{2}\" has no unit: add one of t");
}

TEST(InWords, RoundingHidesNoDifference) {
    const Message message{code::valueOutOfRange,
                          {Share::fromPercent(100.4).amount(), Share::fromPercent(0).amount(),
                           Share::fromPercent(100).amount()}};
    EXPECT_EQ(inWords(message, Style{}), "100.4 % is outside 0.0 % to 100.0 %: check the value and its unit");
}

TEST(InWords, RoundingMakesNothingZero) {
    const Message message{
        code::valueOutOfRange,
        {AsFedRate::fromTonnesPerHour(-5).amount(), AsFedRate::fromTonnesPerHour(0.1).amount(),
         AsFedRate::fromTonnesPerHour(5000).amount()}};
    EXPECT_EQ(inWords(message, Style{}),
              "-5.0 t/h is outside 0.1 t/h to 5000.0 t/h: check the value and its unit");
}

TEST(InWords, EqualButForRoundingErrorNeedsNoDecimals) {
    const Message message{code::targetAboveSaturation,
                          {DryDensity::fromSi(225.0).amount(), DryDensity::fromSi(225.0 + 1e-12).amount()}};
    EXPECT_EQ(inWords(message, Style{}),
              "The wanted 225 kg DM/m3 cannot be reached; the limit is 225 kg DM/m3");
}

TEST(InWords, AnErrorSaysWhereWhichFieldAndWhatToDo) {
    Error error =
        fail(code::unitMissing, "machines[1].mass", std::string{"14"}, std::string{"t, lb"}).value();
    EXPECT_EQ(inWords(error, Style{}), "machines 2 mass: \"14\" has no unit: add one of t, lb");
    error.place = {"tickets.csv", 12, 4};
    EXPECT_EQ(inWords(error, Style{}),
              "tickets.csv:12:4: machines 2 mass: \"14\" has no unit: add one of t, lb");
    error.place.column = 0;
    error.field.clear();
    EXPECT_EQ(inWords(error, Style{}), "tickets.csv:12: \"14\" has no unit: add one of t, lb");
}

TEST(FieldInWords, SplitsNamesAndCountsFromOne) {
    EXPECT_EQ(fieldInWords("machines[0].trackWidth"), "machines 1 track width");
    EXPECT_EQ(fieldInWords("meanDepth"), "mean depth");
    EXPECT_EQ(fieldInWords("prices[maize]"), "prices[maize]");
    EXPECT_EQ(fieldInWords(""), "");
}

}  // namespace
}  // namespace treadwell::words
