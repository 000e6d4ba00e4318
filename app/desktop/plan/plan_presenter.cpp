#include "app/desktop/plan/plan_presenter.h"

#include "app/desktop/settings/dates.h"
#include "core/attention/shape_cautions.h"
#include "core/plan/codes.h"

#include <QCoreApplication>
#include <algorithm>

namespace treadwell::plan_page {

namespace {

struct PlanText {
    Q_DECLARE_TR_FUNCTIONS(PlanPresenter)
};

template <class T>
Lines linesOr(const Result<T>& result, const Answers& answers, const fill::Speech& speech,
              Lines (*linesOf)(const Answers&, const fill::Speech&)) {
    if (result) return linesOf(answers, speech);
    return {{speech.say(result.error()), true}};
}

Headline fitHeadline(const Answers& answers, const settings::DisplayUnits& units) {
    Headline headline{questionName(Question::fits), PlanText::tr("not reckoned"), true};
    if (!answers.fit) return headline;
    headline.answer = PlanText::tr("%1 chance of room").arg(units.chanceText(answers.fit->fits));
    headline.caution = answers.fit->fits < Chance::fromPercent(50);
    return headline;
}

Headline flowHeadline(const Answers& answers) {
    Headline headline{questionName(Question::flows), PlanText::tr("not reckoned"), true};
    if (!answers.flow) return headline;
    const auto& fields = answers.flow->fields;
    const plan::Link first = fields.front().chain.slowest;
    const bool same =
        std::ranges::all_of(fields, [&](const auto& each) { return each.chain.slowest == first; });
    headline.answer =
        same ? PlanText::tr("slowest: %1").arg(linkName(first)) : PlanText::tr("differs by field");
    headline.caution = std::ranges::any_of(
        fields, [](const auto& each) { return each.chain.slowest == plan::Link::packing; });
    return headline;
}

Headline payHeadline(const Answers& answers, const settings::DisplayUnits& units) {
    Headline headline{questionName(Question::pays), PlanText::tr("not reckoned"), true};
    if (!answers.pay) return headline;
    const double margin = answers.pay->planned.fleet.margin_per_t_dm;
    headline.answer = PlanText::tr("%1 a t DM left").arg(moneyText(margin, units));
    headline.caution = margin < 0.0;
    return headline;
}

Headline sealHeadline(const Answers& answers, const settings::DisplayUnits& units) {
    Headline headline{questionName(Question::seals), PlanText::tr("not reckoned"), true};
    if (!answers.seals) return headline;
    Area film;
    for (const plan::Seal& seal : *answers.seals) film += seal.sheets.area + seal.sideSheets;
    headline.answer = PlanText::tr("%1 of film").arg(units.text(film));
    headline.caution = false;
    return headline;
}

Headline feedHeadline(const Answers& answers, const settings::DisplayUnits& units) {
    Headline headline{questionName(Question::feeds), PlanText::tr("not reckoned"), true};
    if (!answers.feeds) return headline;
    double days = 0.0;
    for (const plan::Feed& feed : answers.feeds->silos) days += feed.days;
    headline.answer = PlanText::tr("%1 days").arg(units.locale().toString(days, 'f', 0));
    headline.caution =
        std::ranges::any_of(answers.feeds->silos, [](const plan::Feed& feed) { return feed.slowDays > 0; });
    return headline;
}

/// At the quarters of its height, the whole being told already.
QString byHeightText(const plan::SiloFit& silo, const settings::DisplayUnits& units) {
    constexpr std::size_t kParts = 4;
    QStringList parts;
    for (std::size_t part = 1; part < kParts; ++part) {
        const plan::HeightVolume& up = silo.byHeight[part * (silo.byHeight.size() - 1) / kParts];
        parts.push_back(
            PlanText::tr("%1 up to %2", "volume, height").arg(units.text(up.volume), units.text(up.height)));
    }
    return QString::fromStdString(silo.name) + QStringLiteral(": ") + parts.join(QStringLiteral(", ")) + u'.';
}

}  // namespace

QString questionName(Question question) {
    const std::array names{PlanText::tr("Does it fit?"), PlanText::tr("Does it flow?"),
                           PlanText::tr("Does it pay?"), PlanText::tr("How is it sealed?"),
                           PlanText::tr("How is it fed?")};
    return names[static_cast<std::size_t>(question)];
}

QString linkName(plan::Link link) {
    const std::array names{PlanText::tr("harvester"), PlanText::tr("trucks"), PlanText::tr("tipping"),
                           PlanText::tr("spreading"), PlanText::tr("packing")};
    return names[static_cast<std::size_t>(link)];
}

QString bandText(const plan::Band& band, int decimals, const settings::DisplayUnits& units) {
    const auto number = [&](double value) { return units.locale().toString(value, 'f', decimals); };
    return QStringLiteral("%1 (%2–%3)").arg(number(band.median), number(band.low80), number(band.high80));
}

QString moneyText(double money, const settings::DisplayUnits& units) {
    QLocale plain = units.locale();
    plain.setNumberOptions(QLocale::OmitGroupSeparator);
    return plain.toString(money, 'f', 2);
}

QString roadText(Length distance, const settings::DisplayUnits& units) {
    constexpr double kMetresPerMile = 1609.344;
    const bool metric = units.system() == UnitSystem::metric;
    const double shown = distance.metres() / (metric ? 1000.0 : kMetresPerMile);
    return units.locale().toString(shown, 'f', 1) + QChar::Nbsp +
           (metric ? PlanText::tr("km") : PlanText::tr("mi"));
}

QString densityText(DryDensity median, DryDensity low80, DryDensity high80,
                    const settings::DisplayUnits& units) {
    return QStringLiteral("%1 (%2)").arg(units.text(median),
                                         units.rangeText(low80.amount(), high80.amount()));
}

PlanView viewOf(const Answers& answers, const fill::Speech& speech) {
    const settings::DisplayUnits& units = speech.units();
    return {.headlines = {fitHeadline(answers, units), flowHeadline(answers), payHeadline(answers, units),
                          sealHeadline(answers, units), feedHeadline(answers, units)},
            .lines = {linesOr(answers.fit, answers, speech, fitLines),
                      linesOr(answers.flow, answers, speech, flowLines),
                      linesOr(answers.pay, answers, speech, payLines),
                      linesOr(answers.seals, answers, speech, sealLines),
                      linesOr(answers.feeds, answers, speech, feedLines)}};
}

Lines fitLines(const Answers& answers, const fill::Speech& speech) {
    const plan::Fit& fit = *answers.fit;
    const settings::DisplayUnits& units = speech.units();
    Lines lines;
    lines.push_back(
        {PlanText::tr("%1 of crop stand on %n field(s); the chance that all of it finds room is %2.", "",
                      static_cast<int>(answers.inputs.grounds.size()))
             .arg(units.text(fit.crop), units.chanceText(fit.fits)),
         fit.fits < Chance::fromPercent(50)});
    for (const plan::SiloFit& silo : fit.silos) {
        lines.push_back({PlanText::tr("%1: %2 holds %3 (%4) at the density that this fleet reaches, %5.",
                                      "silo, volume, mass, band of mass, density with band")
                             .arg(QString::fromStdString(silo.name), units.text(silo.body.volume),
                                  units.text(silo.holds.median),
                                  units.rangeText(silo.holds.low80.amount(), silo.holds.high80.amount()),
                                  densityText(silo.density.median(), silo.density.low80(),
                                              silo.density.high80(), units))});
        lines.push_back({byHeightText(silo, units)});
    }
    for (const plan::Placement& placed : fit.placements) {
        lines.push_back({PlanText::tr("%1 from %2 go into %3.", "mass, field, silo")
                             .arg(units.text(placed.mass),
                                  QString::fromStdString(answers.inputs.grounds[placed.field].name),
                                  QString::fromStdString(fit.silos[placed.silo].name))});
    }
    if (fit.leftOver.high80 > AsFedMass{}) {
        lines.push_back({PlanText::tr("Left over: %1 (%2).")
                             .arg(units.text(fit.leftOver.median),
                                  units.rangeText(fit.leftOver.low80.amount(), fit.leftOver.high80.amount())),
                         fit.leftOver.median > AsFedMass{}});
    } else {
        lines.push_back({PlanText::tr("Nothing is left over.")});
    }
    for (const plan::PlannedSilo& silo : answers.inputs.silos) {
        for (const attention::CautionNow& caution :
             attention::shapeCautions(silo.shape, answers.inputs.machineWidth)) {
            lines.push_back({PlanText::tr("%1: %2", "silo and caution")
                                 .arg(QString::fromStdString(silo.name), speech.say(caution.message)),
                             true});
        }
    }
    lines.push_back({speech.say(attention::standingText())});
    return lines;
}

Lines sealLines(const Answers& answers, const fill::Speech& speech) {
    const settings::DisplayUnits& units = speech.units();
    Lines lines;
    for (const plan::Seal& seal : *answers.seals) {
        lines.push_back(
            {PlanText::tr("%1 is full on %2. Cover it then, with %n sheet(s) of barrier film and as many of "
                          "black-and-white sheet above, %3 each kind; %4 of side sheets; %5 tyres.",
                          "silo, day, area, area, count", seal.sheets.count)
                 .arg(QString::fromStdString(seal.silo), settings::dayText(seal.full, units.locale()),
                      units.text(seal.sheets.area), units.text(seal.sideSheets),
                      QString::number(seal.tyres))});
        if (seal.treatment_L > 0.0) {
            lines.push_back({PlanText::tr("%1: %2 of treatment on the surface.", "silo, litres")
                                 .arg(QString::fromStdString(seal.silo),
                                      units.text(ProductVolume::fromLitres(seal.treatment_L)))});
        }
        lines.push_back(
            {PlanText::tr("%1: the crew of %2 is at it for %3. A day's wait costs about %4, %5.",
                          "silo, people, time, mass, money")
                 .arg(QString::fromStdString(seal.silo), QString::number(answers.inputs.sealing.crew),
                      units.text(durationAmount(seal.crewTime)), units.text(seal.lostByADay),
                      moneyText(seal.costOfADay, units))});
    }
    lines.push_back({speech.say(Message{code::planSealOrder, {}})});
    lines.push_back({speech.say(Message{code::planWaiting, {}})});
    return lines;
}

Lines feedLines(const Answers& answers, const fill::Speech& speech) {
    const settings::DisplayUnits& units = speech.units();
    const plan::FeedPlan& feeds = *answers.feeds;
    Lines lines;
    for (const plan::Feed& feed : feeds.silos) {
        const QString name = QString::fromStdString(feed.silo);
        lines.push_back({PlanText::tr("%1: %2, feed for %3 days; opened on %4, and the next must be "
                                      "open by %5.",
                                      "silo, mass, days, day, day")
                             .arg(name, units.text(feed.left), units.locale().toString(feed.days, 'f', 0),
                                  settings::dayText(feed.opens, units.locale()),
                                  settings::dayText(feed.empty, units.locale()))});
        lines.push_back(
            {PlanText::tr(
                 "%1: the herd moves the face of %2 by %3 a day. At this height it may be %4 wide in "
                 "summer and %5 in winter.",
                 "silo, area, length, width, width")
                 .arg(name, units.text(feed.face), units.text(feed.advance), units.text(feed.summerWidth),
                      units.text(feed.winterWidth))});
        if (feed.slowDays > 0) {
            lines.push_back(
                {PlanText::tr("%1: on %n day(s) of feed that is too little for the season: the face heats.",
                              "", feed.slowDays)
                     .arg(name),
                 true});
        }
        lines.push_back({PlanText::tr("%1: silo gas until %2 at the earliest, 21 days after the last load.")
                             .arg(name, settings::dayText(feed.gasUntil, units.locale())),
                         true});
        if (feed.effluent_L > 0.0) {
            lines.push_back({PlanText::tr("%1: %2 of effluent run out: have room for it.")
                                 .arg(name, units.text(ProductVolume::fromLitres(feed.effluent_L))),
                             true});
        }
    }
    if (feeds.daysWithout > 0) {
        lines.push_back(
            {PlanText::tr("On %n day(s) no silo is ripe to be opened.", "", feeds.daysWithout), true});
    }
    return lines;
}

}  // namespace treadwell::plan_page
