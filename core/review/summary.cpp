// The day in a few sentences, short enough to send.
#include "core/base/farm_zone.h"
#include "core/review/codes.h"
#include "core/review/day_view.h"

namespace treadwell::review {

namespace {

void addLoads(const DayView& view, Section& section) {
    season::Delivered all;
    for (const season::LoadTipped& load : view.day.loads) {
        if (load.at <= view.until) all.add(load);
    }
    const auto dryMatter = all.dryMatter();
    if (!dryMatter) {
        section.blocks.emplace_back(Message{code::reviewNoLoads, {}});
        return;
    }
    section.blocks.emplace_back(
        Message{code::reviewCameIn, {all.loads, all.mass.amount(), all.dry.amount(), dryMatter->amount()}});
    Seconds packing{};
    for (const auto& [tractor, worked] : workedIn(view)) packing += worked.packing;
    section.blocks.emplace_back(
        Message{code::reviewPackedInShort, {durationAmount(packing), (packing / all.mass).amount()}});
}

void addSilos(const DayView& view, Section& section) {
    for (const auto& [silo, readings] : view.readings) {
        const std::string name = nameText(view.day.farm().silos, silo);
        if (!readings.today.estimate) {
            section.blocks.emplace_back(Message{code::reviewOfSilo, {name}});
            section.blocks.emplace_back(Message{code::reviewNoEstimate, {code::readingToday}});
            continue;
        }
        const density::Estimate& estimate = *readings.today.estimate;
        section.blocks.emplace_back(
            Message{code::reviewSiloInShort,
                    {name, estimate.density.median().amount(), estimate.density.low80().amount(),
                     estimate.density.high80().amount(), estimate.target.density.amount(),
                     estimate.chance.amount()}});
    }
    for (const WeakPlaceOfDay& weak : weakPlacesOn(view)) {
        if (!weak.isWeakest) continue;
        const FarmZone& zone = view.season.zone();
        section.blocks.emplace_back(
            Message{code::reviewWeakInShort,
                    {weak.silo, clockText(zone, weak.place.begin), clockText(zone, weak.place.end),
                     weak.place.density.median().amount()}});
    }
}

}  // namespace

Section summaryOf(const DayView& view) {
    Section section{kSummary, code::reviewSummary, {}};
    addLoads(view, section);
    addSilos(view, section);
    if (const auto open = openQuestions(view); open > 0) {
        section.blocks.emplace_back(Message{code::reviewOpenInShort, {open}});
    }
    return section;
}

}  // namespace treadwell::review
