#include "core/review/codes.h"
#include "core/review/day_view.h"
#include "core/review/laid.h"

#include <functional>

namespace treadwell::review {

namespace {

using season::Delivered;
using season::LoadTipped;

/// Loads, as fed, dry and the mass-weighted dry matter.
void appendTo(std::vector<Cell>& row, const Delivered& sum) {
    row.emplace_back(sum.loads);
    row.emplace_back(sum.mass.amount());
    row.emplace_back(sum.dry.amount());
    if (const auto dryMatter = sum.dryMatter()) {
        row.emplace_back(dryMatter->amount());
    } else {
        row.emplace_back();
    }
}

std::vector<Column> columnsBy(Column first) {
    return {first,
            {"loads", code::columnLoads},
            {"mass", code::columnMass},
            {"dryMass", code::columnDryMass},
            {"dryMatter", code::columnDryMatter}};
}

/// A row for each key in its order, then the total; what has no name is told so and never left out.
template <class Key>
Table tableBy(const DayView& view, std::string_view key, Column first,
              const std::function<Key(const LoadTipped&)>& keyOf,
              const std::function<Cell(const Key&)>& name) {
    std::map<Key, Delivered> sums;
    Delivered all;
    for (const LoadTipped& load : view.day.loads) {
        if (load.at > view.until) continue;
        sums[keyOf(load)].add(load);
        all.add(load);
    }
    Table table{key, columnsBy(first), {}};
    for (const auto& [each, sum] : sums) {
        Cell shown = name(each);
        if (std::holds_alternative<std::monostate>(shown)) shown = Message{code::reviewNotNamed, {}};
        appendTo(table.rows.emplace_back(std::vector<Cell>{std::move(shown)}), sum);
    }
    if (sums.size() > 1) {
        appendTo(table.rows.emplace_back(std::vector<Cell>{Message{code::reviewTotal, {}}}), all);
    }
    return table;
}

Series rateSeries(const DayView& view) {
    std::map<Instant, AsFedMass> hours;
    for (const LoadTipped& load : view.day.loads) {
        if (load.at <= view.until) hours[hourOf(view.day, load.at)] += load.load.mass;
    }
    Series series{"delivery", code::columnDelivery, Dimension::asFedRate, {}};
    if (hours.empty()) return series;
    const Instant last = hours.rbegin()->first;
    for (Instant hour = hours.begin()->first; hour <= last; hour += std::chrono::hours{1}) {
        series.points.emplace_back(hour, (hours[hour] / Seconds{std::chrono::hours{1}}).si());
    }
    return series;
}

}  // namespace

Section deliveriesOf(const DayView& view) {
    const season::FarmBook& farm = view.day.farm();
    Section section{"deliveries", code::reviewDeliveries, {}};
    const Table bySilo = tableBy<farm::SiloId>(
        view, "bySilo", {"silo", code::columnSilo}, [](const LoadTipped& load) { return load.load.silo; },
        [&](const farm::SiloId& id) { return nameIn(farm.silos, std::optional{id}); });
    section.blocks.push_back(orNothing(bySilo));
    if (bySilo.rows.empty()) return section;
    section.blocks.emplace_back(tableBy<std::optional<farm::TruckId>>(
        view, "byTruck", {"truck", code::columnTruck}, [](const LoadTipped& load) { return load.load.truck; },
        [&](const std::optional<farm::TruckId>& id) { return nameIn(farm.trucks, id); }));
    section.blocks.emplace_back(tableBy<std::optional<farm::FieldId>>(
        view, "byField", {"field", code::columnField}, [](const LoadTipped& load) { return load.load.field; },
        [&](const std::optional<farm::FieldId>& id) { return nameIn(farm.fields, id); }));
    section.blocks.emplace_back(tableBy<Instant>(
        view, "byHour", {"hour", code::columnHour},
        [&](const LoadTipped& load) { return hourOf(view.day, load.at); },
        [](const Instant& hour) { return Cell{hour}; }));
    section.blocks.emplace_back(rateSeries(view));
    return section;
}

}  // namespace treadwell::review
