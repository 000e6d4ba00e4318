#pragma once

#include "core/density/calibration.h"
#include "core/density/measured.h"

#include <map>
#include <memory>
#include <optional>
#include <vector>

namespace treadwell::density {

/// A core of the season: what it is evidence of, or why it is none.
struct CoreEvidence {
    season::Dated<entries::Core> core;
    std::optional<DensityEvidence> evidence = {};
    std::optional<Message> reason = {};
};

/// A silo's heights: what they are evidence of, or why they are none.
struct SurveyEvidence {
    farm::SiloId silo;
    entries::EntryId survey;
    Instant at;
    std::optional<DensityEvidence> evidence = {};
    std::optional<Message> reason = {};
};

/// A silo's surveys and what they were held against.
struct SurveyedSilo {
    std::vector<MeasuredSilo> surveys;  ///< all, also those that give no density
    std::optional<Instant> newest;      ///< of those that do
    std::optional<DepthSlope> slope;    ///< the farm's own, after three evenings in this silo
};

/// What an earlier season measured and this one took over when it began.
struct CarriedEvidence {
    entries::EntryId entry;  ///< that carried it
    Instant at;
    entries::EarlierSeason from;  ///< whose evidence it is
    DensityEvidence evidence;
};

struct SeasonEvidence {
    std::vector<CoreEvidence> cores;       ///< in the order of the season
    std::vector<SurveyEvidence> surveys;   ///< each silo's newest that gives a density
    std::vector<CarriedEvidence> carried;  ///< by season
    std::map<farm::SiloId, std::shared_ptr<const SurveyedSilo>> surveyed;  ///< those with a survey

    /// What the season itself measured.
    [[nodiscard]] std::vector<DensityEvidence> own() const;
    /// What calibrate() takes.
    [[nodiscard]] std::vector<DensityEvidence> usable() const;
};

/// What cores and heights up to and including `now` say beside what the layers' estimates say without any
/// calibration.
///
/// A core is held against the layer that lies where it came from, at its depth as it lay (rule B7); a face
/// balance against the mean of its face, 2 m along. Cores within a metre along are one face. Their error is
/// 2.6 % (derived), a balance's 5 % (published), and the depth factor's 50 % slope at their depth, taken for
/// each by itself. Loose material is no evidence. Of a silo's heights the newest that give a density count:
/// each holds all that the ones before held. Cores of silos that the farm does not know say so. Of an earlier
/// season that several entries carried the last one speaks.
[[nodiscard]] SeasonEvidence evidenceOf(const season::Season& season, Instant now);

}  // namespace treadwell::density
