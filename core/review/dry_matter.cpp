#include "core/season/dry_matter.h"

#include "core/review/codes.h"
#include "core/review/day_view.h"

#include <algorithm>
#include <optional>
#include <set>

namespace treadwell::review {

namespace {

Code wordOf(entries::DryMatterMethod method) {
    switch (method) {
        case entries::DryMatterMethod::oven:
            return code::methodOven;
        case entries::DryMatterMethod::microwave:
            return code::methodMicrowave;
        case entries::DryMatterMethod::meter:
            return code::methodMeter;
        case entries::DryMatterMethod::estimate:
            break;
    }
    return code::methodEstimate;
}

/// The mean by mass over the loads, and the samples on which they stand.
void addMean(const DayView& view, Section& section) {
    std::vector<const season::LoadTipped*> loads;
    std::set<entries::EntryId> samples;
    for (const season::LoadTipped& load : view.day.loads) {
        if (load.at > view.until) continue;
        loads.push_back(&load);
        if (load.sample) samples.insert(*load.sample);
    }
    const auto mean = season::meanDryMatter(loads);
    if (!mean) return;
    section.blocks.emplace_back(
        Message{code::reviewMeanDryMatter,
                {mean->mean.amount(), mean->half80().amount(), static_cast<std::int64_t>(samples.size())}});
}

}  // namespace

Section dryMatterOf(const DayView& view) {
    Table table{"samples",
                {{"at", code::columnTime},
                 {"field", code::columnField},
                 {"dryMatter", code::columnDryMatter},
                 {"method", code::columnMethod}},
                {}};
    for (const season::Sample& sample : view.day.samples) {
        if (sample.at > view.until) continue;
        table.rows.push_back({sample.at, nameIn(view.day.farm().fields, sample.reading.field),
                              sample.reading.dryMatter.amount(), Message{wordOf(sample.reading.method), {}}});
    }
    std::optional<DryMatter> lowest, highest;
    for (const season::Sample& sample : view.day.samples) {
        if (sample.at > view.until) continue;
        lowest = std::min(lowest.value_or(sample.reading.dryMatter), sample.reading.dryMatter);
        highest = std::max(highest.value_or(sample.reading.dryMatter), sample.reading.dryMatter);
    }
    Section section{"dryMatter", code::reviewDryMatter, {orNothing(std::move(table))}};
    if (lowest && *lowest < *highest) {
        section.blocks.emplace_back(Message{code::reviewSampleSpread, {lowest->amount(), highest->amount()}});
    }
    addMean(view, section);
    return section;
}

}  // namespace treadwell::review
