#include "app/desktop/practice/real_day_presenter.h"

#include "app/desktop/settings/dates.h"
#include "core/packing/passes.h"

#include <QCoreApplication>
#include <algorithm>

namespace treadwell::practice_page {

namespace {

struct RealDayText {
    Q_DECLARE_TR_FUNCTIONS(RealDay)
};

constexpr std::size_t kShownLayers = 12;

QString number(double passes, const settings::DisplayUnits& units) {
    return units.locale().toString(passes, 'f', 1);
}

/// `2.9`, or `0.3 to 4.1` where the positions leave it open.
QString spanText(double least, double most, const settings::DisplayUnits& units) {
    const QString low = number(least, units), high = number(most, units);
    return low == high ? low : RealDayText::tr("%1 to %2", "at least and at most").arg(low, high);
}

QString shareSpan(Share least, Share most, const settings::DisplayUnits& units) {
    const QString low = units.text(least), high = units.text(most);
    return low == high ? low : units.rangeText(least.amount(), most.amount());
}

QString wallClock(const FarmZone& zone, Instant at) {
    return QString::fromStdString(treadwell::clockText(zone, at));
}

}  // namespace

std::vector<DayRow> recordedDays(const season::Season& season, farm::SiloId silo, Instant now,
                                 const settings::DisplayUnits& units) {
    std::vector<DayRow> rows;
    for (const auto& day : season.days()) {
        const auto placed = day->placed.find(silo);
        if (placed == day->placed.end() || placed->second.loads == 0 || day->begin > now) continue;
        const QString date =
            units.locale().toString(settings::dateOf(day->date), QStringLiteral("ddd d MMM"));
        rows.push_back(
            {day->date, std::min(now, day->end - std::chrono::microseconds{1}),
             RealDayText::tr("%1, %n load(s)", nullptr, static_cast<int>(placed->second.loads)).arg(date)});
    }
    std::reverse(rows.begin(), rows.end());
    return rows;
}

std::vector<TrackRow> trackRows(const season::Season& season, const season::Day& day) {
    std::vector<TrackRow> rows;
    for (const auto& attached : passes::attachedTracks(season, day.end)) {
        if (attached.what.end < day.begin) continue;
        const auto known = season.farm().tractors.find(attached.what.tractor);
        const QString tractor = known == season.farm().tractors.end()
                                    ? RealDayText::tr("a tractor that is not known")
                                    : QString::fromStdString(known->second.name);
        rows.push_back({attached.what, QStringLiteral("%1, %2\u2013%3\n%4")
                                           .arg(tractor, wallClock(season.zone(), attached.what.begin),
                                                wallClock(season.zone(), attached.what.end),
                                                QString::fromStdString(attached.what.file))});
    }
    return rows;
}

CoverageMap mapOf(const Driven& driven, std::size_t layer) {
    const passes::DrivenGrid& grid = driven.grid;
    CoverageMap map{grid.shape(), {}, {}};
    const auto least = grid.passes(layer, passes::Counted::least);
    const auto most = grid.passes(layer, passes::Counted::most);
    for (std::size_t i = 0; i < least.size(); ++i) {
        const auto certain = [&] {
            if (!grid.holds(layer, i % grid.shape().along())) return Certainty::absent;
            if (least[i] >= packing::kLeastPasses) return Certainty::enough;
            if (most[i] >= packing::kLeastPasses) return Certainty::unclear;
            return most[i] > 0 ? Certainty::tooFew : Certainty::noTyre;
        };
        map.columns.push_back(certain());
    }
    for (std::size_t i = 0; i < driven.findings.size(); ++i) {
        if (driven.findings[i].place)
            map.marks.push_back({*driven.findings[i].place, static_cast<int>(i) + 1});
    }
    return map;
}

QString sentenceOf(const CoverageMap& map) {
    std::array<double, 5> counts{};
    for (const Certainty column : map.columns) ++counts[static_cast<std::size_t>(column)];
    const double held = static_cast<double>(map.columns.size()) - counts[0];
    if (held <= 0.0) return {};
    const auto percent = [&](Certainty which) {
        return QString::number(std::lround(100.0 * counts[static_cast<std::size_t>(which)] / held));
    };
    return RealDayText::tr(
               "Three passes or more for certain on %1 % of the layer, fewer for certain on %2 %, no "
               "tyre on %3 %; on %4 % the positions do not tell.")
        .arg(percent(Certainty::enough), percent(Certainty::tooFew), percent(Certainty::noTyre),
             percent(Certainty::unclear));
}

std::vector<PassesRow> passesRows(const Driven& driven, const settings::DisplayUnits& units) {
    std::vector<PassesRow> rows;
    for (std::size_t k = 0; k < driven.grid.layers(); ++k) {
        const passes::DrivenLayer layer = driven.grid.layer(k);
        if (layer.time.count() == 0.0) continue;
        const bool tooFew = layer.most.meanPasses < packing::kLeastPasses;
        const bool enough = layer.least.meanPasses >= packing::kLeastPasses;
        rows.push_back({k, QString::number(layer.number),
                        spanText(layer.least.meanPasses, layer.most.meanPasses, units),
                        shareSpan(layer.least.threeOrMore, layer.most.threeOrMore, units),
                        shareSpan(layer.most.unrolled, layer.least.unrolled, units),
                        tooFew   ? RealDayText::tr("too few")
                        : enough ? RealDayText::tr("as advised")
                                 : RealDayText::tr("not told"),
                        tooFew});
    }
    return rows;
}

Lines trackLines(const Driven& driven) {
    Lines lines;
    for (const passes::ReadTrack& track : driven.tracks) {
        const passes::TrackCounts& counts = track.counts;
        const std::int64_t left = track.read.faults.total() + counts.notLater + counts.jumps + counts.farAway;
        const auto precise = counts.byQuality[0] + counts.byQuality[1];
        lines.push_back(
            {RealDayText::tr("%1: %2 positions, %3 of them precise enough for wheels, %4 outside the silo")
                 .arg(QString::fromStdString(track.tractor))
                 .arg(counts.fixes)
                 .arg(precise)
                 .arg(counts.outside)});
        if (track.later > 0)
            lines.push_back({RealDayText::tr("%n position(s) of later days are not looked at here", nullptr,
                                             static_cast<int>(track.later))});
        if (left > 0)
            lines.push_back({RealDayText::tr("%n of them left out: damaged, or impossible for a tractor",
                                             nullptr, static_cast<int>(left)),
                             true});
    }
    return lines;
}

Lines findingLines(const Driven& driven, const fill::Speech& speech) {
    Lines lines;
    for (std::size_t i = 0; i < driven.findings.size(); ++i)
        lines.push_back(
            {QStringLiteral("%1  %2").arg(i + 1).arg(speech.say(driven.findings[i].message)), false});
    if (lines.empty()) lines.push_back({RealDayText::tr("Nothing that the tracks can tell.")});
    return lines;
}

std::vector<Band> bandsOf(const Opinion& opinion, const season::Day& day) {
    std::vector<Band> bands;
    const auto add = [&](const QString& name, const density::Distribution& simulated,
                         const std::optional<density::Estimate>& regression) {
        bands.push_back({name, simulated, true});
        if (regression) bands.push_back({name, regression->density, false});
    };
    if (opinion.replay.silo) add(RealDayText::tr("Silo"), *opinion.replay.silo, opinion.silo);
    std::size_t shown = 0;
    for (std::size_t k = opinion.replay.layers.size(); k-- > 0 && shown < kShownLayers;) {
        const passes::ReplayedLayer& layer = opinion.replay.layers[k];
        if (layer.layer->begin < day.begin || layer.layer->begin >= day.end) continue;
        // The regression takes the pace to go on, the simulation knows what was rolled so far.
        const QString name =
            layer.layer->closed ? RealDayText::tr("Layer %1") : RealDayText::tr("Layer %1, under way");
        add(name.arg(layer.layer->number), layer.density, opinion.layers[k]);
        ++shown;
    }
    return bands;
}

}  // namespace treadwell::practice_page
