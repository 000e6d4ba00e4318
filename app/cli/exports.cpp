#include "app/cli/exports.h"

#include "app/cli/names.h"
#include "core/review/day_view.h"

#include <algorithm>
#include <stdexcept>

namespace treadwell::cli {

namespace {

template <class Q>
Cell amountOr(const std::optional<Q>& quantity) {
    return quantity ? Cell{quantity->amount()} : Cell{};
}

/// Kilograms on a dish are told in grams.
template <class Mass>
Cell dishOr(const std::optional<Mass>& mass) {
    return mass ? Cell{Amount{Dimension::dishMass, mass->si()}} : Cell{};
}

template <class Things, class Id>
Cell named(const Things& things, const std::optional<Id>& id) {
    return id ? Cell{Name{nameIn(things, *id)}} : Cell{};
}

std::vector<Cell> rowOf(const season::Day& day, const season::LoadTipped& tipped) {
    const season::FarmBook& farm = day.farm();
    const entries::Load& load = tipped.load;
    return {tipped.entry.value.text(),
            tipped.at,
            toIso8601(day.date),
            named(farm.silos, std::optional{load.silo}),
            named(farm.trucks, load.truck),
            named(farm.fields, load.field),
            load.mass.amount(),
            std::string{enumText(load.source)},
            load.ticket ? Cell{Name{*load.ticket}} : Cell{},
            tipped.dryMatter.amount(),
            std::string{enumText(tipped.basis)},
            tipped.dryMass().amount()};
}

Table loadsOf(const season::Season& season, Instant now) {
    Table table{{{"entry", "Entry"},
                 {"at", "Time"},
                 {"day", "Day"},
                 {"silo", "Silo"},
                 {"truck", "Truck"},
                 {"field", "Field"},
                 {"mass", "As fed", Dimension::asFedMass},
                 {"source", "Source"},
                 {"ticket", "Ticket"},
                 {"dry_matter", "DM", Dimension::dryMatter},
                 {"dry_matter_basis", "DM is of"},
                 {"dry_matter_mass", "Dry", Dimension::dryMass}},
                {}};
    for (const auto& day : season.days()) {
        for (const season::LoadTipped& tipped : day->loads) {
            if (tipped.at <= now) table.rows.push_back(rowOf(*day, tipped));
        }
    }
    return table;
}

Table samplesOf(const season::Season& season, Instant now) {
    Table table{{{"entry", "Entry"},
                 {"at", "Time"},
                 {"day", "Day"},
                 {"field", "Field"},
                 {"dry_matter", "DM", Dimension::dryMatter},
                 {"method", "Method"},
                 {"wet", "Dish, wet", Dimension::dishMass},
                 {"dry", "Dish, dry", Dimension::dishMass}},
                {}};
    for (const auto& day : season.days()) {
        for (const season::Sample& sample : day->samples) {
            if (sample.at > now) continue;
            const entries::DryMatterSample& reading = sample.reading;
            table.rows.push_back({sample.entry.value.text(), sample.at, toIso8601(day->date),
                                  named(day->farm().fields, reading.field), reading.dryMatter.amount(),
                                  std::string{enumText(reading.method)}, dishOr(reading.wet),
                                  dishOr(reading.dry)});
        }
    }
    return table;
}

Table tractorHoursOf(const season::Season& season, Instant now) {
    Table table{{{"day", "Day"},
                 {"tractor", "Tractor"},
                 {"mass", "Mass", Dimension::machineMass},
                 {"packing_h", "Packing"},
                 {"spreading_h", "Spreading"},
                 {"hourly_cost", "Cost", Dimension::costRate}},
                {}};
    constexpr Seconds kHour = std::chrono::hours{1};
    for (const auto& day : season.days()) {
        if (day->begin > now) continue;
        const review::DayView view{season, *day, std::min(now, day->end - std::chrono::microseconds{1})};
        const auto& tractors = day->farm().tractors;
        for (const auto& [id, worked] : review::workedIn(view)) {
            const auto known = tractors.find(id);
            const bool isKnown = known != tractors.end();
            table.rows.push_back({toIso8601(day->date), Name{nameIn(tractors, id)},
                                  isKnown ? Cell{known->second.mass.amount()} : Cell{},
                                  worked.packing / kHour, worked.spreading / kHour,
                                  isKnown ? amountOr(known->second.hourlyCost) : Cell{}});
        }
    }
    return table;
}

}  // namespace

Table exportOf(const season::Season& season, Export what, Instant now) {
    switch (what) {
        case Export::loads:
            return loadsOf(season, now);
        case Export::samples:
            return samplesOf(season, now);
        case Export::tractorHours:
            return tractorHoursOf(season, now);
    }
    throw std::logic_error("an export without a table");
}

}  // namespace treadwell::cli
