#include "core/review/day_sheet.h"

#include "core/base/hex.h"
#include "core/review/codes.h"
#include "core/review/day_view.h"

#include <algorithm>

namespace treadwell::review {

namespace {

Section headOf(const DayView& view) {
    Section head{"state", code::reviewState, {}};
    if (view.day.closed) {
        head.blocks.emplace_back(Message{code::reviewClosed, {view.day.closed->at}});
    } else {
        head.blocks.emplace_back(Message{code::reviewNotClosed, {view.until}});
    }
    if (view.day.closed && view.origin.closedBy) {
        head.blocks.emplace_back(Message{code::reviewClosedBy, {*view.origin.closedBy}});
    }
    if (view.origin.head) {
        head.blocks.emplace_back(Message{code::reviewHead, {toHex(*view.origin.head)}});
    }
    return head;
}

}  // namespace

Block orNothing(Table table) {
    if (table.rows.empty()) return Message{code::reviewNothing, {}};
    return table;
}

Result<Document> daySheet(const season::Season& season, LocalDay date, Instant now,
                          const SheetOrigin& origin) {
    const season::Day* day = season.day(date);
    if (day == nullptr) return fail(code::dayUnknown, "day", toIso8601(date));
    // The last instant of the day: midnight itself is the next day's.
    const Instant until = std::clamp(now, day->begin, day->end - std::chrono::microseconds{1});
    DayView view{.season = season, .day = *day, .until = until, .origin = origin};
    for (const season::LoadTipped& load : day->loads) {
        const farm::SiloId silo = load.load.silo;
        if (load.at <= until && !view.readings.contains(silo))
            view.readings.emplace(silo, density::readingsAt(season, silo, until));
    }
    Document sheet{"daySheet", {code::reviewDaySheet, {day->farm().farm, toIso8601(date)}}, {}};
    for (const auto section :
         {headOf,       summaryOf, deliveriesOf, dryMatterOf,  chopOf,      tractorsOf,    densityOf,
          laidLayersOf, limitedOf, furtherOf,    weakPlacesOf, dayBeforeOf, againstPlanOf, adviceOf,
          pausesOf,     layersOf,  heightsOf,    additivesOf,  coverOf,     weatherOf,     incidentsOf,
          feedingOf,    shiftsOf,  handOverOf,   notesOf,      cautionsOf,  questionsOf}) {
        sheet.sections.push_back(section(view));
    }
    return sheet;
}

}  // namespace treadwell::review
