#include "core/review/codes.h"
#include "core/review/laid.h"
#include "core/review/season_view.h"
#include "core/season/rolling.h"

#include <algorithm>
#include <functional>

namespace treadwell::review {

namespace {

/// Somebody hands over and somebody else takes the tablet: one change of shift.
constexpr std::chrono::minutes kOneChange{30};

/// When one shift of a day follows another: where the silo is handed over or another person takes the tablet.
std::vector<Instant> changesOn(const season::Day& day) {
    std::vector<Instant> changes;
    for (const auto& handed : day.records.of<entries::HandOver>()) changes.push_back(handed.at);
    std::optional<entries::PersonId> holder;
    for (const season::ShiftSpan& shift : day.shifts) {
        if (!shift.holdsTablet) continue;
        // A shift that goes on from the day before has not changed hands on this one.
        if (holder && holder != shift.person && shift.begin > day.begin) changes.push_back(shift.begin);
        holder = shift.person;
    }
    std::sort(changes.begin(), changes.end());
    std::vector<Instant> apart;
    for (const Instant change : changes) {
        if (apart.empty() || change - apart.back() > kOneChange) apart.push_back(change);
    }
    return apart;
}

std::vector<Cell> rowOf(const SeasonView& view, farm::SiloId silo, const density::SiloLayers& layers,
                        Instant begin, Instant end, std::size_t columns) {
    season::Delivered in;
    for (const season::LoadTipped* load : season::loadsOf(view.season, silo, begin, end)) in.add(*load);
    if (in.loads == 0) return {};
    Seconds packing{};
    for (const auto& [tractor, time] : season::packingOf(view.season, silo, begin, end)) packing += time;
    std::vector<Cell> row{view.dayOf(begin),           in.first, in.last,
                          view.nameOf(silo),           in.loads, in.mass.amount(),
                          (packing / in.mass).amount()};
    const density::LayerSpan span = laidBetween(layers, begin, end);
    if (span.count > 0) {
        const auto reading = readingOf(view.season, layers, span, density::Reading::day);
        if (reading.estimate) appendBand(row, reading.estimate->density);
    }
    row.resize(columns);
    return row;
}

}  // namespace

Section shiftsSideOf(const SeasonView& view) {
    Table table{"shifts",
                {{"day", code::columnDay},
                 {"begin", code::columnFirstLoad},
                 {"end", code::columnLastLoad},
                 {"silo", code::columnSilo},
                 {"loads", code::columnLoads},
                 {"mass", code::columnMass},
                 {"packing", code::columnPackingTime},
                 {"median", code::columnMedian},
                 {"low80", code::columnLow},
                 {"high80", code::columnHigh}},
                {},
                2};
    for (const auto& day : view.season.days()) {
        if (day->begin > view.until) break;
        const Instant end = std::min(day->end, view.until + std::chrono::microseconds{1});
        std::vector<Instant> edges{day->begin};
        for (const Instant change : changesOn(*day)) {
            if (change < end) edges.push_back(change);
        }
        edges.push_back(end);
        for (std::size_t i = 0; i + 1 < edges.size(); ++i) {
            for (const auto& [silo, readings] : view.readings) {
                if (!readings.layers) continue;
                auto row = rowOf(view, silo, *readings.layers, edges[i], edges[i + 1], table.columns.size());
                if (!row.empty()) table.rows.push_back(std::move(row));
            }
        }
    }
    return {"shifts", code::reviewShiftsSide, {orNothing(std::move(table))}};
}

/// For how many hours, and how much crop, each limit held.
Section limitsOf(const SeasonView& view) {
    struct Held {
        Code limit;
        std::int64_t hours = 0;
        AsFedMass mass;
    };
    Table table{"limits",
                {{"silo", code::columnSilo},
                 {"limit", code::columnLimit},
                 {"hours", code::columnHours},
                 {"mass", code::columnMass}},
                {},
                2};
    for (const auto& [silo, readings] : view.readings) {
        if (!readings.layers) continue;
        std::vector<Held> held;
        for (const auto& day : view.season.days()) {
            for (const HourLaid& hour : hoursOf(view.season, *readings.layers, *day, view.until)) {
                auto found = std::ranges::find(held, hour.limit, &Held::limit);
                if (found == held.end()) found = held.insert(found, {hour.limit, 0, {}});
                ++found->hours;
                found->mass += hour.laid.mass;
            }
        }
        std::ranges::stable_sort(held, std::greater{}, &Held::hours);
        for (const Held& each : held)
            table.rows.push_back(
                {view.nameOf(silo), Message{each.limit, {}}, each.hours, each.mass.amount()});
    }
    return {"limits", code::reviewLimited, {orNothing(std::move(table))}};
}

}  // namespace treadwell::review
