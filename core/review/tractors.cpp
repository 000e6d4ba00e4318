#include "core/review/codes.h"
#include "core/review/day_view.h"

namespace treadwell::review {

namespace {

constexpr Seconds kHour = std::chrono::hours{1};

/// Of the time at work; none without any.
Cell packingShare(const Worked& worked) {
    if (!(worked.all() > Seconds{})) return {};
    return Share::fromFraction(worked.packing / worked.all()).amount();
}

}  // namespace

std::map<farm::TractorId, Worked> workedIn(const DayView& view) {
    std::map<farm::TractorId, Worked> worked;
    for (const season::WorkSpan& span : view.day.work) {
        if (span.activity == farm::Activity::away || span.begin > view.until) continue;
        const Seconds time = view.day.endOf(span.begin, span.end, view.until) - span.begin;
        worked[span.tractor].packing += time * span.packing.fraction();
        worked[span.tractor].spreading += time * (1.0 - span.packing.fraction());
    }
    return worked;
}

Section tractorsOf(const DayView& view) {
    Table table{"tractors",
                {{"tractor", code::columnTractor},
                 {"mass", code::columnMachineMass},
                 {"packingHours", code::columnPackingHours},
                 {"spreadingHours", code::columnSpreadingHours},
                 {"packingShare", code::columnShareOfTime},
                 {"cost", code::columnCost}},
                {}};
    Worked all;
    double cost = 0.0;
    bool costKnown = true;
    for (const auto& [id, worked] : workedIn(view)) {
        all.packing += worked.packing;
        all.spreading += worked.spreading;
        std::vector<Cell>& row = table.rows.emplace_back();
        const auto& tractors = view.day.farm().tractors;
        const auto found = tractors.find(id);
        const bool known = found != tractors.end();
        row.emplace_back(known ? Cell{found->second.name} : Cell{Message{code::reviewNotNamed, {}}});
        row.emplace_back(known ? Cell{found->second.mass.amount()} : Cell{});
        row.emplace_back(worked.packing / kHour);
        row.emplace_back(worked.spreading / kHour);
        row.push_back(packingShare(worked));
        if (known && found->second.hourlyCost) {
            const double money = found->second.hourlyCost->perHour() * (worked.all() / kHour);
            cost += money;
            row.emplace_back(money);
        } else {
            costKnown = false;
            row.emplace_back();
        }
    }
    if (table.rows.size() > 1) {
        table.rows.push_back({Message{code::reviewTotal, {}}, Cell{}, all.packing / kHour,
                              all.spreading / kHour, packingShare(all), costKnown ? Cell{cost} : Cell{}});
    }
    return {"tractors", code::reviewTractors, {orNothing(std::move(table))}};
}

}  // namespace treadwell::review
