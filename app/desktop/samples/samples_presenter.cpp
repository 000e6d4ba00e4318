#include "app/desktop/samples/samples_presenter.h"

#include "app/desktop/fill/fill_presenter.h"
#include "app/desktop/settings/dates.h"
#include "core/samples/particle_size.h"

#include <QCoreApplication>
#include <QDate>
#include <algorithm>

namespace treadwell::samples_page {

namespace {

struct SamplesText {
    Q_DECLARE_TR_FUNCTIONS(SamplesPresenter)
};

/// The precision that the number of samples is told for.
constexpr DryMatter kWantedPrecision = DryMatter::fromPercent(1);

QString nameOf(const season::FarmBook& farm, const std::optional<farm::FieldId>& field) {
    const auto known = field ? farm.fields.find(*field) : farm.fields.end();
    return known == farm.fields.end() ? SamplesText::tr("no field named")
                                      : QString::fromStdString(known->second.name);
}

QString beliefText(const samples::Belief& belief, const settings::DisplayUnits& units) {
    return QStringLiteral("%1 (+-%2)").arg(units.text(belief.mean), units.text(belief.half80()));
}

/// Makes the lines of a season at a moment.
class Writer {
  public:
    Writer(const season::Season& season, const std::optional<farm::FieldId>& field, Instant now,
           const fill::Speech& speech)
        : m_season{season},
          m_field{field},
          m_now{now},
          m_speech{speech},
          m_units{speech.units()},
          m_day{season.day(season.zone().dayOf(now))} {}

    [[nodiscard]] Lines dryMatter() const {
        Lines lines;
        addNext(lines);
        if (m_day == nullptr) return lines;
        addSamples(lines);
        addMeans(lines);
        return lines;
    }

    [[nodiscard]] Lines chop() const {
        if (m_day == nullptr) return {{SamplesText::tr("No sieve test today.")}};
        Lines lines;
        for (const season::ChopOfField& chop : season::chopOf(m_season, *m_day, m_now)) addChop(chop, lines);
        if (lines.empty()) lines.push_back({SamplesText::tr("No sieve test today.")});
        if (const auto trend = samples::chopTrend(season::chopByDay(m_season, m_now))) {
            QString text = SamplesText::tr("By day: %1 over %n day(s)", "", static_cast<int>(trend->days))
                               .arg(m_units.text(trend->perDay.chopAmount()));
            if (trend->low80 && trend->high80) {
                text += SamplesText::tr(", 80 % band %1")
                            .arg(m_units.rangeText(trend->low80->chopAmount(), trend->high80->chopAmount()));
            }
            lines.push_back({text + u'.'});
        }
        return lines;
    }

    [[nodiscard]] Lines kernels() const {
        Lines lines;
        if (m_day == nullptr) return {{SamplesText::tr("No kernels counted today.")}};
        const season::KernelsOfDay kernels = season::kernelsOf(m_season, *m_day, m_now);
        for (const samples::CupMean& cups : kernels.cups) {
            lines.push_back(
                {SamplesText::tr("%1 in a cup (%2 to %3), %4: %5", "mean, low, high, material, how good")
                     .arg(number(cups.perCup), number(cups.low80), number(cups.high80),
                          materialName(cups.material), processingName(cups.processing)),
                 cups.processing == samples::Processing::inadequate});
        }
        for (const season::ScoreOfField& score : kernels.scores) {
            lines.push_back({SamplesText::tr("Score %1 of the starch, %2: %3")
                                 .arg(m_units.text(score.score.score), materialName(score.score.material),
                                      processingName(score.score.processing)),
                             score.score.processing == samples::Processing::inadequate});
        }
        for (const Message& advice : kernels.advice) lines.push_back({m_speech.say(advice)});
        if (lines.empty()) lines.push_back({SamplesText::tr("No kernels counted today.")});
        return lines;
    }

    [[nodiscard]] Lines setting() const {
        const auto chop = season::chopInForce(m_season, m_now);
        if (!chop) return {{SamplesText::tr("Nobody has told how the harvester is set.")}};
        QStringList parts;
        if (chop->length) parts << SamplesText::tr("cut %1").arg(m_units.text(chop->length->chopAmount()));
        if (chop->rollGap)
            parts << SamplesText::tr("roll gap %1").arg(m_units.text(chop->rollGap->chopAmount()));
        if (chop->cuttingHeight)
            parts << SamplesText::tr("stubble %1").arg(m_units.text(chop->cuttingHeight->layerAmount()));
        const std::array processors{SamplesText::tr("no processor"), SamplesText::tr("rolls"),
                                    SamplesText::tr("rolls for a long cut")};
        parts << processors[static_cast<std::size_t>(chop->processor)];
        parts << fill::ageText(m_now - chop->since);
        return {{parts.join(QStringLiteral(", "))}};
    }

    [[nodiscard]] Lines fields() const {
        Lines lines;
        for (const auto& [id, field] : m_season.farm().fields) {
            if (m_field && *m_field != id) continue;
            addOutlook(QString::fromStdString(field.name), season::outlookOf(m_season, id, m_now), lines);
        }
        if (lines.empty()) lines.push_back({SamplesText::tr("No field has been visited.")});
        return lines;
    }

    [[nodiscard]] plots::DryMatterView chart() const {
        const farm::SiteRules& rules = m_season.farm().rules;
        plots::DryMatterView view{m_season.zone(),    m_now, m_now, {}, {}, rules.dryMatterLow,
                                  rules.dryMatterHigh};
        if (m_day == nullptr) return view;
        for (const season::Sample& sample : m_day->samples) {
            if (sample.at > m_now) break;
            view.samples.push_back({sample.at, sample.believed.mean});
            view.from = std::min(view.from, sample.at);
        }
        for (const season::LoadTipped& load : m_day->loads) {
            if (load.at > m_now) break;
            view.loads.push_back({load.at, {load.dryMatter, load.dryMatterSd}});
            view.from = std::min(view.from, load.at);
        }
        return view;
    }

    [[nodiscard]] plots::SieveView sieve() const {
        plots::SieveView view{std::nullopt, rangesFor(m_season, m_field, m_now)};
        for (const auto& day : m_season.days()) {
            for (season::ChopOfField& chop : season::chopOf(m_season, *day, m_now)) {
                if (m_field && chop.field != m_field) continue;
                view = {std::move(chop.parts), chop.ranges};
            }
        }
        return view;
    }

    [[nodiscard]] samples::MeterBias meter() const {
        return season::meterBiasOf(m_season.days().empty() ? season::Carry{} : m_season.days().back()->after);
    }

  private:
    [[nodiscard]] QString number(double value) const { return m_units.locale().toString(value, 'f', 1); }

    static QString materialName(samples::Material material) {
        return material == samples::Material::fresh ? SamplesText::tr("fresh") : SamplesText::tr("fermented");
    }

    /// What the next load is taken for, and how far from the goal that is.
    void addNext(Lines& lines) const {
        const auto next = season::dryMatterFor(m_season, m_field, m_now);
        if (!next) {
            lines.push_back({SamplesText::tr("No dry matter measured yet."), true});
            return;
        }
        lines.push_back({SamplesText::tr("The next load: %1").arg(beliefText(*next, m_units))});
        const farm::SiteRules& rules = m_season.farm().rules;
        if (const auto warning = samples::goalWarning(next->mean, rules.dryMatterLow, rules.dryMatterHigh))
            lines.push_back({m_speech.say(*warning), true});
    }

    void addSamples(Lines& lines) const {
        std::vector<DryMatter> readings;
        std::vector<samples::TimedDryMatter> timed;
        for (const season::Sample& sample : m_day->samples) {
            if (sample.at > m_now || (m_field && season::fieldOf(*m_day, sample) != m_field)) continue;
            readings.push_back(sample.believed.mean);
            timed.push_back({sample.at, sample.believed.mean});
        }
        const auto mean = samples::meanOfSamples(readings);
        if (!mean) return;
        QString text = SamplesText::tr("%n sample(s) today: %1", "", static_cast<int>(mean->samples))
                           .arg(m_units.text(mean->mean));
        if (mean->half95) text += QStringLiteral(" +-%1").arg(m_units.text(*mean->half95));
        if (const auto needed = samples::samplesFor(mean->sd, kWantedPrecision)) {
            const auto more = std::max<std::int64_t>(0, *needed - mean->samples);
            text += more == 0 ? SamplesText::tr("; enough for a point")
                              : SamplesText::tr("; %n more give it to a point", "", static_cast<int>(more));
        }
        lines.push_back({text});
        const auto drift = samples::driftOf(timed);
        if (!drift || !drift->low80) return;
        text = SamplesText::tr("Drift %1 an hour, 80 % band %2")
                   .arg(m_units.text(drift->pointsPerHour),
                        m_units.rangeText(drift->low80->amount(), drift->high80->amount()));
        lines.push_back({drift->isSeen() ? text : SamplesText::tr("%1: none is seen").arg(text)});
    }

    void addMeans(Lines& lines) const {
        const season::ComeIn means = season::comeIn(m_season, *m_day, m_now);
        const season::FarmBook& farm = m_season.farm();
        if (means.day)
            lines.push_back({SamplesText::tr("Came in today: %1").arg(beliefText(*means.day, m_units))});
        for (const auto& [field, mean] : means.fields) {
            lines.push_back({QStringLiteral("%1: %2").arg(nameOf(farm, field), beliefText(mean, m_units))});
        }
        for (const auto& [silo, mean] : means.silos) {
            const auto known = farm.silos.find(silo);
            if (known == farm.silos.end()) continue;
            lines.push_back(
                {SamplesText::tr("In %1: %2")
                     .arg(QString::fromStdString(known->second.name), beliefText(mean, m_units))});
        }
    }

    void addChop(const season::ChopOfField& chop, Lines& lines) const {
        QString text = SamplesText::tr("%1, %n test(s)", "", static_cast<int>(chop.parts.tests))
                           .arg(nameOf(m_season.farm(), chop.field));
        const auto say = [&](const QString& method, const Result<samples::ParticleSize>& size) {
            if (!size) return;
            text += SamplesText::tr("; %1 %2", "method, mean length")
                        .arg(method, m_units.text(size->geometricMean.chopAmount()));
            if (size->spread) text += SamplesText::tr(", spread %1").arg(number(*size->spread));
        };
        say(SamplesText::tr("log-normal line"), samples::logNormalSize(chop.parts));
        say(QStringLiteral("S424.1"), samples::standardSize(chop.parts, chop.topLength));
        say(SamplesText::tr("one screen"), samples::oneScreenSize(chop.parts));
        lines.push_back({text});
        for (const Message& remark : chop.parts.remarks) lines.push_back({m_speech.say(remark), true});
        for (const Message& advice : chop.advice()) lines.push_back({m_speech.say(advice)});
    }

    void addOutlook(const QString& name, const season::FieldOutlook& outlook, Lines& lines) const {
        QStringList parts;
        if (outlook.seen.hybrid) parts << QString::fromStdString(*outlook.seen.hybrid);
        if (outlook.seen.milkLine)
            parts << SamplesText::tr("milk line %1").arg(m_units.text(*outlook.seen.milkLine));
        if (outlook.dryDown) {
            parts << SamplesText::tr("dries %1 (+-%2)")
                         .arg(m_units.text(outlook.dryDown->rate), m_units.text(outlook.dryDown->rateSd));
        }
        if (outlook.reachesLow && outlook.reachesHigh)
            parts << SamplesText::tr("in the goal %1 to %2")
                         .arg(reachText(*outlook.reachesLow), reachText(*outlook.reachesHigh));
        if (outlook.byWarmth)
            parts << SamplesText::tr("by warmth %1")
                         .arg(settings::dayText(outlook.byWarmth->day, m_units.locale()));
        if (outlook.byPlanting) {
            parts << SamplesText::tr("by planting %1 to %2")
                         .arg(settings::dayText(outlook.byPlanting->first, m_units.locale()),
                              settings::dayText(outlook.byPlanting->last, m_units.locale()));
        }
        if (!parts.isEmpty())
            lines.push_back({QStringLiteral("%1: %2").arg(name, parts.join(QStringLiteral(", ")))});
        for (const Message& note : outlook.notes)
            lines.push_back({QStringLiteral("%1: %2").arg(name, m_speech.say(note)), true});
    }

    [[nodiscard]] QString reachText(const samples::ReachDays& days) const {
        if (!days.median) return SamplesText::tr("out of reach");
        const QString median = settings::dayText(*days.median, m_units.locale());
        if (!days.early || !days.late) return median;
        return QStringLiteral("%1 (%2–%3)")
            .arg(median, settings::dayText(*days.early, m_units.locale()),
                 settings::dayText(*days.late, m_units.locale()));
    }

    const season::Season& m_season;
    const std::optional<farm::FieldId>& m_field;
    Instant m_now;
    const fill::Speech& m_speech;
    const settings::DisplayUnits& m_units;
    const season::Day* m_day;
};

}  // namespace

std::vector<LoadToSample> loadsToSample(const season::Season& season, Instant now,
                                        const fill::Speech& speech) {
    std::vector<LoadToSample> loads;
    const LocalDay today = season.zone().dayOf(now);
    const auto days = season.days();
    for (auto day = days.rbegin(); day != days.rend(); ++day) {
        const auto back = std::chrono::local_days{today} - std::chrono::local_days{(*day)->date};
        if (back > std::chrono::days{1}) break;
        for (auto load = (*day)->loads.rbegin(); load != (*day)->loads.rend(); ++load) {
            if (load->at > now) continue;
            QString name = QString::fromStdString(clockText(season.zone(), load->at)) + u' ' +
                           fill::loadName(*load, season.farm(), speech.units());
            if ((*day)->date != today) name = SamplesText::tr("yesterday %1").arg(name);
            loads.push_back({load->entry, load->load.field, name});
        }
    }
    return loads;
}

SamplesView samplesAt(const season::Season& season, const std::optional<farm::FieldId>& field, Instant now,
                      const fill::Speech& speech) {
    const Writer writer{season, field, now, speech};
    return {writer.dryMatter(), writer.chop(),  writer.kernels(), writer.setting(),
            writer.fields(),    writer.chart(), writer.sieve(),   writer.meter()};
}

samples::ChopRanges rangesFor(const season::Season& season, const std::optional<farm::FieldId>& field,
                              Instant now) {
    const auto setting = season::chopInForce(season, now);
    const auto processor = setting ? setting->processor : samples::Processor::rolls;
    return season::chopRangesFor(season, season.farm().cropOf(field), processor, now);
}

QString processingName(samples::Processing processing) {
    switch (processing) {
        case samples::Processing::optimal:
            return SamplesText::tr("well processed");
        case samples::Processing::adequate:
            return SamplesText::tr("adequate");
        case samples::Processing::inadequate:
            break;
    }
    return SamplesText::tr("inadequate");
}

}  // namespace treadwell::samples_page
