#include "core/density/season_evidence.h"

#include "core/density/measured.h"
#include "core/density/weak_places.h"

#include <cmath>
#include <map>
#include <utility>

namespace treadwell::density {

namespace {

constexpr double kCoreError = 0.026 * 0.026;
constexpr double kBalanceError = 0.05 * 0.05;
constexpr Length kHalfFace = Length::fromMetres(1);

/// A silo as it lay at a moment, estimated without calibration.
struct Lying {
    SiloLayers layers;
    Field field;
    double inputs;
    double elasticity;
    double effectiveLayers;
};

double sum(const InputParts& parts) {
    return parts.machineMass + parts.layer + parts.packingTime + parts.loadMass + parts.dryMatter;
}

Result<Lying> lyingAt(const season::Season& season, const farm::Silo& silo, Instant at) {
    auto layers = laySilo(season, silo, packing::layersOf(season, silo, at),
                          season::rollingAt(season, silo.id, at), std::nullopt, {});
    if (!layers) return Unexpected{layers.error()};
    const std::size_t count = layers->layers.size();
    if (count == 0) return fail(Code::noLoads, "silo");
    const SiloReading whole = readingOf(season, *layers, {0, count, Instant::min()}, Reading::day);
    if (!whole.estimate) return Unexpected{Error{*whole.reason, "silo", {}}};
    auto field = fieldOf(season, *layers, Filled::asItLies);
    if (!field) return fail(Code::coreOutsideLayers, "silo");
    return Lying{*std::move(layers), *std::move(field), sum(whole.estimate->inputs),
                 whole.estimate->elasticity, whole.options.effectiveLayers};
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
        return m_lying.emplace(key, lyingAt(m_season, silo, at)).first->second;
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
void settle(Holder& holder, Evidence evidence) {
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
        result.reason = Message{Code::coreIsLoose, {}};
    } else if (silo == farm.silos.end()) {
        result.reason = Message{Code::siloUnknown, {}};
    } else if (const auto& lying = fillings.at(silo->second, taken.at); !lying) {
        result.reason = lying.error().message;
    } else if (const auto found = foundAt(*lying, core); !found) {
        result.reason = Message{Code::coreOutsideLayers, {}};
    } else {
        const bool balance = core.origin == entries::CoreOrigin::faceBalance;
        Evidence evidence;
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

std::optional<SurveyEvidence> newestSurvey(const season::Season& season, const farm::Silo& silo,
                                           Instant now) {
    const std::vector<MeasuredSilo> surveys = measuredIn(season, silo, now);
    for (auto survey = surveys.rbegin(); survey != surveys.rend(); ++survey) {
        if (!survey->whole) continue;
        SurveyEvidence result{silo.id, survey->survey, survey->at};
        const auto lying = lyingAt(season, silo, survey->at);
        if (!lying) {
            result.reason = lying.error().message;
            return result;
        }
        const SpreadParts parts = fixedParts({}, Reading::silo, 1.0, lying->layers.asItLies.meanDepth);
        Evidence evidence;
        evidence.silo = silo.id;
        evidence.kind = entries::EvidenceKind::survey;
        evidence.measured = survey->whole->density.median();
        evidence.predicted = lying->layers.asItLies.mean;
        evidence.inputs = lying->inputs;
        evidence.error =
            logRatioVariance(survey->whole->parts, lying->elasticity) + parts[SpreadPart::depthSlope];
        evidence.layers = lying->effectiveLayers;
        settle(result, std::move(evidence));
        return result;
    }
    return std::nullopt;
}

}  // namespace

std::vector<Evidence> SeasonEvidence::usable() const {
    std::vector<Evidence> all;
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
    bool surveyed = false;
    for (const auto& day : season.days()) {
        for (const auto& core : day->records.of<entries::Core>()) {
            if (core.at <= now) evidence.cores.push_back(evidenceOf(core, season.farm(), fillings));
        }
        surveyed = surveyed || !day->surveys.empty();
    }
    if (!surveyed) return evidence;
    for (const auto& [id, silo] : season.farm().silos) {
        if (auto survey = newestSurvey(season, silo, now)) evidence.surveys.push_back(*std::move(survey));
    }
    return evidence;
}

Calibration calibrationAt(const season::Season& season, Instant now) {
    // What evidenceOf() settles has been checked.
    return calibrate(evidenceOf(season, now).usable()).value();
}

}  // namespace treadwell::density
