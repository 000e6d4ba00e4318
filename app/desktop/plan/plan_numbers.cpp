// The numbers of a plan that can be changed behind a touch, part by part.
#include "app/desktop/plan/plan_sheets.h"

#include <QCoreApplication>

namespace treadwell::plan_page {

namespace {

struct NumberText {
    Q_DECLARE_TR_FUNCTIONS(PlanNumbers)
};

using plan::Inputs;

/// A quantity somewhere in the inputs; `at` gives a reference to it in either.
template <class At>
Number quantity(const QString& name, Dimension dimension, double lowest, double highest, At at) {
    return {name,
            dimension,
            lowest,
            highest,
            [at](const Inputs& inputs) { return at(inputs).si(); },
            [at](Inputs& inputs, double si) {
                auto& target = at(inputs);
                target = std::decay_t<decltype(target)>::fromSi(si);
            }};
}

/// The same of its own dimension.
template <class At>
Number quantity(const QString& name, double lowest, double highest, At at) {
    using Q = std::decay_t<decltype(at(std::declval<Inputs&>()))>;
    return quantity(name, Q::kDimension, lowest, highest, at);
}

/// Money and other plain numbers have two decimals and no unit, like a porosity.
template <class At>
Number plain(const QString& name, double lowest, double highest, At at) {
    return {name,
            Dimension::porosity,
            lowest,
            highest,
            [at](const Inputs& inputs) { return static_cast<double>(at(inputs)); },
            [at](Inputs& inputs, double value) {
                auto& target = at(inputs);
                target = static_cast<std::decay_t<decltype(target)>>(value);
            }};
}

template <class At>
Number time(const QString& name, double lowest_s, double highest_s, At at) {
    return {name,
            Dimension::duration,
            lowest_s,
            highest_s,
            [at](const Inputs& inputs) { return at(inputs).count(); },
            [at](Inputs& inputs, double s) { at(inputs) = Seconds{s}; }};
}

double tonnesPerHour(double rate) {
    return AsFedRate::fromTonnesPerHour(rate).si();
}

double perHour(double money) {
    return CostRate::fromPerHour(money).si();
}

double kilometresPerHour(double speed) {
    return Speed::fromKilometresPerHour(speed).si();
}

}  // namespace

std::vector<Number> workNumbers() {
    return {
        quantity(
            NumberText::tr("Dry matter"), 0.10, 0.90, [](auto& i) -> auto& { return i.dryMatter; }),
        quantity(
            NumberText::tr("Layer as spread"), Dimension::layerThickness, 0.05, 0.60,
            [](auto& i) -> auto& { return i.layer; }),
        time(
            NumberText::tr("Working day"), 1800, 86400, [](auto& i) -> auto& { return i.workday; }),
        quantity(
            NumberText::tr("Harvester while it chops"), tonnesPerHour(1), tonnesPerHour(1000),
            [](auto& i) -> auto& { return i.harvester.rate; }),
        quantity(
            NumberText::tr("Part of the time that it chops"), 0.10, 1.0,
            [](auto& i) -> auto& { return i.harvester.chopping; }),
        quantity(
            NumberText::tr("Load of a truck"), 500, 60'000, [](auto& i) -> auto& { return i.haulage.load; }),
        quantity(
            NumberText::tr("Speed on the road"), kilometresPerHour(3), kilometresPerHour(100),
            [](auto& i) -> auto& { return i.haulage.speed; }),
        time(
            NumberText::tr("Tipping"), 5, 3600, [](auto& i) -> auto& { return i.haulage.tip; }),
        time(
            NumberText::tr("Weighing, gates, turning"), 0, 7200,
            [](auto& i) -> auto& { return i.haulage.elsewhere; }),
        quantity(
            NumberText::tr("What is spread in an hour"), tonnesPerHour(1), tonnesPerHour(5000),
            [](auto& i) -> auto& { return i.spreading.rate; }),
        quantity(
            NumberText::tr("Least density"), 100, 400, [](auto& i) -> auto& { return i.minimumDensity; })};
}

std::vector<Number> priceNumbers() {
    return {plain(
                NumberText::tr("A tonne of dry matter"), 0.01, 1e7,
                [](auto& i) -> auto& { return i.prices.crop_per_tonne_dm; }),
            plain(
                NumberText::tr("A litre of fuel"), 0, 1e6,
                [](auto& i) -> auto& { return i.prices.fuel_per_litre; }),
            quantity(
                NumberText::tr("A driver's hour"), 0, perHour(5000),
                [](auto& i) -> auto& { return i.prices.driver; }),
            quantity(
                NumberText::tr("The harvester's hour"), 0, perHour(5000),
                [](auto& i) -> auto& { return i.harvester.hourlyCost; }),
            quantity(
                NumberText::tr("A truck's hour, driver included"), 0, perHour(5000),
                [](auto& i) -> auto& { return i.haulage.hourlyCost; }),
            quantity(
                NumberText::tr("The farm's own loss"), 0, 0.5,
                [](auto& i) -> auto& { return i.prices.lossLevel; }),
            quantity(
                NumberText::tr("at a density of"), 161, 352,
                [](auto& i) -> auto& { return i.prices.lossLevelAt; })};
}

std::vector<Number> sealingNumbers() {
    return {
        quantity(
            NumberText::tr("Width of a sheet"), 2, 60,
            [](auto& i) -> auto& { return i.sealing.sheets.width; }),
        quantity(
            NumberText::tr("Overlap of sheets"), 0, 30,
            [](auto& i) -> auto& { return i.sealing.sheets.overlap; }),
        quantity(
            NumberText::tr("Lap over walls and edges"), 0, 5,
            [](auto& i) -> auto& { return i.sealing.sheets.edge; }),
        plain(
            NumberText::tr("Tyres a square metre"), 0, 20,
            [](auto& i) -> auto& { return i.sealing.tyres_per_m2; }),
        plain(
            NumberText::tr("Litres of treatment a square metre"), 0, 50,
            [](auto& i) -> auto& { return i.sealing.treatment_L_per_m2; }),
        plain(
            NumberText::tr("People in the crew"), 1, 100, [](auto& i) -> auto& { return i.sealing.crew; }),
        plain(
            NumberText::tr("Minutes of one person a square metre"), 0, 60,
            [](auto& i) -> auto& { return i.sealing.crewMinutes_per_m2; })};
}

std::vector<Number> feedingNumbers() {
    return {quantity(
                NumberText::tr("The herd's dry matter a day"), 10, 500'000,
                [](auto& i) -> auto& { return i.feeding.daily; }),
            quantity(
                NumberText::tr("Face a day in summer, at least"), Dimension::layerThickness, 0.02, 3,
                [](auto& i) -> auto& { return i.feeding.summerAdvance; }),
            quantity(
                NumberText::tr("Face a day in winter, at least"), Dimension::layerThickness, 0.02, 3,
                [](auto& i) -> auto& { return i.feeding.winterAdvance; }),
            plain(
                NumberText::tr("First month of summer"), 1, 12,
                [](auto& i) -> auto& { return i.feeding.summerFrom; }),
            plain(
                NumberText::tr("Last month of summer"), 1, 12,
                [](auto& i) -> auto& { return i.feeding.summerUntil; }),
            plain(
                NumberText::tr("Days closed before opening"), 0, 400,
                [](auto& i) -> auto& { return i.feeding.closedDays; })};
}

std::vector<Number> fieldNumbers(std::size_t field) {
    return {quantity(
                NumberText::tr("Crop on it"), 100,
                2e8, [field](auto& i) -> auto& { return i.grounds[field].crop; }),
            quantity(
                NumberText::tr("Road to the silo"), 0,
                100'000, [field](auto& i) -> auto& { return i.grounds[field].distance; })};
}

std::vector<Number> siloNumbers(std::size_t silo) {
    return {
        quantity(
            NumberText::tr("Width"), 3, 200, [silo](auto& i) -> auto& { return i.silos[silo].shape.width; }),
        quantity(
            NumberText::tr("Length"), 5,
            500, [silo](auto& i) -> auto& { return i.silos[silo].shape.length; }),
        quantity(
            NumberText::tr("Height in the middle when full"), 0.3,
            12, [silo](auto& i) -> auto& { return i.silos[silo].shape.height; }),
        quantity(
            NumberText::tr("Height of the walls"), 0,
            12, [silo](auto& i) -> auto& { return i.silos[silo].shape.wallHeight; }),
        quantity(
            NumberText::tr("Slope of the ramp, run for one of rise"), 1,
            20, [silo](auto& i) -> auto& { return i.silos[silo].shape.rampSlope; })};
}

std::vector<Number> tractorNumbers(std::size_t tractor) {
    const auto price = [tractor](auto& i) -> auto& {
        return i.tractors[tractor].price;
    };
    return {
        quantity(
            NumberText::tr("Mass"), 1000,
            60'000, [tractor](auto& i) -> auto& { return i.tractors[tractor].mass; }),
        quantity(
            NumberText::tr("Part of the time that it packs"), 0.01,
            1, [tractor](auto& i) -> auto& { return i.tractors[tractor].share; }),
        plain(
            NumberText::tr("List price"), 0, 1e8, [price](auto& i) -> auto& { return price(i).list; }),
        plain(
            NumberText::tr("Paid"), 0, 1e8, [price](auto& i) -> auto& { return price(i).purchase; }),
        plain(
            NumberText::tr("Years of life"), 1,
            50, [price](auto& i) -> auto& { return price(i).life_years; }),
        plain(
            NumberText::tr("Hours a year"), 10,
            8000, [price](auto& i) -> auto& { return price(i).hours_per_year; }),
        quantity(
            NumberText::tr("Interest a year"), 0, 1, [price](auto& i) -> auto& { return price(i).interest; }),
        plain(
            NumberText::tr("Power in kW"), 10, 1000, [price](auto& i) -> auto& { return price(i).power_kW; }),
        quantity(
            NumberText::tr("Load of the engine"), 0.05,
            1, [price](auto& i) -> auto& { return price(i).load; }),
        quantity(
            NumberText::tr("Repairs and tyres an hour"), 0,
            perHour(5000), [price](auto& i) -> auto& { return price(i).upkeep; })};
}

}  // namespace treadwell::plan_page
