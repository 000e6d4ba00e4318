#pragma once

#include "core/quantity/relations.h"

#include <span>

namespace treadwell::packing {

/// At least three passes over each layer (advice of the Lower Saxony chamber of agriculture, published).
inline constexpr double kLeastPasses = 3.0;

/// What a machine is taken to drive where nobody has said: about 4 km/h (published advice), on tracks 1.4 m
/// wide in all (assumed).
inline constexpr Speed kUsualSpeed = Speed::fromKilometresPerHour(4.0);
inline constexpr Length kUsualTrackWidth = Length::fromMetres(1.4);

/// One machine's rolling.
struct Roller {
    PackingIntensity rolling;  ///< its minutes for each tonne as fed
    Speed speed;
    Length trackWidth;  ///< the width its tyres cover, both sides together
};

/// How often each point of a layer is rolled on average: area rolled / area laid
/// = loose density [kg/m3] * layer [m] * sum(speed [m/s] * width [m] * rolling [s/kg]) [dimensionless].
/// `loose` is the density as spread, `layer` the thickness as spread; all 0 or more. At equal minutes per
/// tonne a thinner layer gets fewer passes, since it covers more ground.
[[nodiscard]] double passesPerLayer(std::span<const Roller> machines, AsFedDensity loose,
                                    Length layer) noexcept;

/// The inverse for one kind of machine: minutes for each tonne that give `passes`. All arguments above 0.
[[nodiscard]] PackingIntensity intensityForPasses(double passes, AsFedDensity loose, Length layer,
                                                  Speed speed, Length trackWidth) noexcept;

/// With tracks laid at random the passes over a point are Poisson distributed (derived): the part of the
/// layer that no tyre touches, exp(-passes), and the part that gets at least three. `passes` 0 or more.
[[nodiscard]] Share unrolledShare(double passes) noexcept;
[[nodiscard]] Share shareWithThreePasses(double passes) noexcept;

}  // namespace treadwell::packing
