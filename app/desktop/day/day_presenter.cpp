#include "app/desktop/day/day_presenter.h"

#include "app/desktop/settings/dates.h"
#include "core/review/codes.h"

#include <QCoreApplication>
#include <QDate>
#include <algorithm>

namespace treadwell::day_page {

namespace {

StepKind kindOf(Code question) {
    if (question == code::questionStillAtWork) return StepKind::tractorAway;
    if (question == code::questionStillOnShift) return StepKind::shiftEnd;
    if (question == code::questionHeightsNotRead) return StepKind::heights;
    if (question == code::questionSampleOverdue || question == code::questionDryMatterAssumed)
        return StepKind::dryMatter;
    if (question == code::questionLayerNotSeen) return StepKind::layer;
    if (question == code::questionMassAssumed) return StepKind::tractorMass;
    if (question == code::questionNoCost) return StepKind::tractorCost;
    return question == code::questionRowsSetAside ? StepKind::rows : StepKind::look;
}

struct KeyOf {
    QString operator()(std::monostate /*nothing*/) const { return {}; }
    template <class IdType>
    QString operator()(const IdType& id) const {
        return QString::fromStdString(id.value.text());
    }
};

QString nameOf(const desk::People& people, entries::PersonId person) {
    const auto named = people.find(person);
    return named == people.end() ? QString{} : QString::fromStdString(named->second);
}

std::vector<AsideRow> rowsOf(const season::Day& day, Instant until) {
    std::vector<AsideRow> rows;
    for (const auto& row : day.records.of<entries::RowSetAside>()) {
        if (row.at > until) continue;
        rows.push_back({row.entry, QCoreApplication::translate("DayPresenter", "%1, line %2: %3")
                                       .arg(QString::fromStdString(row.what.file))
                                       .arg(row.what.line)
                                       .arg(QString::fromStdString(row.what.reason))});
    }
    return rows;
}

}  // namespace

std::vector<DayChoice> daysOf(const season::Season& season, const QLocale& locale) {
    std::vector<DayChoice> choices;
    for (const auto& day : season.days()) {
        const QString date = settings::dayText(day->date, locale);
        choices.push_back(
            {day->date,
             day->closed ? QCoreApplication::translate("DayPresenter", "%1, closed").arg(date) : date});
    }
    std::ranges::reverse(choices);
    return choices;
}

std::vector<Step> stepsOf(const season::Season& season, const review::Closing& closing,
                          const desk::People& people, const fill::Speech& speech) {
    const season::Day* day = season.day(closing.entry.day);
    std::vector<Step> steps;
    for (const review::OpenPoint& point : closing.missing) {
        const std::string_view code = toText(point.question.code);
        Step step{QString::fromUtf8(code.data(), static_cast<qsizetype>(code.size())) + u' ' +
                      std::visit(KeyOf{}, point.subject),
                  speech.say(point.question), kindOf(point.question.code), point.subject};
        if (const auto* person = std::get_if<entries::PersonId>(&point.subject)) {
            if (const QString name = nameOf(people, *person); !name.isEmpty())
                step.question =
                    QCoreApplication::translate("DayPresenter", "%1: %2").arg(name, step.question);
        }
        if (step.kind == StepKind::rows && day != nullptr) step.rows = rowsOf(*day, closing.happened);
        steps.push_back(std::move(step));
    }
    return steps;
}

session::Proposal tractorAway(farm::TractorId tractor, Instant at) {
    entries::TractorWork away;
    away.tractor = tractor;
    away.activity = farm::Activity::away;
    return {away, at, {}};
}

session::Proposal shiftEnded(const season::Day& day, entries::PersonId person, Instant at) {
    entries::Shift end{person, false, entries::Duty::other, false, {}};
    for (const season::ShiftSpan& shift : day.shifts) {
        if (shift.person != person) continue;
        end.duty = shift.duty;
        end.tractor = shift.tractor;
    }
    return {end, at, {}};
}

}  // namespace treadwell::day_page
