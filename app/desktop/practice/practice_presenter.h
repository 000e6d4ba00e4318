#pragma once

#include "app/desktop/fill/say.h"
#include "app/desktop/samples/samples_presenter.h"
#include "app/desktop/widgets/density_gauge.h"
#include "core/passes/rest.h"
#include "core/practice/debrief.h"
#include "core/practice/progress.h"

#include <span>

namespace treadwell::practice_page {

// From a lesson's run to what the page shows. All are pure.

using samples_page::Line;
using samples_page::Lines;

struct LessonRow {
    QString id;
    QString title;
    QString done;  ///< the best run, or that there is none
};

/// `trainee` null: nobody is chosen.
[[nodiscard]] std::vector<LessonRow> lessonRows(std::span<const practice::Lesson> lessons,
                                                const practice::Trainee* trainee,
                                                const std::string& language);

/// A tractor on the pad.
struct PadMachine {
    QString name;
    passes::GroundPoint place;
    Length width;  ///< over its tyres
    bool byHand;
};

/// A place that the debrief speaks of, by its number there.
struct PadMark {
    passes::Patch place;
    int number;
};

/// The pad in plan.
struct PadScene {
    passes::PadPicture picture;
    std::vector<PadMachine> machines;
    std::optional<passes::GroundPoint> goal;  ///< to which the hand drives
    std::vector<PadMark> marks;
    Length across;  ///< where it is cut
    DryDensity wanted;
};

/// The pad cut across its width.
struct PadCut {
    Length width;
    std::vector<std::vector<passes::CellAtRest>> columns;  ///< from the left wall, bottom up
    Length at;                                             ///< from the back wall
};

[[nodiscard]] PadScene sceneOf(const practice::LessonRun& run, const practice::Debrief* debrief, Length cut);
[[nodiscard]] PadCut cutOf(const practice::LessonRun& run, Length at);

/// The lesson's clock and what comes next.
struct RunClock {
    QString time;
    QString next;
};
[[nodiscard]] RunClock clockOf(const practice::LessonRun& run);

struct ResultView {
    QString score;  ///< empty until there is something to judge
    widgets::GaugeView density;
    Lines parts;     ///< what counts, and for how much
    Lines wrong;     ///< numbered as the marks on the pad
    Lines cautions;  ///< that belong to it
};
[[nodiscard]] ResultView resultOf(const practice::LessonRun& run, const practice::Debrief& debrief,
                                  const fill::Speech& speech);

/// `1:05:30`
[[nodiscard]] QString clockText(Seconds time);

}  // namespace treadwell::practice_page
