#include "core/density/learning.h"

#include "core/season/rolling.h"

#include <algorithm>
#include <cmath>

namespace treadwell::density {

namespace {

/// A variance that calibrate() takes, however well a survey was read.
constexpr double kLeastError = 1e-6;

/// Collects the surveys of a season silo by silo.
class Learner {
  public:
    Learner(const season::Season& season, Instant now) : m_season{season}, m_now{now} {}

    void take(const farm::Silo& silo) {
        SurveyedSilo surveyed{measuredIn(m_season, silo, m_now), {}, {}};
        if (surveyed.surveys.empty()) return;
        std::vector<SlopeEvidence> evenings;
        std::optional<Evidence> newest;
        for (const MeasuredSilo& survey : surveyed.surveys) {
            if (!survey.whole) continue;
            const auto predicted = predictedAt(silo, survey.at);
            if (!predicted || !predicted->asItLies) continue;
            surveyed.newest = survey.at;
            const double layers = predicted->options.effectiveLayers;
            newest = evidenceOf(silo.id, *survey.whole, *predicted->asItLies, layers);
            evenings.push_back(eveningOf(survey, *predicted->asItLies, layers));
        }
        surveyed.slope = depthSlopeFrom(evenings);
        if (newest) m_evidence.push_back(*newest);
        m_learnt.silos.emplace(silo.id, std::move(surveyed));
    }

    [[nodiscard]] Result<Learnt> result() && {
        auto calibration = calibrate(m_evidence);
        if (!calibration) return tl::unexpected{calibration.error()};
        m_learnt.calibration = std::move(*calibration);
        return std::move(m_learnt);
    }

  private:
    [[nodiscard]] std::optional<SiloReading> predictedAt(const farm::Silo& silo, Instant at) const {
        const season::Rolling rolling = season::rollingAt(m_season, silo.id, at);
        const auto layers =
            laySilo(m_season, silo, packing::layersOf(m_season, silo, at), rolling, std::nullopt, Residual{});
        if (!layers || layers->layers.empty()) return std::nullopt;
        return readingOf(m_season, *layers, {0, layers->layers.size(), Instant::min()}, Reading::day);
    }

    static SlopeEvidence eveningOf(const MeasuredSilo& survey, const Estimate& predicted, double layers) {
        const double layerVariance = Residual{}.layer / layers;
        return {survey.surface->meanDepth,
                survey.whole->dry / survey.whole->volume / bracketOf(predicted.packing.factor),
                std::sqrt(survey.whole->parts.heights + layerVariance)};
    }

    const season::Season& m_season;
    Instant m_now;
    Learnt m_learnt;
    std::vector<Evidence> m_evidence;
};

}  // namespace

const SurveyedSilo* Learnt::find(farm::SiloId silo) const {
    const auto found = silos.find(silo);
    return found == silos.end() ? nullptr : &found->second;
}

Evidence evidenceOf(farm::SiloId silo, const MassBalance& whole, const Estimate& predicted,
                    double effectiveLayers) {
    const InputParts& inputs = predicted.inputs;
    Evidence evidence;
    evidence.silo = silo;
    evidence.kind = entries::EvidenceKind::survey;
    evidence.measured = whole.dry / whole.volume;
    evidence.predicted = predicted.density.median();
    evidence.inputs = inputs.machineMass + inputs.layer + inputs.packingTime;
    evidence.error = std::max(kLeastError, logRatioVariance(whole.parts, predicted.elasticity) +
                                               predicted.spread[SpreadPart::depthSlope]);
    evidence.layers = effectiveLayers;
    return evidence;
}

Result<Learnt> learnFrom(const season::Season& season, Instant now) {
    Learner learner{season, now};
    for (const auto& [id, silo] : season.farm().silos) learner.take(silo);
    return std::move(learner).result();
}

const Result<Learnt>& LearningHistory::at(const season::Season& season, Instant now) {
    std::vector<std::shared_ptr<const season::Day>> days;
    std::size_t surveys = 0, last = 0;
    for (const auto& day : season.days()) {
        days.push_back(day);
        const std::size_t before = surveys;
        for (const season::Survey& survey : day->surveys) surveys += survey.at <= now;
        if (surveys > before) last = days.size();
    }
    days.resize(last);
    const auto farm = season.days().empty() ? nullptr : season.days().back()->after.farm;
    const bool sameFarm = farm == m_farm || (farm && m_farm && *farm == *m_farm);
    if (!m_known || days != m_days || surveys != m_surveys || !sameFarm) {
        m_learnt = learnFrom(season, now);
        m_days = std::move(days);
        m_surveys = surveys;
        m_farm = farm;
        m_known = true;
    }
    return m_learnt;
}

}  // namespace treadwell::density
