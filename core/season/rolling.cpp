#include "core/season/rolling.h"

#include <algorithm>

namespace treadwell::season {

namespace {

Seconds overlap(Instant begin, Instant end, Instant from, Instant to) {
    return std::max(Seconds{0}, Seconds{std::min(end, to) - std::max(begin, from)});
}

AsFedRate rate(AsFedMass mass, Seconds time) {
    return time > Seconds{0} ? mass / time : AsFedRate{};
}

std::vector<TractorNow> tractorsAt(const Day& day, Instant now) {
    std::vector<TractorNow> tractors;
    for (const auto& [id, tractor] : day.farm().tractors) {
        TractorNow state;
        state.tractor = id;
        for (const WorkSpan& span : day.work) {
            if (span.tractor != id || span.begin > now) continue;
            const Instant end = day.endOf(span.begin, span.end, now);
            const Seconds time{end - span.begin};
            state.workedToday += time;
            state.packedToday += time * span.packing.fraction();
            if (!span.end || *span.end > now) {
                state.activity = span.activity;
                state.silo = span.silo;
                state.packing = span.packing;
                state.since = span.begin;
            }
        }
        tractors.push_back(state);
    }
    return tractors;
}

/// Those who are on shift; alive as long as the season.
std::vector<const ShiftSpan*> shiftsAt(const Season& season, Instant now) {
    const auto days = season.days();
    const auto past =
        std::find_if(days.begin(), days.end(), [&](const auto& day) { return day->begin > now; });
    std::vector<const ShiftSpan*> on;
    if (past == days.begin()) return on;
    for (const ShiftSpan& shift : (*std::prev(past))->shifts) {
        if (shift.begin <= now && (!shift.end || *shift.end > now)) on.push_back(&shift);
    }
    return on;
}

}  // namespace

std::vector<const LoadTipped*> loadsOf(const Season& season, farm::SiloId silo, Instant from, Instant to) {
    std::vector<const LoadTipped*> loads;
    for (const auto& day : season.days()) {
        if (day->end <= from || day->begin >= to) continue;
        for (const LoadTipped& load : day->loads) {
            if (load.load.silo == silo && load.at >= from && load.at < to) loads.push_back(&load);
        }
    }
    return loads;
}

std::map<farm::TractorId, Seconds> packingOf(const Season& season, farm::SiloId silo, Instant from,
                                             Instant to) {
    std::map<farm::TractorId, Seconds> packing;
    for (const auto& day : season.days()) {
        if (day->end <= from || day->begin >= to) continue;
        for (const auto& [tractor, time] : packingOn(*day, silo, from, to)) packing[tractor] += time;
    }
    return packing;
}

Seconds unpaused(const Season& season, farm::SiloId silo, Instant from, Instant to) {
    // Pauses may overlap (one for all, one for the silo): join them before they are cut out.
    std::vector<std::pair<Instant, Instant>> pauses;
    for (const auto& day : season.days()) {
        // One that goes on stands in every day it reaches, with its own begin.
        if (day->end <= from || day->begin >= to) continue;
        for (const PauseSpan& pause : day->pauses) {
            if (pause.silo && *pause.silo != silo) continue;
            pauses.emplace_back(pause.begin,
                                std::max(pause.begin, pause.end.value_or(std::min(day->end, to))));
        }
    }
    std::sort(pauses.begin(), pauses.end());
    Seconds time = overlap(from, to, from, to);
    Instant counted = from;
    for (const auto& [begin, end] : pauses) {
        time -= overlap(std::max(begin, counted), std::max(end, counted), from, to);
        counted = std::max(counted, end);
    }
    return std::max(Seconds{0}, time);
}

std::optional<Seconds> longestShift(const Season& season, Instant now) {
    std::optional<Seconds> longest;
    for (const ShiftSpan* shift : shiftsAt(season, now)) {
        longest = std::max(longest.value_or(Seconds{0}), Seconds{now - shift->onShiftSince});
    }
    return longest;
}

std::optional<ShiftSpan> tabletHolder(const Season& season, Instant now) {
    std::optional<ShiftSpan> holder;
    for (const ShiftSpan* shift : shiftsAt(season, now)) {
        if (!shift->holdsTablet || now - shift->onShiftSince >= kShiftIsOver) continue;
        if (!holder || shift->begin >= holder->begin) holder = *shift;
    }
    return holder;
}

Rolling rollingAt(const Season& season, farm::SiloId silo, Instant now) {
    using std::chrono::microseconds;
    Rolling rolling;
    rolling.at = now;
    rolling.silo = silo;
    const auto later = [&](const auto& each) { return each->begin > now; };
    const auto days = season.days();
    const auto past = std::find_if(days.begin(), days.end(), later);
    if (past == days.begin()) return rolling;
    const Day& last = **std::prev(past);
    for (auto each = past; each-- != days.begin() && !rolling.lastSample;) {
        for (const Sample& sample : (*each)->samples) {
            if (sample.at <= now) rolling.lastSample = sample;
        }
        if (!rolling.lastSample && (*each)->before.lastSample)
            rolling.lastSample = (*each)->before.lastSample;
    }
    const auto carried = last.before.layers.find(silo);
    if (carried != last.before.layers.end()) rolling.layer = carried->second;
    for (const LayerNote& seen : last.layers) {
        if (seen.what.silo == silo && seen.at <= now) rolling.layer = seen;
    }
    rolling.today = season.zone().dayOf(now);
    for (auto each = days.begin(); each != std::prev(past); ++each) {
        if (const auto placed = (*each)->placed.find(silo); placed != (*each)->placed.end()) {
            rolling.siloIn += placed->second;
        }
    }
    rolling.siloIn += deliveredOn(last, silo, now);
    if (last.date == *rolling.today) rolling.todayIn = sinceFirstLoadOn(last, silo, now);
    rolling.tractors = tractorsAt(last, now);
    for (const PauseSpan& pause : last.pauses) {
        const bool here = !pause.silo || *pause.silo == silo;
        if (here && pause.begin <= now && (!pause.end || *pause.end > now)) rolling.paused = true;
    }

    const Seconds window = season.farm().rules.rateWindow;
    const Instant from = now - std::chrono::duration_cast<microseconds>(window);
    Delivered inWindow;
    for (const LoadTipped* load : loadsOf(season, silo, from + microseconds{1}, now + microseconds{1})) {
        inWindow.mass += load->load.mass;
    }
    inWindow.packing = packingOf(season, silo, from, now);
    rolling.rateInWindow = rate(inWindow.mass, window);
    rolling.packingInWindow = inWindow.intensity();
    rolling.rateToday = rate(rolling.todayIn.mass, unpaused(season, silo, rolling.todayIn.first, now));
    rolling.packingToday = rolling.todayIn.intensity();
    return rolling;
}

}  // namespace treadwell::season
