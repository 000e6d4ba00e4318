#include "app/desktop/practice/practice_presenter.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace treadwell::practice_page {

namespace {

struct PracticeText {
    Q_DECLARE_TR_FUNCTIONS(PracticePresenter)
};

QString rounded(double points) {
    return QString::number(std::lround(points));
}

}  // namespace

QString clockText(Seconds time) {
    const auto seconds = static_cast<int>(time.count());
    return QStringLiteral("%1:%2:%3")
        .arg(seconds / 3600)
        .arg(seconds / 60 % 60, 2, 10, QChar{u'0'})
        .arg(seconds % 60, 2, 10, QChar{u'0'});
}

std::vector<LessonRow> lessonRows(std::span<const practice::Lesson> lessons, const practice::Trainee* trainee,
                                  const std::string& language) {
    std::vector<LessonRow> rows;
    for (const practice::Lesson& lesson : lessons) {
        const practice::LessonDone* done = trainee == nullptr ? nullptr : trainee->of(lesson.id);
        rows.push_back({QString::fromStdString(lesson.id),
                        QString::fromStdString(lesson.text(language).title),
                        done == nullptr ? PracticeText::tr("not run yet")
                                        : PracticeText::tr("best %1 of 100, %n run(s)", nullptr, done->runs)
                                              .arg(rounded(done->best))});
    }
    return rows;
}

PadScene sceneOf(const practice::LessonRun& run, const practice::Debrief* debrief, Length cut) {
    PadScene scene{passes::pictureOf(run.pad()), {}, {}, {}, cut, run.lesson().goal.density};
    for (std::size_t i = 0; i < run.places().size(); ++i) {
        if (!run.places()[i]) continue;
        const practice::LessonTractor& tractor = run.lesson().tractors[i];
        scene.machines.push_back({QString::fromStdString(tractor.name), *run.places()[i],
                                  passes::Roller{tractor.mass, tractor.trackWidth, {}}.width(),
                                  i == 0 && run.hand() != nullptr});
    }
    if (run.hand() != nullptr) scene.goal = run.hand()->goal();
    if (debrief == nullptr) return scene;
    for (std::size_t i = 0; i < debrief->findings.size(); ++i) {
        if (debrief->findings[i].place)
            scene.marks.push_back({*debrief->findings[i].place, static_cast<int>(i) + 1});
    }
    return scene;
}

PadCut cutOf(const practice::LessonRun& run, Length at) {
    const passes::Pad& pad = run.pad();
    const auto column = static_cast<std::size_t>(
        std::clamp(at / pad.shape.cellAlong, 0.0, static_cast<double>(pad.along) - 1.0));
    PadCut cut{pad.shape.width, {}, at};
    for (std::size_t row = 0; row < pad.across; ++row)
        cut.columns.push_back(passes::columnAtRest(pad, row, column));
    return cut;
}

RunClock clockOf(const practice::LessonRun& run) {
    const practice::RunFacts& facts = run.facts();
    const auto& loads = run.lesson().deliveries;
    RunClock clock{
        PracticeText::tr("%1 of %2").arg(clockText(facts.elapsed), clockText(run.lesson().duration)), {}};
    if (run.isOver()) {
        clock.next = PracticeText::tr("The lesson is over.");
    } else if (facts.onFoot) {
        clock.next = PracticeText::tr("Somebody is on foot: stand still until nobody is.");
    } else if (facts.loads < loads.size()) {
        clock.next = PracticeText::tr("Load %1 of %2 comes in %3.")
                         .arg(facts.loads + 1)
                         .arg(loads.size())
                         .arg(clockText(std::max(Seconds{0}, loads[facts.loads].at - facts.elapsed)));
    } else {
        clock.next = PracticeText::tr("All loads are in.");
    }
    return clock;
}

ResultView resultOf(const practice::LessonRun& run, const practice::Debrief& debrief,
                    const fill::Speech& speech) {
    const DryDensity wanted = run.lesson().goal.density;
    ResultView view{{}, PracticeText::tr("No crop lies on the pad yet."), {}, {}, {}};
    for (const Message& caution : practice::cautionTexts(run, debrief.cautions))
        view.cautions.push_back({speech.say(caution), true});
    view.cautions.back().caution = false;
    if (run.pad().layers.empty()) return view;
    view.score = PracticeText::tr("%1 of 100").arg(rounded(debrief.score));
    view.density =
        widgets::GaugeDensity{debrief.density, wanted, std::nullopt, debrief.density.chanceOfAtLeast(wanted)};
    for (const practice::Points& points : debrief.points) {
        view.parts.push_back({PracticeText::tr("%1 of %2: %3", "points, most and why")
                                  .arg(rounded(points.points), rounded(points.most), speech.say(points.why)),
                              points.part == practice::ScorePart::cautions && points.points < points.most});
    }
    for (std::size_t i = 0; i < debrief.findings.size(); ++i) {
        const practice::Finding& finding = debrief.findings[i];
        view.wrong.push_back({QStringLiteral("%1  %2").arg(i + 1).arg(speech.say(finding.message)),
                              finding.caution.has_value()});
    }
    if (view.wrong.empty()) view.wrong.push_back({PracticeText::tr("Nothing that this lesson looks for.")});
    return view;
}

}  // namespace treadwell::practice_page
