#include "core/density/learning.h"

#include <algorithm>

namespace treadwell::density {

std::shared_ptr<const SurveyedSilo> Learnt::find(farm::SiloId silo) const {
    const auto found = silos.find(silo);
    return found == silos.end() ? nullptr : found->second;
}

Learnt learnFrom(const season::Season& season, Instant now) {
    SeasonEvidence evidence = evidenceOf(season, now);
    // What evidenceOf() settles has been checked.
    Calibration calibration = calibrate(evidence.usable()).value();
    return {std::move(evidence.surveyed), std::move(calibration)};
}

const Learnt& LearningHistory::at(const season::Season& season, Instant now) {
    std::vector<std::shared_ptr<const season::Day>> days;
    std::size_t measurements = 0, last = 0;
    for (const auto& day : season.days()) {
        days.push_back(day);
        const std::size_t before = measurements;
        const auto isKnown = [now](const auto& measured) { return measured.at <= now; };
        const auto count = [&](const auto& list) {
            measurements += static_cast<std::size_t>(std::count_if(list.begin(), list.end(), isKnown));
        };
        count(day->surveys);
        count(day->records.of<entries::Core>());
        count(day->records.of<entries::SeasonCarried>());
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
