#include "core/farm/field.h"
#include "core/farm/machines.h"
#include "core/farm/silo.h"
#include "core/farm/site_rules.h"
#include "core/quantity/range.h"

namespace treadwell::farm {

namespace {

template <class Q>
Result<void> holds(std::string field, Q value, Q lowest, Q highest) {
    return within(value, lowest, highest, std::move(field)).map([](Q) {});
}

template <class... More>
Result<void> firstFailure(Result<void> result, More... more) {
    ((result ? void(result = std::move(more)) : void()), ...);
    return result;
}

Result<void> checkName(const std::string& name) {
    if (name.find_first_not_of(" \t") == std::string::npos) return fail(Code::nameEmpty, "name");
    return {};
}

Result<void> checkDuration(std::string field, Seconds value) {
    using namespace std::chrono_literals;
    if (!(value >= 5min && value <= 24h)) {
        return fail(Code::valueOutOfRange, std::move(field), durationAmount(value), durationAmount(5min),
                    durationAmount(24h));
    }
    return {};
}

}  // namespace

Result<void> validate(const Silo& silo) {
    const auto metres = [](double m) { return Length::fromMetres(m); };
    auto ranges =
        firstFailure(checkName(silo.name), holds("width", silo.width, metres(3), metres(100)),
                     holds("length", silo.length, metres(5), metres(500)),
                     holds("wallHeight", silo.wallHeight, metres(0.5), metres(8)),
                     holds("rampSlope", silo.rampSlope, Slope::fromRunPerRise(2), Slope::fromRunPerRise(10)),
                     holds("crown", silo.crown, metres(0), metres(2)),
                     holds("plannedDepth", silo.plannedDepth, metres(0.3), silo.wallHeight + silo.crown));
    if (!ranges) return ranges;
    if (silo.rampEnds != 1 && silo.rampEnds != 2) {
        return fail(Code::valueOutOfRange, "rampEnds", std::int64_t{silo.rampEnds}, std::int64_t{1},
                    std::int64_t{2});
    }
    const Length ramps = silo.wallHeight * silo.rampSlope.runPerRise() * silo.rampEnds;
    if (ramps > silo.length)
        return fail(Code::rampLongerThanSilo, "rampSlope", ramps.amount(), silo.length.amount());
    if (silo.crown * 6.0 > silo.width)
        return fail(Code::crownTooWide, "crown", silo.crown.amount(), silo.width.amount());
    return {};
}

Result<void> validate(const Tractor& tractor) {
    return firstFailure(
        checkName(tractor.name),
        holds("mass", tractor.mass, MachineMass::fromTonnes(1), MachineMass::fromTonnes(60)),
        holds("trackWidth", tractor.trackWidth, Length::fromMetres(0.3), Length::fromMetres(6)),
        holds("speed", tractor.speed, Speed::fromKilometresPerHour(0.5), Speed::fromKilometresPerHour(20)),
        holds("hourlyCost", tractor.hourlyCost.value_or(CostRate{}), CostRate{},
              CostRate::fromPerHour(2000)));
}

Result<void> validate(const Truck& truck) {
    return firstFailure(
        checkName(truck.name),
        holds("usualLoad", truck.usualLoad, AsFedMass::fromTonnes(0.5), AsFedMass::fromTonnes(60)),
        holds("boxVolume", truck.boxVolume.value_or(Volume::fromCubicMetres(1)), Volume::fromCubicMetres(1),
              Volume::fromCubicMetres(150)));
}

Result<void> validate(const Field& field) {
    return checkName(field.name);
}

Result<void> validate(const SiteRules& rules) {
    const auto density = [](double value) { return DryDensity::fromKilogramsPerCubicMetre(value); };
    const auto dry = [](double percent) { return DryMatter::fromPercent(percent); };
    return firstFailure(
        holds("minimumDensity", rules.minimumDensity, density(100), density(400)),
        holds("porosityGoal", rules.porosityGoal, Porosity::fromFraction(0.2), Porosity::fromFraction(0.6)),
        holds("wantedChance", rules.wantedChance, Chance::fromPercent(5), Chance::fromPercent(99)),
        holds("maximumLayer", rules.maximumLayer, Length::fromCentimetres(5), Length::fromCentimetres(40)),
        holds("dryMatterHigh", rules.dryMatterHigh, dry(15), dry(70)),
        holds("dryMatterLow", rules.dryMatterLow, dry(15), rules.dryMatterHigh),
        checkDuration("sampleInterval", rules.sampleInterval), checkDuration("rateWindow", rules.rateWindow));
}

}  // namespace treadwell::farm
