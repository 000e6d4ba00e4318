#include "core/review/closing.h"

#include "core/review/codes.h"
#include "core/review/day_view.h"

#include <algorithm>

namespace treadwell::review {

Result<Closing> closingOf(const season::Season& season, LocalDay date, Instant now) {
    const season::Day* day = season.day(date);
    if (day == nullptr) return fail(code::dayUnknown, "day", toIso8601(date));
    if (day->closed) return fail(code::dayIsClosed, "day", toIso8601(date), day->closed->at);
    if (now < day->begin) return fail(code::dayNotBegun, "day", toIso8601(date));
    const Instant happened = std::min(now, day->end - std::chrono::microseconds{1});
    Closing closing{{}, {date, day->begin, day->end}, happened};
    const DayView view{.season = season, .day = *day, .until = happened};
    closing.missing = questionsBeforeClosing(view);
    return closing;
}

}  // namespace treadwell::review
