#include "core/review/laid.h"

#include "core/density/codes.h"
#include "core/review/codes.h"
#include "core/review/day_view.h"

#include <algorithm>

namespace treadwell::review {

namespace {

Code limitOf(const density::WeakPlace& laid) {
    for (const Message& cause : laid.causes) {
        if (cause.code == code::weakNotPacked) return code::limitedByNoPacking;
        if (cause.code == code::weakFewMinutes) return code::limitedByMinutes;
        if (cause.code == code::weakLightTractors) return code::limitedByMachines;
        if (cause.code == code::weakThickLayer) return code::limitedByThickness;
        if (cause.code == code::weakWetCrop) return code::limitedByWetCrop;
        if (cause.code == code::weakNearSurface) return code::limitedBySurface;
    }
    return code::limitedByNothing;
}

}  // namespace

density::LayerSpan laidBetween(const density::SiloLayers& layers, Instant begin, Instant end) {
    const auto before = [](const density::LayerFacts& facts, Instant at) { return facts.layer->begin < at; };
    const auto& all = layers.layers;
    const auto first = std::lower_bound(all.begin(), all.end(), begin, before);
    const auto last = std::lower_bound(first, all.end(), end, before);
    return {static_cast<std::size_t>(first - all.begin()), static_cast<std::size_t>(last - first)};
}

Instant hourOf(const season::Day& day, Instant at) {
    return day.begin + std::chrono::floor<std::chrono::hours>(at - day.begin);
}

std::vector<HourLaid> hoursOf(const season::Season& season, const density::SiloLayers& layers,
                              const season::Day& day, Instant until) {
    std::vector<density::LayerSpan> spans;
    for (Instant hour = day.begin; hour < day.end && hour <= until; hour += std::chrono::hours{1}) {
        const auto span = laidBetween(layers, hour, hour + std::chrono::hours{1});
        if (span.count > 0) spans.push_back(span);
    }
    std::vector<HourLaid> hours;
    for (density::WeakPlace& laid : placesOf(season, layers, density::Filled::whenFull, spans)) {
        const Code limit = limitOf(laid);
        hours.push_back({hourOf(day, laid.begin), std::move(laid), limit});
    }
    return hours;
}

std::optional<density::Effect> withFurtherTractor(const season::Season& season,
                                                  density::Situation situation) {
    auto* packed = std::get_if<density::PackedMass>(&situation.work);
    if (packed == nullptr || packed->packing.empty()) return std::nullopt;
    const auto before = density::estimate(situation);
    MachineMass heaviest;
    for (const auto& [id, tractor] : season.farm().tractors) heaviest = std::max(heaviest, tractor.mass);
    situation.machines.push_back({heaviest});
    packed->packing.push_back(*std::max_element(packed->packing.begin(), packed->packing.end()));
    const auto after = density::estimate(situation);
    if (!before || !after) return std::nullopt;
    return density::effectOf(before->density.median(), after->density.median());
}

Section limitedOf(const DayView& view) {
    Table table{"limited",
                {{"silo", code::columnSilo},
                 {"hour", code::columnHour},
                 {"mass", code::columnMass},
                 {"median", code::columnMedian},
                 {"low80", code::columnLow},
                 {"high80", code::columnHigh},
                 {"limit", code::columnLimit}},
                {},
                2};
    for (const auto& [silo, readings] : view.readings) {
        if (!readings.layers) continue;
        const std::string name = nameText(view.day.farm().silos, silo);
        for (const HourLaid& hour : hoursOf(view.season, *readings.layers, view.day, view.until)) {
            const density::Distribution& density = hour.laid.density;
            table.rows.push_back({name, hour.hour, hour.laid.mass.amount(), density.median().amount(),
                                  density.low80().amount(), density.high80().amount(),
                                  Message{hour.limit, {}}});
        }
    }
    return {"limited", code::reviewLimited, {orNothing(std::move(table))}};
}

Section furtherOf(const DayView& view) {
    Section section{"further", code::reviewFurther, {}};
    for (const auto& [silo, readings] : view.readings) {
        if (!readings.today.estimate) continue;
        const auto effect = withFurtherTractor(view.season, readings.today.situation);
        if (!effect) continue;
        section.blocks.emplace_back(Message{
            code::furtherWould,
            {nameText(view.day.farm().silos, silo), readings.today.estimate->density.median().amount(),
             effect->change.amount(), effect->low80.amount(), effect->high80.amount()}});
    }
    if (section.blocks.empty()) {
        section.blocks.emplace_back(Message{code::reviewNothing, {}});
    } else {
        section.blocks.emplace_back(Message{code::reviewFurtherHow, {}});
    }
    return section;
}

}  // namespace treadwell::review
