#include "app/desktop/fill/fill_presenter.h"

#include "app/desktop/fill/zones.h"

#include <QCoreApplication>
#include <algorithm>

namespace treadwell::fill {

namespace {

using namespace std::chrono_literals;

constexpr std::chrono::microseconds kNext{1};
constexpr auto kBeforeTheFirst = 30min;

/// The presenter's texts share one context.
struct FillText {
    Q_DECLARE_TR_FUNCTIONS(FillPresenter)
};

Instant dayStart(const season::Season& season, Instant now) {
    return season.zone().startOf(season.zone().dayOf(now));
}

widgets::Zone zoneAt(const season::TractorNow& tractor, farm::SiloId silo) {
    return tractor.silo == silo ? zoneOf(tractor.activity) : widgets::Zone::away;
}

}  // namespace

std::vector<widgets::TruckView> trucksAt(const season::Season& season, Instant now) {
    std::vector<widgets::TruckView> trucks;
    for (const auto& [id, truck] : season.farm().trucks) {
        trucks.push_back({.id = id.value,
                          .name = QString::fromStdString(truck.name),
                          .usualLoad = truck.usualLoad,
                          .lastLoad = std::nullopt,
                          .pending = 0});
    }
    // From the last load back, until every truck has been met.
    std::size_t unmet = trucks.size();
    const auto days = season.days();
    for (auto day = days.rbegin(); day != days.rend(); ++day) {
        const auto& loads = (*day)->loads;
        for (auto tipped = loads.rbegin(); tipped != loads.rend() && unmet > 0; ++tipped) {
            if (tipped->at > now || !tipped->load.truck) continue;
            const auto truck = std::find_if(trucks.begin(), trucks.end(), [&tipped](const auto& view) {
                return view.id == tipped->load.truck->value;
            });
            if (truck == trucks.end() || truck->lastLoad) continue;
            truck->lastLoad = tipped->at;
            --unmet;
        }
    }
    return trucks;
}

std::optional<season::LoadTipped> lastLoadAt(const season::Season& season, farm::SiloId silo, Instant now) {
    const auto loads = season::loadsOf(season, silo, dayStart(season, now), now + kNext);
    if (loads.empty()) return std::nullopt;
    return *loads.back();
}

std::optional<season::LoadTipped> undoableAt(const season::Season& season, farm::SiloId silo, Instant now) {
    std::optional<season::LoadTipped> last;
    Instant newest = now - kUndoStays;
    for (const season::LoadTipped* load : season::loadsOf(season, silo, dayStart(season, now), now + kNext)) {
        const season::FactPointer fact = season.fact(load->entry);
        if (fact == nullptr || fact->stated().header.recorded < newest) continue;
        newest = fact->stated().header.recorded;
        last = *load;
    }
    return last;
}

std::optional<season::PauseSpan> pauseAt(const season::Season& season, farm::SiloId silo, Instant now) {
    const season::Day* day = season.day(season.zone().dayOf(now));
    if (day == nullptr) return std::nullopt;
    for (const season::PauseSpan& pause : day->pauses) {
        const bool ours = !pause.silo || *pause.silo == silo;
        if (ours && pause.begin <= now && (!pause.end || *pause.end > now)) return pause;
    }
    return std::nullopt;
}

QString loadName(const season::LoadTipped& load, const season::FarmBook& farm,
                 const settings::DisplayUnits& units) {
    const QString mass = units.text(load.load.mass);
    if (load.load.truck) {
        const auto truck = farm.trucks.find(*load.load.truck);
        if (truck != farm.trucks.end())
            return QString::fromStdString(truck->second.name) + QStringLiteral(", ") + mass;
    }
    return FillText::tr("load of %1").arg(mass);
}

std::vector<widgets::TractorView> tractorsAt(const season::Season& season, const season::Rolling& rolling) {
    std::vector<widgets::TractorView> tractors;
    for (const season::TractorNow& now : rolling.tractors) {
        const auto known = season.farm().tractors.find(now.tractor);
        if (known == season.farm().tractors.end()) continue;
        widgets::TractorView view{.id = now.tractor.value,
                                  .name = QString::fromStdString(known->second.name),
                                  .mass = known->second.mass,
                                  .massKnown = known->second.massKnown,
                                  .zone = zoneAt(now, rolling.silo)};
        if (view.zone == widgets::Zone::packing) view.share = now.packing;
        if (now.since) view.running = rolling.at - *now.since;
        tractors.push_back(view);
    }
    return tractors;
}

widgets::GaugeView gaugeOf(const density::SiloReading& reading, const Speech& speech) {
    if (!reading.estimate) {
        if (reading.reason) return speech.say(*reading.reason);
        // FillText::tr() here would go into a context of its own: lupdate takes the return type for a class.
        return QCoreApplication::translate("FillPresenter", "No density yet.");
    }
    const density::Estimate& estimate = *reading.estimate;
    widgets::GaugeDensity view{.density = estimate.density,
                               .target = estimate.target.density,
                               .atPorosity = estimate.target.atPorosity,
                               .chance = estimate.chance};
    if (reading.asItLies) view.asItLies = reading.asItLies->density;
    return view;
}

plots::TimelineView timelineAt(const DayTrace& trace, Instant now) {
    const season::Season& season = trace.season;
    const farm::SiloId silo = trace.silo;
    plots::TimelineView view;
    view.zone = season.zone();
    view.from = now - 1h;
    view.to = now;
    const season::Day* day = season.day(season.zone().dayOf(now));
    if (day == nullptr) return view;
    for (const season::Sample& sample : day->samples) {
        if (sample.at <= now) view.samples.push_back({sample.at, sample.reading.dryMatter});
    }
    for (const season::PauseSpan& pause : day->pauses) {
        if (pause.begin > now || (pause.silo && pause.silo != silo)) continue;
        view.pauses.push_back({pause.begin, day->endOf(pause.begin, pause.end, now)});
    }
    for (const auto& note : day->records.of<entries::AdviceDecided>()) {
        if (note.at <= now && note.what.silo == silo) view.advice.push_back({note.at, note.what.decision});
    }
    for (const season::LoadTipped* load : season::loadsOf(season, silo, day->begin, now + kNext)) {
        view.deliveries.push_back({load->at, load->load.mass});
    }
    for (const TracePoint& point : trace.points) {
        view.rates.push_back({point.at, point.delivered, point.capacity});
        if (!point.laid) continue;
        view.densities.push_back({point.at, std::nullopt, std::nullopt, std::nullopt});
        if (point.target) view.target = point.target;
        if (!point.density) continue;
        view.densities.back() = {point.at, point.density->median, point.density->low80,
                                 point.density->high80};
    }
    if (!view.samples.empty()) view.from = std::min(view.from, view.samples.front().at - kBeforeTheFirst);
    if (!view.deliveries.empty()) {
        view.from = std::min(view.from, view.deliveries.front().at - kBeforeTheFirst);
    }
    view.from = std::max(view.from, day->begin);
    return view;
}

QString methodName(entries::DryMatterMethod method) {
    switch (method) {
        case entries::DryMatterMethod::oven:
            return FillText::tr("Oven");
        case entries::DryMatterMethod::microwave:
            return FillText::tr("Microwave");
        case entries::DryMatterMethod::meter:
            return FillText::tr("Meter");
        case entries::DryMatterMethod::estimate:
            break;
    }
    return FillText::tr("By eye");
}

QString ageText(Seconds age) {
    const auto minutes = std::chrono::duration_cast<std::chrono::minutes>(age).count();
    constexpr std::int64_t kMinutesPerDay = 24 * 60;
    if (minutes < 1) return FillText::tr("just now");
    if (minutes < 60) return FillText::tr("%1 min ago").arg(minutes);
    if (minutes < kMinutesPerDay) {
        return FillText::tr("%1 h %2 min ago").arg(minutes / 60).arg(minutes % 60, 2, 10, QChar{u'0'});
    }
    return FillText::tr("%n day(s) ago", "", static_cast<int>(minutes / kMinutesPerDay));
}

AgedReading dryMatterAt(const season::Rolling& rolling, const farm::SiteRules& rules,
                        const settings::DisplayUnits& units) {
    if (!rolling.lastSample) return {FillText::tr("No dry matter measured yet."), true};
    const Seconds age = rolling.at - rolling.lastSample->at;
    const entries::DryMatterSample& sample = rolling.lastSample->reading;
    const QString text =
        FillText::tr("%1, %2, %3").arg(units.text(sample.dryMatter), methodName(sample.method), ageText(age));
    if (age <= rules.sampleInterval) return {text, false};
    return {FillText::tr("%1 – time for a new sample").arg(text), true};
}

QString layerAt(const season::Rolling& rolling, const settings::DisplayUnits& units) {
    if (!rolling.layer) {
        return FillText::tr("Not seen yet: %1 assumed").arg(units.text(density::kAssumedLayer.layerAmount()));
    }
    return FillText::tr("%1, seen %2")
        .arg(units.text(rolling.layer->what.thickness.layerAmount()),
             ageText(rolling.at - rolling.layer->at));
}

}  // namespace treadwell::fill
