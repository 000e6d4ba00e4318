#include "core/review/codes.h"
#include "core/review/day_view.h"

#include <optional>

namespace treadwell::review {

namespace {

constexpr std::chrono::hours kBeside{1};  ///< before and after an advice

Code wordOf(entries::AdviceDecision decision) {
    switch (decision) {
        case entries::AdviceDecision::shown:
            return code::adviceWasShown;
        case entries::AdviceDecision::accepted:
            return code::adviceWasAccepted;
        case entries::AdviceDecision::declined:
            break;
    }
    return code::adviceWasDeclined;
}

/// What was laid in a stretch of time, as it is read now.
struct LaidThen {
    std::optional<Amount> packing;
    std::optional<Amount> density;
};

/// Layers whose first crop came in [from, to).
LaidThen laidIn(const DayView& view, farm::SiloId silo, Instant from, Instant to) {
    const auto found = view.readings.find(silo);
    if (found == view.readings.end() || !found->second.layers) return {};
    const density::SiloLayers& layers = *found->second.layers;
    density::LayerSpan span;
    Seconds packing{};
    AsFedMass mass;
    for (std::size_t k = 0; k < layers.layers.size(); ++k) {
        const packing::Layer& layer = *layers.layers[k].layer;
        if (layer.begin < from || layer.begin >= to) continue;
        if (span.count == 0) span.first = k;
        ++span.count;
        packing += layer.packingTime();
        mass += layer.mass;
    }
    if (span.count == 0) return {};
    const auto reading = readingOf(view.season, layers, span, kindOf(span));
    LaidThen laid{(packing / mass).amount(), {}};
    if (reading.estimate) laid.density = reading.estimate->density.median().amount();
    return laid;
}

void append(std::vector<Cell>& row, const std::optional<Amount>& amount) {
    if (amount) {
        row.emplace_back(*amount);
    } else {
        row.emplace_back();
    }
}

/// What came of it, as far as layers tell: none where nothing was laid beside it.
Table followedTable(const DayView& view) {
    Table table{"followed",
                {{"at", code::columnTime},
                 {"advice", code::columnAdvice},
                 {"decision", code::columnDecision},
                 {"packingBefore", code::columnPackingBefore},
                 {"packingAfter", code::columnPackingAfter},
                 {"laidBefore", code::columnLaidBefore},
                 {"laidAfter", code::columnLaidAfter}},
                {},
                2};
    for (const auto& note : view.day.records.of<entries::AdviceDecided>()) {
        const entries::AdviceDecided& what = note.what;
        if (note.at > view.until || what.decision == entries::AdviceDecision::shown) continue;
        const LaidThen before = laidIn(view, what.silo, note.at - kBeside, note.at);
        const LaidThen after = laidIn(view, what.silo, note.at, note.at + kBeside);
        std::vector<Cell> row{note.at, what.advice, Message{wordOf(what.decision), {}}};
        for (const auto& amount : {before.packing, after.packing, before.density, after.density})
            append(row, amount);
        table.rows.push_back(std::move(row));
    }
    return table;
}

}  // namespace

Section adviceOf(const DayView& view) {
    Table table{"advice",
                {{"at", code::columnTime},
                 {"silo", code::columnSilo},
                 {"advice", code::columnAdvice},
                 {"decision", code::columnDecision},
                 {"before", code::columnBefore},
                 {"after", code::columnAfter},
                 {"chanceBefore", code::columnChanceBefore},
                 {"chanceAfter", code::columnChanceAfter}},
                {},
                3};
    for (const auto& note : view.day.records.of<entries::AdviceDecided>()) {
        if (note.at > view.until) continue;
        const entries::AdviceDecided& what = note.what;
        table.rows.push_back({note.at, nameIn(view.day.farm().silos, std::optional{what.silo}), what.advice,
                              Message{wordOf(what.decision), {}}, what.before.amount(), what.after.amount(),
                              what.chanceBefore.amount(), what.chanceAfter.amount()});
    }
    Section section{"advice", code::reviewAdvice, {orNothing(std::move(table))}};
    Table followed = followedTable(view);
    if (!followed.rows.empty()) {
        section.blocks.emplace_back(Message{code::reviewFollowed, {}});
        section.blocks.emplace_back(std::move(followed));
    }
    return section;
}

}  // namespace treadwell::review
