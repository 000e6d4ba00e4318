#include "core/density/season_evidence.h"

#include "core/density/codes.h"
#include "core/density/weak_places.h"

#include <cmath>
#include <map>
#include <utility>

namespace treadwell::density {

namespace {

constexpr double kCoreError = 0.026 * 0.026;
constexpr double kBalanceError = 0.05 * 0.05;
constexpr Length kHalfFace = Length::fromMetres(1);

/// A silo as it lay at a moment, estimated as a whole without calibration.
struct Whole {
    SiloLayers layers;
    SiloReading reading;
};

Result<Whole> wholeAt(const season::Season& season, const farm::Silo& silo, Instant at) {
    auto layers = laySilo(season, silo, packing::layersOf(season, silo, at),
                          season::rollingAt(season, silo.id, at), std::nullopt, {});
    if (!layers) return Unexpected{layers.error()};
    const std::size_t count = layers->layers.size();
    if (count == 0) return fail(code::noLoads, "silo");
    SiloReading reading = readingOf(season, *layers, {0, count, Instant::min()}, Reading::day);
    return Whole{*std::move(layers), std::move(reading)};
}

/// The same with its density at every place.
struct Lying {
    SiloLayers layers;
    Field field;
    double inputs;
    double elasticity;
    double effectiveLayers;
};

Result<Lying> lyingIn(const season::Season& season, Result<Whole> whole) {
    if (!whole) return Unexpected{whole.error()};
    const SiloReading& reading = whole->reading;
    if (!reading.estimate) return Unexpected{Error{*reading.reason, "silo", {}}};
    auto field = fieldOf(season, whole->layers, Filled::asItLies);
    if (!field) return fail(code::coreOutsideLayers, "silo");
    return Lying{std::move(whole->layers), *std::move(field), reading.estimate->inputs.total(),
                 reading.estimate->elasticity, reading.options.effectiveLayers};
}

/// Keeps how silos lay, since many cores are taken of one.
class Fillings {
  public:
    explicit Fillings(const season::Season& season) : m_season(season) {}

    const Result<Lying>& at(const farm::Silo& silo, Instant at) {
        const std::int64_t loads = season::rollingAt(m_season, silo.id, at).siloIn.loads;
        const auto key = std::pair{silo.id, loads};
        const auto known = m_lying.find(key);
        if (known != m_lying.end()) return known->second;
        return m_lying.emplace(key, lyingIn(m_season, wholeAt(m_season, silo, at))).first->second;
    }

  private:
    const season::Season& m_season;
    std::map<std::pair<farm::SiloId, std::int64_t>, Result<Lying>> m_lying;
};

/// Where a core came from, in the silo as it lay.
struct Found {
    std::int64_t layer;
    Length depth;
    DryDensity predicted;
};

std::optional<Found> foundAt(const Lying& lying, const entries::Core& core) {
    const Length up = core.height ? *core.height : lying.field.surface(core.along) - *core.depth;
    if (core.origin == entries::CoreOrigin::faceBalance) {
        const Box whole = lying.field.whole();
        Box face = whole;
        face.low.along = std::max(whole.low.along, core.along - kHalfFace);
        face.high.along = std::min(whole.high.along, core.along + kHalfFace);
        const auto mean = lying.field.mean(face);
        if (!mean) return std::nullopt;
        return Found{0, mean->depth, mean->density.median()};
    }
    const auto point = lying.field.at({core.along, up, core.across});
    if (!point) return std::nullopt;
    return Found{lying.layers.layers[point->layer].layer->number, point->depth, point->density.median()};
}

/// Keeps evidence that calibration can take, or says what is wrong with it.
template <class Holder>
void settle(Holder& holder, DensityEvidence evidence) {
    if (const auto valid = validate(evidence); valid) {
        holder.evidence = std::move(evidence);
    } else {
        holder.reason = valid.error().message;
    }
}

CoreEvidence evidenceOf(const season::Dated<entries::Core>& taken, const season::FarmBook& farm,
                        Fillings& fillings) {
    CoreEvidence result{taken};
    const entries::Core& core = taken.what;
    const auto measured = core.dryDensity();
    const auto silo = farm.silos.find(core.silo);
    if (!measured) {
        result.reason = Message{code::coreIsLoose, {}};
    } else if (silo == farm.silos.end()) {
        result.reason = Message{code::siloUnknown, {}};
    } else if (const auto& lying = fillings.at(silo->second, taken.at); !lying) {
        result.reason = lying.error().message;
    } else if (const auto found = foundAt(*lying, core); !found) {
        result.reason = Message{code::coreOutsideLayers, {}};
    } else {
        const bool balance = core.origin == entries::CoreOrigin::faceBalance;
        DensityEvidence evidence;
        evidence.silo = core.silo;
        evidence.kind = balance ? entries::EvidenceKind::faceBalance : entries::EvidenceKind::core;
        evidence.face = static_cast<std::int64_t>(std::lround(core.along.metres()));
        evidence.place = found->layer;
        evidence.measured = *measured;
        evidence.predicted = found->predicted;
        evidence.inputs = lying->inputs;
        evidence.error = (balance ? kBalanceError : kCoreError) + depthSlopeVarianceAt(found->depth);
        settle(result, std::move(evidence));
    }
    return result;
}

SurveyEvidence evidenceOf(farm::SiloId silo, const MeasuredSilo& survey, const Result<Lying>& lying) {
    SurveyEvidence result{silo, survey.survey, survey.at};
    if (!lying) {
        result.reason = lying.error().message;
        return result;
    }
    const SpreadParts parts = fixedParts({}, Reading::silo, 1.0, lying->layers.asItLies.meanDepth);
    DensityEvidence evidence;
    evidence.silo = silo;
    evidence.kind = entries::EvidenceKind::survey;
    evidence.measured = survey.whole->density.median();
    evidence.predicted = lying->layers.asItLies.mean;
    evidence.inputs = lying->inputs;
    evidence.error = logRatioVariance(survey.whole->parts, lying->elasticity) + parts[SpreadPart::depthSlope];
    evidence.layers = lying->effectiveLayers;
    settle(result, std::move(evidence));
    return result;
}

SlopeEvidence eveningOf(const MeasuredSilo& survey, const Estimate& predicted, double layers) {
    const double layerVariance = Residual{}.layer / layers;
    return {survey.surface->meanDepth,
            survey.whole->dry / survey.whole->volume / bracketOf(predicted.packing.factor),
            std::sqrt(survey.whole->parts.heights + layerVariance)};
}

void takeSurveys(SeasonEvidence& evidence, const season::Season& season, const farm::Silo& silo,
                 Instant now) {
    SurveyedSilo surveyed{measuredIn(season, silo, now), {}, {}};
    if (surveyed.surveys.empty()) return;
    std::vector<SlopeEvidence> evenings;
    const MeasuredSilo* newest = nullptr;
    Result<Whole> lay = fail(code::noLoads, "silo");
    for (const MeasuredSilo& survey : surveyed.surveys) {
        if (!survey.whole) continue;
        newest = &survey;
        lay = wholeAt(season, silo, survey.at);
        if (!lay || !lay->reading.asItLies) continue;
        surveyed.newest = survey.at;
        evenings.push_back(eveningOf(survey, *lay->reading.asItLies, lay->reading.options.effectiveLayers));
    }
    surveyed.slope = depthSlopeFrom(evenings);
    if (newest != nullptr) {
        evidence.surveys.push_back(evidenceOf(silo.id, *newest, lyingIn(season, std::move(lay))));
    }
    evidence.surveyed.emplace(silo.id, std::make_shared<const SurveyedSilo>(std::move(surveyed)));
}

/// By season, so that none counts twice.
void takeCarried(SeasonEvidence& evidence, const season::Season& season, Instant now) {
    std::map<entries::EntryId, std::vector<CarriedEvidence>> seasons;
    for (const auto& day : season.days()) {
        for (const auto& carried : day->records.of<entries::SeasonCarried>()) {
            if (carried.at > now || !carried.what.evidence) continue;
            for (const entries::EarlierSeason& from : carried.what.from) {
                std::vector<CarriedEvidence>& known = seasons[from.season];
                known.clear();
                for (const DensityEvidence& each : *carried.what.evidence) {
                    if (each.season == from.season.value.text())
                        known.push_back({carried.entry, carried.at, from, each});
                }
            }
        }
    }
    for (auto& [id, carried] : seasons) {
        evidence.carried.insert(evidence.carried.end(), carried.begin(), carried.end());
    }
}

}  // namespace

std::vector<DensityEvidence> SeasonEvidence::usable() const {
    std::vector<DensityEvidence> all = own();
    for (const CarriedEvidence& each : carried) all.push_back(each.evidence);
    return all;
}

std::vector<DensityEvidence> SeasonEvidence::own() const {
    std::vector<DensityEvidence> all;
    for (const CoreEvidence& core : cores) {
        if (core.evidence) all.push_back(*core.evidence);
    }
    for (const SurveyEvidence& survey : surveys) {
        if (survey.evidence) all.push_back(*survey.evidence);
    }
    return all;
}

SeasonEvidence evidenceOf(const season::Season& season, Instant now) {
    SeasonEvidence evidence;
    Fillings fillings{season};
    for (const auto& day : season.days()) {
        for (const auto& core : day->records.of<entries::Core>()) {
            if (core.at <= now) evidence.cores.push_back(evidenceOf(core, season.farm(), fillings));
        }
    }
    for (const auto& [id, silo] : season.farm().silos) takeSurveys(evidence, season, silo, now);
    takeCarried(evidence, season, now);
    return evidence;
}

}  // namespace treadwell::density
