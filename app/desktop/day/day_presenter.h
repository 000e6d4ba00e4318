#pragma once

#include "app/desktop/desk/season_file.h"
#include "app/desktop/fill/say.h"
#include "core/review/closing.h"

#include <vector>

namespace treadwell::day_page {

// From a season at a moment to what the page shows. All are pure.

struct DayChoice {
    LocalDay day;
    QString text;
};
/// Newest first, each with whether it is closed; days on which nothing was recorded are left out.
[[nodiscard]] std::vector<DayChoice> daysOf(const season::Season& season, const QLocale& locale);

/// By what a point that a day leaves open is answered.
enum class StepKind : std::uint8_t {
    look,         ///< by nothing on this page: it is left open with the day
    tractorAway,  ///< when the tractor stopped
    shiftEnd,     ///< when the shift ended
    heights,
    dryMatter,
    layer,
    tractorMass,
    tractorCost,
    rows,  ///< which of the rows set aside are nothing
};

/// A row of a file that could not be read.
struct AsideRow {
    entries::EntryId entry;
    QString text;
};

/// One point of the closing walk.
struct Step {
    QString key;  ///< the same for the same point of the same thing
    QString question;
    StepKind kind = StepKind::look;
    review::Subject subject = {};
    std::vector<AsideRow> rows = {};
};
[[nodiscard]] std::vector<Step> stepsOf(const season::Season& season, const review::Closing& closing,
                                        const desk::People& people, const fill::Speech& speech);

/// What answers a step, as entries of the day that is closed.
[[nodiscard]] session::Proposal tractorAway(farm::TractorId tractor, Instant at);
[[nodiscard]] session::Proposal shiftEnded(const season::Day& day, entries::PersonId person, Instant at);

}  // namespace treadwell::day_page
