#pragma once

#include "core/density/season_evidence.h"

namespace treadwell::density {

/// What a season's measurements teach up to a moment.
struct Learnt {
    std::map<farm::SiloId, std::shared_ptr<const SurveyedSilo>> silos;  ///< those with a survey
    Calibration calibration;  ///< the survey's residual itself where nothing was measured

    /// Nothing without a survey.
    [[nodiscard]] std::shared_ptr<const SurveyedSilo> find(farm::SiloId silo) const;
};

/// All evidence of the season up to `now`: cores, of each silo the newest heights, and what earlier seasons
/// handed on (see evidenceOf()).
[[nodiscard]] Learnt learnFrom(const season::Season& season, Instant now);

/// learnFrom for one who asks again and again: computed anew only when something changes before the last
/// survey, core or carried season. Not for several threads at once.
class LearningHistory {
  public:
    [[nodiscard]] const Learnt& at(const season::Season& season, Instant now);

  private:
    std::vector<std::shared_ptr<const season::Day>> m_days;  ///< up to that of the last survey or core
    std::shared_ptr<const season::FarmBook> m_farm;
    std::size_t m_measurements = 0;
    Learnt m_learnt;
    bool m_known = false;
};

}  // namespace treadwell::density
