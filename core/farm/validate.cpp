#include "core/base/codes.h"
#include "core/farm/codes.h"
#include "core/farm/field.h"
#include "core/farm/machines.h"
#include "core/farm/shape.h"
#include "core/farm/silo.h"
#include "core/farm/site_rules.h"
#include "core/quantity/range.h"

namespace treadwell::farm {

namespace {

Result<void> checkName(const std::string& name) {
    if (name.find_first_not_of(" \t") == std::string::npos) return fail(code::nameEmpty, "name");
    return {};
}

Result<void> checkDuration(std::string field, Seconds value) {
    using namespace std::chrono_literals;
    if (!(value >= 5min && value <= 24h)) {
        return fail(code::valueOutOfRange, std::move(field), durationAmount(value), durationAmount(5min),
                    durationAmount(24h));
    }
    return {};
}

}  // namespace

Result<void> validate(const Silo& silo) {
    const auto metres = [](double m) { return Length::fromMetres(m); };
    auto ranges = firstFailure(
        checkName(silo.name), holdsWithin(silo.width, metres(3), metres(100), "width"),
        holdsWithin(silo.length, metres(5), metres(500), "length"),
        holdsWithin(silo.wallHeight, metres(0.5), metres(8), "wallHeight"),
        holdsWithin(silo.rampSlope, Slope::fromRunPerRise(2), Slope::fromRunPerRise(10), "rampSlope"),
        holdsWithin(silo.crown, metres(0), metres(2), "crown"),
        holdsWithin(silo.plannedDepth, metres(0.3), silo.wallHeight + silo.crown, "plannedDepth"));
    if (!ranges) return ranges;
    if (silo.rampEnds != 1 && silo.rampEnds != 2) {
        return fail(code::valueOutOfRange, "rampEnds", std::int64_t{silo.rampEnds}, std::int64_t{1},
                    std::int64_t{2});
    }
    const Length ramps = silo.wallHeight * silo.rampSlope.runPerRise() * silo.rampEnds;
    if (ramps > silo.length)
        return fail(code::rampLongerThanSilo, "rampSlope", ramps.amount(), silo.length.amount());
    if (silo.crown * (2.0 * kCrownSide.runPerRise()) > silo.width)
        return fail(code::crownTooWide, "crown", silo.crown.amount(), silo.width.amount());
    return {};
}

Result<void> validate(const Tractor& tractor) {
    return firstFailure(
        checkName(tractor.name),
        holdsWithin(tractor.mass, MachineMass::fromTonnes(1), MachineMass::fromTonnes(60), "mass"),
        holdsWithin(tractor.trackWidth, Length::fromMetres(0.3), Length::fromMetres(6), "trackWidth"),
        holdsWithin(tractor.speed, Speed::fromKilometresPerHour(0.5), Speed::fromKilometresPerHour(20),
                    "speed"),
        holdsWithin(tractor.hourlyCost.value_or(CostRate{}), CostRate{}, CostRate::fromPerHour(2000),
                    "hourlyCost"));
}

Result<void> validate(const Truck& truck) {
    return firstFailure(
        checkName(truck.name),
        holdsWithin(truck.usualLoad, AsFedMass::fromTonnes(0.5), AsFedMass::fromTonnes(60), "usualLoad"),
        holdsWithin(truck.boxVolume.value_or(Volume::fromCubicMetres(1)), Volume::fromCubicMetres(1),
                    Volume::fromCubicMetres(150), "boxVolume"));
}

Result<void> validate(const Field& field) {
    return checkName(field.name);
}

Result<void> validate(const SiteRules& rules) {
    const auto density = [](double value) { return DryDensity::fromKilogramsPerCubicMetre(value); };
    const auto dry = [](double percent) { return DryMatter::fromPercent(percent); };
    return firstFailure(
        holdsWithin(rules.minimumDensity, density(100), density(400), "minimumDensity"),
        holdsWithin(rules.usualFilling(), density(100), density(400), "fillingDensity"),
        holdsWithin(rules.porosityGoal, Porosity::fromFraction(0.2), Porosity::fromFraction(0.6),
                    "porosityGoal"),
        holdsWithin(rules.wantedChance, Chance::fromPercent(5), Chance::fromPercent(99), "wantedChance"),
        holdsWithin(rules.maximumLayer, Length::fromCentimetres(5), Length::fromCentimetres(40),
                    "maximumLayer"),
        holdsWithin(rules.dryMatterHigh, dry(15), dry(70), "dryMatterHigh"),
        holdsWithin(rules.dryMatterLow, dry(15), rules.dryMatterHigh, "dryMatterLow"),
        checkDuration("sampleInterval", rules.sampleInterval), checkDuration("rateWindow", rules.rateWindow),
        holdsWithin(rules.sieveLossLimit(), Share{}, Share::fromPercent(50), "sieveLoss"));
}

}  // namespace treadwell::farm
