#include "core/review/codes.h"
#include "core/review/day_view.h"

namespace treadwell::review {

namespace {

/// What was filled into one tractor, or into all.
struct Fuel {
    ProductVolume volume;
    std::optional<double> cost;

    Fuel& operator+=(const Fuel& more) {
        volume += more.volume;
        if (more.cost) cost = cost.value_or(0.0) + *more.cost;
        return *this;
    }
};

std::map<farm::TractorId, Fuel> fuelIn(const DayView& view) {
    std::map<farm::TractorId, Fuel> fuel;
    for (const auto& taken : view.day.records.of<entries::FuelTaken>()) {
        if (taken.at <= view.until) fuel[taken.what.tractor] += {taken.what.volume, taken.what.cost};
    }
    return fuel;
}

void append(std::vector<Cell>& row, const Fuel& fuel) {
    row.push_back(fuel.volume > ProductVolume{} ? Cell{fuel.volume.amount()} : Cell{});
    row.push_back(fuel.cost ? Cell{*fuel.cost} : Cell{});
}

/// Of the time at work; none without any.
Cell packingShare(const Worked& worked) {
    if (!(worked.all() > Seconds{})) return {};
    return Share::fromFraction(worked.packing / worked.all()).amount();
}

}  // namespace

std::map<farm::TractorId, Worked> workedIn(const DayView& view) {
    std::map<farm::TractorId, Worked> worked;
    for (const season::WorkSpan& span : view.day.work) {
        if (span.activity == farm::Activity::away || span.begin > view.until) continue;
        const Seconds time = view.day.endOf(span.begin, span.end, view.until) - span.begin;
        worked[span.tractor].packing += time * span.packing.fraction();
        worked[span.tractor].spreading += time * (1.0 - span.packing.fraction());
    }
    return worked;
}

Section tractorsOf(const DayView& view) {
    Table table{"tractors",
                {{"tractor", code::columnTractor},
                 {"mass", code::columnMachineMass},
                 {"packingHours", code::columnPackingHours},
                 {"spreadingHours", code::columnSpreadingHours},
                 {"packingShare", code::columnShareOfTime},
                 {"cost", code::columnCost},
                 {"fuel", code::columnFuel},
                 {"fuelCost", code::columnFuelCost}},
                {}};
    Worked all;
    double cost = 0.0;
    bool costKnown = true;
    std::map<farm::TractorId, Fuel> fuel = fuelIn(view);
    Fuel allFuel;
    std::map<farm::TractorId, Worked> workedBy = workedIn(view);
    for (const auto& [id, filled] : fuel) workedBy.try_emplace(id);
    for (const auto& [id, worked] : workedBy) {
        all.packing += worked.packing;
        all.spreading += worked.spreading;
        std::vector<Cell>& row = table.rows.emplace_back();
        const auto& tractors = view.day.farm().tractors;
        const auto found = tractors.find(id);
        const bool known = found != tractors.end();
        row.emplace_back(known ? Cell{found->second.name} : Cell{Message{code::reviewNotNamed, {}}});
        row.emplace_back(known ? Cell{found->second.mass.amount()} : Cell{});
        row.emplace_back(worked.packing / kHour);
        row.emplace_back(worked.spreading / kHour);
        row.push_back(packingShare(worked));
        if (known && found->second.hourlyCost) {
            const double money = found->second.hourlyCost->perHour() * (worked.all() / kHour);
            cost += money;
            row.emplace_back(money);
        } else {
            costKnown = false;
            row.emplace_back();
        }
        const Fuel filled = fuel[id];
        append(row, filled);
        allFuel += filled;
    }
    if (table.rows.size() > 1) {
        table.rows.push_back({Message{code::reviewTotal, {}}, Cell{}, all.packing / kHour,
                              all.spreading / kHour, packingShare(all), costKnown ? Cell{cost} : Cell{}});
        append(table.rows.back(), allFuel);
    }
    return {"tractors", code::reviewTractors, {orNothing(std::move(table))}};
}

}  // namespace treadwell::review
