#pragma once

#include "core/density/calibration.h"
#include "core/density/measured.h"
#include "core/density/silo_layers.h"

#include <map>
#include <memory>

namespace treadwell::density {

/// A silo's surveys and what they were held against.
struct SurveyedSilo {
    std::vector<MeasuredSilo> surveys;  ///< all, also those that give no density
    std::optional<Instant> newest;      ///< of those that do
    std::optional<DepthSlope> slope;    ///< the farm's own, after three evenings in this silo
};

/// What a season's measurements teach up to a moment.
struct Learnt {
    std::map<farm::SiloId, SurveyedSilo> silos;  ///< those with a survey
    Calibration calibration;                     ///< the survey's residual itself where nothing was measured

    [[nodiscard]] const SurveyedSilo* find(farm::SiloId silo) const;
};

/// A survey as evidence: its whole against the layers below it as they lie, their density without
/// calibration. The mass and the dry matter stand on both sides and enter with 1 + s/2 and 1 - s/2; the other
/// entries are common to all evidence of the silo; today's depth adds the doubt of the slope with depth.
/// Takes a survey with a whole; `predicted` is the reading of all layers at that moment.
[[nodiscard]] Evidence evidenceOf(farm::SiloId silo, const MassBalance& whole, const Estimate& predicted,
                                  double effectiveLayers);

/// Of each silo the newest survey that gives a density is taken as evidence: it holds what the earlier ones
/// weighed. Errors: those of calibrate().
[[nodiscard]] Result<Learnt> learnFrom(const season::Season& season, Instant now);

/// learnFrom for one who asks again and again: computed anew only when something changes before the last
/// survey. Not for several threads at once.
class LearningHistory {
  public:
    [[nodiscard]] const Result<Learnt>& at(const season::Season& season, Instant now);

  private:
    std::vector<std::shared_ptr<const season::Day>> m_days;  ///< up to that of the last survey
    std::shared_ptr<const season::FarmBook> m_farm;
    std::size_t m_surveys = 0;
    Result<Learnt> m_learnt;
    bool m_known = false;
};

}  // namespace treadwell::density
