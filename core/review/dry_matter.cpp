#include "core/review/day_view.h"

#include <set>

namespace treadwell::review {

namespace {

Code wordOf(entries::DryMatterMethod method) {
    switch (method) {
        case entries::DryMatterMethod::oven:
            return Code::methodOven;
        case entries::DryMatterMethod::microwave:
            return Code::methodMicrowave;
        case entries::DryMatterMethod::meter:
            return Code::methodMeter;
        case entries::DryMatterMethod::estimate:
            break;
    }
    return Code::methodEstimate;
}

/// The mean by mass over the loads, and the samples on which they stand.
void addMean(const DayView& view, Section& section) {
    season::Delivered delivered;
    std::set<entries::EntryId> samples;
    for (const season::LoadTipped& load : view.day.loads) {
        if (load.at > view.until) continue;
        delivered.add(load);
        if (load.sample) samples.insert(*load.sample);
    }
    const auto mean = delivered.dryMatter();
    if (!mean) return;
    section.blocks.emplace_back(
        Message{Code::reviewMeanDryMatter, {mean->amount(), static_cast<std::int64_t>(samples.size())}});
}

}  // namespace

Section dryMatterOf(const DayView& view) {
    Table table{"samples",
                {{"at", Code::columnTime},
                 {"field", Code::columnField},
                 {"dryMatter", Code::columnDryMatter},
                 {"method", Code::columnMethod}},
                {}};
    for (const season::Sample& sample : view.day.samples) {
        if (sample.at > view.until) continue;
        table.rows.push_back({sample.at, nameIn(view.day.farm().fields, sample.reading.field),
                              sample.reading.dryMatter.amount(), Message{wordOf(sample.reading.method), {}}});
    }
    Section section{"dryMatter", Code::reviewDryMatter, {orNothing(std::move(table))}};
    addMean(view, section);
    return section;
}

}  // namespace treadwell::review
