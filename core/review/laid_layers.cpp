#include "core/density/readings.h"
#include "core/packing/layers.h"
#include "core/review/codes.h"
#include "core/review/day_view.h"

#include <algorithm>

namespace treadwell::review {

namespace {

using density::LayerSpan;

/// As many layers have a row each; more are put together by the hour.
constexpr std::size_t kMostRows = 12;
constexpr std::size_t kLoosest = 3;

Table tableNamed(std::string_view key) {
    return {key,
            {{"silo", code::columnSilo},
             {"layer", code::columnLayer},
             {"begin", code::columnBegin},
             {"end", code::columnEnd},
             {"mass", code::columnMass},
             {"thickness", code::columnThickness},
             {"packing", code::columnPackingTime},
             {"passes", code::columnPasses},
             {"median", code::columnMedian},
             {"low80", code::columnLow},
             {"high80", code::columnHigh},
             {"porosity", code::columnPorosity}},
            {},
            3};
}

/// The layers of one silo and the day's among them, whole layers.
struct Laid {
    const season::Season& season;
    const density::SiloLayers& layers;
    std::string silo;

    [[nodiscard]] const packing::Layer& at(std::size_t k) const { return *layers.layers[k].layer; }

    [[nodiscard]] density::SiloReading reading(LayerSpan span) const {
        return readingOf(season, layers, span, kindOf(span));
    }

    [[nodiscard]] std::vector<Cell> row(LayerSpan span) const {
        AsFedMass mass;
        Seconds packing{0};
        double passes = 0.0;
        Length thickness;
        for (std::size_t k = span.first; k < span.first + span.count; ++k) {
            mass += at(k).mass;
            packing += at(k).packingTime();
            passes += packing::passesOn(at(k), season.farm()) * at(k).mass.kilograms();
            thickness += at(k).thickness * at(k).mass.kilograms();
        }
        const std::size_t last = span.first + span.count - 1;
        Cell number = at(last).number;
        if (span.count > 1)
            number = Message{code::reviewLayerRange, {at(span.first).number, at(last).number}};
        std::vector<Cell> row{silo,
                              std::move(number),
                              at(span.first).begin,
                              at(last).end,
                              mass.amount(),
                              (thickness / mass.kilograms()).layerAmount(),
                              (packing / mass).amount(),
                              passes / mass.kilograms()};
        const auto reading = this->reading(span);
        if (!reading.estimate) {
            row.resize(tableNamed("").columns.size());
            return row;
        }
        const density::Estimate& estimate = *reading.estimate;
        for (const Amount amount :
             {estimate.density.median().amount(), estimate.density.low80().amount(),
              estimate.density.high80().amount(), estimate.porosity.median().amount()}) {
            row.emplace_back(amount);
        }
        return row;
    }

    /// Put together by the local hour in which they were begun.
    [[nodiscard]] std::vector<LayerSpan> byHour(LayerSpan day) const {
        std::vector<LayerSpan> hours;
        std::optional<std::int64_t> hour;
        for (std::size_t k = day.first; k < day.first + day.count; ++k) {
            const Instant begin = at(k).begin;
            const Instant midnight = season.zone().startOf(season.zone().dayOf(begin));
            const auto own = std::chrono::floor<std::chrono::hours>(begin - midnight).count();
            if (hour != own) hours.push_back({k, 0, Instant::min()});
            hour = own;
            ++hours.back().count;
        }
        return hours;
    }

    [[nodiscard]] std::vector<LayerSpan> loosest(LayerSpan day) const {
        std::vector<std::pair<double, std::size_t>> byDensity;
        for (std::size_t k = day.first; k < day.first + day.count; ++k) {
            byDensity.emplace_back(layers.whenFull.layers[k].density.si(), k);
        }
        std::partial_sort(byDensity.begin(), byDensity.begin() + kLoosest, byDensity.end());
        std::vector<LayerSpan> spans;
        for (std::size_t i = 0; i < kLoosest; ++i) spans.push_back({byDensity[i].second, 1, Instant::min()});
        return spans;
    }
};

struct Tables {
    Table byLayer = tableNamed("byLayer");
    Table byHour = tableNamed("byHour");
    Table loosest = tableNamed("loosest");
};

void addSilo(Tables& tables, const Laid& laid, LayerSpan day) {
    if (day.count <= kMostRows) {
        for (std::size_t k = day.first; k < day.first + day.count; ++k)
            tables.byLayer.rows.push_back(laid.row({k, 1, Instant::min()}));
        return;
    }
    for (const LayerSpan hour : laid.byHour(day)) tables.byHour.rows.push_back(laid.row(hour));
    for (const LayerSpan span : laid.loosest(day)) tables.loosest.rows.push_back(laid.row(span));
}

}  // namespace

Section laidLayersOf(const DayView& view) {
    Section section{"laidLayers", code::reviewLaidLayers, {}};
    Tables tables;
    for (const auto& [silo, readings] : view.readings) {
        if (!readings.layers) continue;  // the section on density says why
        LayerSpan day = density::layersSince(*readings.layers, view.day.begin);
        day.from = Instant::min();
        addSilo(tables, {view.season, *readings.layers, nameText(view.day.farm().silos, silo)}, day);
    }
    const auto add = [&](Table& table) {
        if (!table.rows.empty()) section.blocks.emplace_back(std::move(table));
    };
    add(tables.byLayer);
    add(tables.byHour);
    if (!tables.loosest.rows.empty()) section.blocks.emplace_back(Message{code::reviewLoosestLayers, {}});
    add(tables.loosest);
    if (section.blocks.empty()) section.blocks.emplace_back(Message{code::reviewNothing, {}});
    return section;
}

}  // namespace treadwell::review
