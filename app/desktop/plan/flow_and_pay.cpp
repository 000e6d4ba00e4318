// What the chain brings and what it costs, in sentences.
#include "app/desktop/plan/plan_presenter.h"
#include "core/plan/codes.h"

#include <QCoreApplication>

namespace treadwell::plan_page {

namespace {

struct PayText {
    Q_DECLARE_TR_FUNCTIONS(PlanPresenter)
};

constexpr double kFewestPasses = 3.0;  // over each layer (published)

QString percentBand(const plan::Band& band, const settings::DisplayUnits& units) {
    const plan::Band percent{band.low80 * 100.0, band.median * 100.0, band.high80 * 100.0};
    return bandText(percent, 0, units) + QChar::Nbsp + u'%';
}

void addTrucks(const plan::FieldFlow& flow, int trucks, const settings::DisplayUnits& units, Lines& lines) {
    const QString name = QString::fromStdString(flow.field);
    if (flow.trucksWanted) {
        lines.push_back(
            {PayText::tr("%1: %n truck(s) keep the harvester busy there; with fixed times it would be %2.",
                         "", *flow.trucksWanted)
                 .arg(name, QString::number(flow.chain.trucksToKeepUp)),
             *flow.trucksWanted > trucks});
    } else {
        lines.push_back(
            {PayText::tr("%1: no number of trucks keeps the harvester busy there.").arg(name), true});
    }
    if (!flow.oneFewer) return;
    lines.push_back(
        {PayText::tr("%1: if one truck breaks, %2 loads an hour come, and the harvester waits %3.")
             .arg(name, bandText(flow.oneFewer->loadsPerHour, 1, units),
                  percentBand(flow.oneFewer->harvesterWaiting, units))});
}

void addPacking(const Answers& answers, const plan::FieldFlow& flow, const fill::Speech& speech,
                Lines& lines) {
    const settings::DisplayUnits& units = speech.units();
    const density::Distribution& density = flow.estimate.density;
    const QString name = QString::fromStdString(flow.field);
    if (flow.days.daysWithoutLoad < answers.inputs.days) {
        const auto minutes = [&](double value) {
            return PackingIntensity::fromMinutesPerTonne(value).amount();
        };
        lines.push_back({PayText::tr("%1: the tractors pack %2 (%3) and pass %4 times over each layer.")
                             .arg(name, units.text(minutes(flow.days.minutesPerTonne.median)),
                                  units.rangeText(minutes(flow.days.minutesPerTonne.low80),
                                                  minutes(flow.days.minutesPerTonne.high80)),
                                  bandText(flow.days.passes, 1, units)),
                         flow.days.passes.median < kFewestPasses});
    }
    lines.push_back(
        {PayText::tr("%1: density %2; the chance of the %3 target is %4.")
             .arg(name, densityText(density.median(), density.low80(), density.high80(), units),
                  units.text(flow.estimate.target.density), units.chanceText(flow.estimate.chance)),
         flow.estimate.chance < answers.inputs.wantedChance});
    if (flow.chain.slowest == plan::Link::packing) {
        lines.push_back({speech.say(Message{code::planPackingSlowest,
                                            {flow.field, flow.chain.delivery.amount(),
                                             answers.flow->packing.rate.amount()}}),
                         true});
    }
}

QString fleetText(const plan::Inputs& inputs, const plan::Fleet& fleet) {
    QStringList names;
    for (const std::size_t tractor : fleet.tractors)
        names << QString::fromStdString(inputs.tractors[tractor].name);
    return PayText::tr("%1 and %n truck(s)", "tractors", fleet.trucks).arg(names.join(QStringLiteral(", ")));
}

QString moneyLine(const QString& pattern, const plan::Inputs& inputs, const plan::FleetMoney& money,
                  const settings::DisplayUnits& units) {
    const density::Distribution& density = money.estimate.density;
    return pattern.arg(fleetText(inputs, money.fleet), units.text(money.fleet.hour),
                       units.text(money.fleet.loss),
                       densityText(density.median(), density.low80(), density.high80(), units),
                       moneyText(money.fleet.margin_per_t_dm, units));
}

}  // namespace

Lines flowLines(const Answers& answers, const fill::Speech& speech) {
    const settings::DisplayUnits& units = speech.units();
    Lines lines;
    for (const plan::FieldFlow& flow : answers.flow->fields) {
        const QString name = QString::fromStdString(flow.field);
        lines.push_back(
            {PayText::tr("%1: %2 loads an hour; the harvester waits %3 of the day, a truck %4 min a load; "
                         "%5 days of harvest.",
                         "field, band, band, band, days")
                 .arg(name, bandText(flow.days.loadsPerHour, 1, units),
                      percentBand(flow.days.harvesterWaiting, units),
                      bandText(flow.days.truckWaiting_min, 1, units),
                      units.locale().toString(flow.harvestDays, 'f', 1))});
        addTrucks(flow, answers.inputs.haulage.trucks, units, lines);
        addPacking(answers, flow, speech, lines);
    }
    return lines;
}

Lines payLines(const Answers& answers, const fill::Speech& speech) {
    const settings::DisplayUnits& units = speech.units();
    const plan::Pay& pay = *answers.pay;
    Lines lines;
    lines.push_back(
        {moneyLine(
             PayText::tr("Planned: %1. The hour costs %2; expected loss %3 at %4; %5 are left of a tonne of "
                         "dry matter."),
             answers.inputs, pay.planned, units),
         pay.planned.fleet.margin_per_t_dm < 0.0});
    if (pay.best.fleet.tractors == pay.planned.fleet.tractors &&
        pay.best.fleet.trucks == pay.planned.fleet.trucks) {
        lines.push_back(
            {PayText::tr("No other of %n fleet(s) leaves more.", "", static_cast<int>(pay.compared))});
    } else {
        lines.push_back(
            {moneyLine(PayText::tr("The best of those compared: %1. The hour costs %2; expected loss %3 at "
                                   "%4; %5 are left."),
                       answers.inputs, pay.best, units)});
    }
    for (const plan::OneMore& more : pay.oneMore) {
        const QString name = QString::fromStdString(more.tractor);
        QString text =
            PayText::tr("%1 costs %2, which is %3 of the crop's dry matter or %4 of density; it brings %5.")
                .arg(name, units.text(more.hour), units.text(more.breakEven.loss),
                     units.text(more.breakEven.density), units.text(more.gain));
        text += u' ' + (more.paysFrom ? PayText::tr("It pays from %1 on.").arg(units.text(*more.paysFrom))
                                      : PayText::tr("It does not pay at any delivery."));
        lines.push_back({text});
    }
    lines.push_back({speech.say(Message{code::planLossHeld, {}})});
    return lines;
}

}  // namespace treadwell::plan_page
