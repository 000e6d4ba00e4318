#include "core/density/learning.h"

#include "core/density/season_evidence.h"
#include "core/season/rolling.h"

#include <algorithm>
#include <cmath>

namespace treadwell::density {

namespace {

/// Collects the surveys of a season silo by silo.
class Learner {
  public:
    Learner(const season::Season& season, Instant now) : m_season{season}, m_now{now} {}

    void take(const farm::Silo& silo) {
        SurveyedSilo surveyed{measuredIn(m_season, silo, m_now), {}, {}};
        if (surveyed.surveys.empty()) return;
        std::vector<SlopeEvidence> evenings;
        for (const MeasuredSilo& survey : surveyed.surveys) {
            if (!survey.whole) continue;
            const auto predicted = predictedAt(silo, survey.at);
            if (!predicted || !predicted->asItLies) continue;
            surveyed.newest = survey.at;
            evenings.push_back(eveningOf(survey, *predicted->asItLies, predicted->options.effectiveLayers));
        }
        surveyed.slope = depthSlopeFrom(evenings);
        m_learnt.silos.emplace(silo.id, std::move(surveyed));
    }

    [[nodiscard]] Learnt result() && {
        m_learnt.calibration = calibrationAt(m_season, m_now);
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
};

}  // namespace

const SurveyedSilo* Learnt::find(farm::SiloId silo) const {
    const auto found = silos.find(silo);
    return found == silos.end() ? nullptr : &found->second;
}

Learnt learnFrom(const season::Season& season, Instant now) {
    Learner learner{season, now};
    for (const auto& [id, silo] : season.farm().silos) learner.take(silo);
    return std::move(learner).result();
}

const Learnt& LearningHistory::at(const season::Season& season, Instant now) {
    std::vector<std::shared_ptr<const season::Day>> days;
    std::size_t measurements = 0, last = 0;
    for (const auto& day : season.days()) {
        days.push_back(day);
        const std::size_t before = measurements;
        const auto isKnown = [now](const auto& measured) { return measured.at <= now; };
        const auto& cores = day->records.of<entries::Core>();
        measurements +=
            static_cast<std::size_t>(std::count_if(day->surveys.begin(), day->surveys.end(), isKnown) +
                                     std::count_if(cores.begin(), cores.end(), isKnown));
        if (measurements > before) last = days.size();
    }
    days.resize(last);
    const auto farm = season.days().empty() ? nullptr : season.days().back()->after.farm;
    const bool sameFarm = farm == m_farm || (farm && m_farm && *farm == *m_farm);
    if (!m_known || days != m_days || measurements != m_measurements || !sameFarm) {
        m_learnt = learnFrom(season, now);
        m_days = std::move(days);
        m_measurements = measurements;
        m_farm = farm;
        m_known = true;
    }
    return m_learnt;
}

}  // namespace treadwell::density
