#include "core/base/codes.h"
#include "core/farm/codes.h"
#include "core/plan/codes.h"
#include "core/plan/inputs.h"
#include "core/quantity/range.h"

#include <set>

namespace treadwell::plan {

namespace {

Result<void> checkCount(std::int64_t value, std::int64_t lowest, std::int64_t highest, const char* field) {
    if (value >= lowest && value <= highest) return {};
    return fail(code::valueOutOfRange, field, value, lowest, highest);
}

Result<void> checkTime(Seconds value, Seconds lowest, Seconds highest, const char* field) {
    if (value >= lowest && value <= highest) return {};
    return fail(code::valueOutOfRange, field, durationAmount(value), durationAmount(lowest),
                durationAmount(highest));
}

Result<void> checkCost(CostRate cost, const char* field) {
    return holdsWithin(cost, CostRate{}, CostRate::fromPerHour(5000), field);
}

Result<void> check(const MachinePrice& price) {
    return firstFailure(holdsWithin(price.list, 0.0, 1e8, "list"),
                        holdsWithin(price.purchase, 0.0, 1e8, "purchase"),
                        holdsWithin(price.life_years, 1.0, 50.0, "life_years"),
                        holdsWithin(price.hours_per_year, 10.0, 8000.0, "hours_per_year"),
                        holdsWithin(price.interest, Share{}, Share::fromPercent(100), "interest"),
                        holdsWithin(price.salvage, Share{}, Share::fromPercent(100), "salvage"),
                        holdsWithin(price.taxes, Share{}, Share::fromPercent(50), "taxes_and_insurance"),
                        holdsWithin(price.power_kW, 10.0, 1000.0, "power_kw"),
                        holdsWithin(price.load, Share::fromPercent(5), Share::fromPercent(100), "load"),
                        checkCost(price.upkeep, "upkeep"));
}

Result<void> check(const PlannedTractor& tractor) {
    return firstFailure(
        holdsWithin(tractor.mass, MachineMass::fromTonnes(1), MachineMass::fromTonnes(60), "mass"),
        holdsWithin(tractor.share, Share::fromPercent(1), Share::fromPercent(100), "share"),
        check(tractor.price));
}

Result<void> check(const PlannedField& field) {
    return firstFailure(
        holdsWithin(field.crop, AsFedMass::fromTonnes(0.1), AsFedMass::fromTonnes(200'000), "crop"),
        holdsWithin(field.distance, Length{}, Length::fromMetres(100'000), "distance"));
}

Result<void> check(const PlannedSilo& silo) {
    return farm::validate(silo.shape);
}

/// Each thing by itself, with a name of its own.
template <class Things>
Result<void> checkList(const Things& things, const std::string& field) {
    if (things.empty()) return fail(code::planNothingListed, field);
    if (auto few = checkCount(std::ssize(things), 1, kMostListed, field.c_str()); !few) return few;
    std::set<std::string_view> names;
    for (std::size_t i = 0; i < things.size(); ++i) {
        const std::string place = field + '[' + std::to_string(i) + "].";
        const std::string& name = things[i].name;
        if (name.find_first_not_of(" \t") == std::string::npos) return fail(code::nameEmpty, place + "name");
        if (!names.insert(name).second) return fail(code::planNameTwice, place + "name", name);
        if (auto checked = check(things[i]); !checked) {
            checked.error().field = place + checked.error().field;
            return checked;
        }
    }
    return {};
}

Result<void> checkChain(const Inputs& inputs) {
    using namespace std::chrono_literals;
    const auto rate = [](double t_h) { return AsFedRate::fromTonnesPerHour(t_h); };
    const Haulage& haulage = inputs.haulage;
    return firstFailure(
        holdsWithin(inputs.harvester.rate, rate(1), rate(1000), "harvester.rate"),
        holdsWithin(inputs.harvester.chopping, Share::fromPercent(10), Share::fromPercent(100),
                    "harvester.chopping"),
        checkCost(inputs.harvester.hourlyCost, "harvester.hourlyCost"),
        checkCount(haulage.trucks, 1, kMostTrucks, "haulage.trucks"),
        holdsWithin(haulage.load, AsFedMass::fromTonnes(0.5), AsFedMass::fromTonnes(60), "haulage.load"),
        holdsWithin(haulage.speed, Speed::fromKilometresPerHour(3), Speed::fromKilometresPerHour(100),
                    "haulage.speed"),
        checkTime(haulage.tip, 5s, 1h, "haulage.tip"),
        checkTime(haulage.elsewhere, 0s, 2h, "haulage.elsewhere"),
        checkCount(haulage.tippingPlaces, 1, 10, "haulage.tippingPlaces"),
        checkCost(haulage.hourlyCost, "haulage.hourlyCost"),
        holdsWithin(inputs.spreading.rate, rate(1), rate(5000), "spreading.rate"),
        checkCount(inputs.spreading.heaps, 1, 50, "spreading.heaps"),
        holdsWithin(inputs.variation.fill, 0.0, 1.0, "variation.fill"),
        holdsWithin(inputs.variation.road, 0.0, 1.0, "variation.road"),
        holdsWithin(inputs.variation.tip, 0.0, 1.0, "variation.tip"));
}

Result<void> check(const Prices& prices) {
    return firstFailure(holdsWithin(prices.fuel_per_litre, 0.0, 1e6, "prices.fuel_per_litre"),
                        checkCost(prices.driver, "prices.driver"),
                        holdsWithin(prices.crop_per_tonne_dm, 0.01, 1e7, "prices.crop_per_t_dm"),
                        holdsWithin(prices.lossLevel, Loss{}, Loss::fromPercent(50), "prices.loss_level"),
                        holdsWithin(prices.lossLevelAt, DryDensity::fromPoundsPerCubicFoot(10),
                                    DryDensity::fromPoundsPerCubicFoot(22), "prices.loss_level_at"));
}

Result<void> check(const Sealing& sealing) {
    const auto metres = [](double m) { return Length::fromMetres(m); };
    return firstFailure(
        holdsWithin(sealing.sheets.width, metres(2), metres(60), "sealing.sheet_width"),
        holdsWithin(sealing.sheets.overlap, metres(0), sealing.sheets.width * 0.5, "sealing.overlap"),
        holdsWithin(sealing.sheets.edge, metres(0), metres(5), "sealing.edge"),
        holdsWithin(sealing.tyres_per_m2, 0.0, 20.0, "sealing.tyres_per_m2"),
        holdsWithin(sealing.treatment_L_per_m2, 0.0, 50.0, "sealing.treatment"),
        holdsWithin(sealing.crewMinutes_per_m2, 0.0, 60.0, "sealing.crew_minutes_per_m2"),
        checkCount(sealing.crew, 1, 100, "sealing.crew"),
        holdsWithin(sealing.exposedDepth, metres(0), metres(2), "sealing.exposed_depth"));
}

Result<void> checkAdvance(Length advance, const char* field) {
    return holdsWithin(advance, Length::fromMetres(0.02), Length::fromMetres(3), field);
}

Result<void> check(const Feeding& feeding) {
    return firstFailure(
        holdsWithin(feeding.daily, DryMass::fromKilograms(10), DryMass::fromTonnes(500), "feeding.daily"),
        checkAdvance(feeding.summerAdvance, "feeding.summer_advance"),
        checkAdvance(feeding.winterAdvance, "feeding.winter_advance"),
        checkCount(feeding.summerFrom, 1, 12, "feeding.summer_from_month"),
        checkCount(feeding.summerUntil, 1, 12, "feeding.summer_until_month"),
        checkCount(feeding.closedDays, 0, 400, "feeding.closed_days"));
}

}  // namespace

Result<void> validate(const Inputs& inputs) {
    using namespace std::chrono_literals;
    const auto density = [](double value) { return DryDensity::fromKilogramsPerCubicMetre(value); };
    if (inputs.name.find_first_not_of(" \t") == std::string::npos) return fail(code::nameEmpty, "name");
    return firstFailure(
        holdsWithin(inputs.dryMatter, DryMatter::fromPercent(15), DryMatter::fromPercent(70), "dryMatter"),
        holdsWithin(inputs.layer, Length::fromCentimetres(5), Length::fromCentimetres(60), "layer"),
        holdsWithin(inputs.minimumDensity, density(100), density(400), "minimumDensity"),
        holdsWithin(inputs.wantedChance, Chance::fromPercent(5), Chance::fromPercent(95), "wantedChance"),
        holdsWithin(inputs.machineWidth, Length::fromMetres(1), Length::fromMetres(8), "machineWidth"),
        checkTime(inputs.workday, 1h, 24h, "workday"), checkCount(inputs.days, 10, 100'000, "days"),
        checkCount(inputs.draw, 0, 1'000'000'000, "draw"), checkList(inputs.silos, "silos"),
        checkList(inputs.grounds, "fields"), checkList(inputs.tractors, "tractors"), checkChain(inputs),
        check(inputs.prices), check(inputs.sealing), check(inputs.feeding));
}

}  // namespace treadwell::plan
