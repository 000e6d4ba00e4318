#pragma once

#include "core/base/error.h"
#include "core/quantity/relations.h"
#include "core/quantity/weather.h"

#include <vector>

namespace treadwell::words {

/// A code and its arguments as the core gives them.
struct Sample {
    Code code;
    std::vector<Argument> arguments;
};

// The samples of each room's codes, sorted as its codes.h.
[[nodiscard]] std::vector<Sample> baseSamples();
[[nodiscard]] std::vector<Sample> cropSamples();
[[nodiscard]] std::vector<Sample> samplesSamples();
[[nodiscard]] std::vector<Sample> farmSamples();
[[nodiscard]] std::vector<Sample> entriesSamples();
[[nodiscard]] std::vector<Sample> journalSamples();
[[nodiscard]] std::vector<Sample> formatsSamples();
[[nodiscard]] std::vector<Sample> packingSamples();
[[nodiscard]] std::vector<Sample> densitySamples();
[[nodiscard]] std::vector<Sample> adviceSamples();
[[nodiscard]] std::vector<Sample> planSamples();
[[nodiscard]] std::vector<Sample> attentionSamples();
[[nodiscard]] std::vector<Sample> passesSamples();
[[nodiscard]] std::vector<Sample> faceSamples();
[[nodiscard]] std::vector<Sample> practiceSamples();
[[nodiscard]] std::vector<Sample> intakeSamples();
[[nodiscard]] std::vector<Sample> reviewSamples();
[[nodiscard]] std::vector<Sample> sessionSamples();

namespace sample {

inline const Argument kText = std::string{"14x"};
inline const Argument kOther = std::string{"t, lb"};
inline const Argument kCount = std::int64_t{2};
inline const Argument kMore = std::int64_t{3};
inline const Argument kNumber = 1.5;
inline const Argument kAt = Instant{};
inline const Argument kDensity = DryDensity::fromSi(236).amount();
inline const Argument kDenser = DryDensity::fromSi(262).amount();
inline const Argument kDryMatter = DryMatter::fromPercent(35).amount();
inline const Argument kDrier = DryMatter::fromPercent(45).amount();
inline const Argument kLayer = Length::fromCentimetres(15).layerAmount();
inline const Argument kThicker = Length::fromCentimetres(50).layerAmount();
inline const Argument kDepth = Length::fromMetres(3).amount();
inline const Argument kHeavy = AsFedMass::fromTonnes(12.4).amount();
inline const Argument kHeavier = AsFedMass::fromTonnes(26.1).amount();
inline const Argument kDryMass = DryMass::fromTonnes(4.2).amount();
inline const Argument kVolume = Volume::fromCubicMetres(19).amount();
inline const Argument kMachine = MachineMass::fromTonnes(10).amount();
inline const Argument kHeavyMachine = MachineMass::fromTonnes(14).amount();
inline const Argument kTime = PackingIntensity::fromMinutesPerTonne(0.75).amount();
inline const Argument kLongerTime = PackingIntensity::fromMinutesPerTonne(1.1).amount();
inline const Argument kMinutes = durationAmount(std::chrono::minutes{90});
inline const Argument kFewerMinutes = durationAmount(std::chrono::minutes{60});
inline const Argument kShallow = Length::fromMetres(1).amount();
inline const Argument kSlope = Slope::fromRunPerRise(3).amount();
inline const Argument kSteeper = Slope::fromRunPerRise(2).amount();
inline const Argument kShare = Share::fromPercent(50).amount();
inline const Argument kRate = AsFedRate::fromTonnesPerHour(90).amount();
inline const Argument kFasterRate = AsFedRate::fromTonnesPerHour(130).amount();
inline const Argument kFaster = AsFedRate::fromTonnesPerHour(200).amount();
inline const Argument kCost = CostRate::fromPerHour(80).amount();
inline const Argument kBetter = Chance::fromFraction(0.61).amount();
inline const Argument kSmallShare = Share::fromPercent(4).amount();
inline const Argument kOtherShare = Share::fromPercent(9).amount();
inline const Argument kDensest = DryDensity::fromSi(480).amount();
inline const Argument kDryTonnes = DryMass::fromTonnes(430).amount();
inline const Argument kRoom = Volume::fromCubicMetres(1640).amount();
inline const Argument kGrams = Amount{Dimension::dishMass, 0.0372};
inline const Argument kFewerGrams = Amount{Dimension::dishMass, 0.0351};
inline const Argument kChop = Length::fromMillimetres(8).chopAmount();
inline const Argument kLongChop = Length::fromMillimetres(19).chopAmount();
inline const Argument kWarm = Temperature::fromCelsius(24).amount();
inline const Argument kCold = Temperature::fromCelsius(11).amount();
inline const Argument kWarmth = DegreeDays::fromFahrenheit(750).amount();
inline const Argument kFast = Speed::fromKilometresPerHour(8).amount();
inline const Argument kUsual = Speed::fromKilometresPerHour(4).amount();
inline const Argument kPoints = DryMatter::fromPercent(2.5).amount();
inline const Argument kLoose = AsFedDensity::fromSi(320).amount();
inline const Argument kChance = Chance::fromFraction(0.36).amount();

}  // namespace sample

}  // namespace treadwell::words
