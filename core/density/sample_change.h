#pragma once

#include "core/density/distribution.h"
#include "core/density/target.h"
#include "core/season/dry_matter.h"

#include <optional>
#include <vector>

namespace treadwell::density {

/// What the loads to come are taken for.
struct CropToCome {
    samples::Belief dryMatter;
    Target target;
    AsFedDensity loose;
};

/// All that lies in a silo.
struct SiloReached {
    Distribution density;
    Chance chance;
};

/// What a dry-matter sample, or the loss of one, changed of a farm's picture.
struct SampleChange {
    std::optional<CropToCome> cropBefore;  ///< none where it is the first sample
    std::optional<CropToCome> cropNow;     ///< none where no sample is left
    std::int64_t loads = 0;                ///< already tipped, whose dry matter is another now
    std::optional<SiloReached> siloBefore;
    std::optional<SiloReached> siloNow;
};

/// `before` and `after` are the season on both sides of the change; `field` is the sample's. The silo is
/// that of the newest load. Facts that happen after `now` are not seen.
[[nodiscard]] SampleChange changeBySample(const season::Season& before, const season::Season& after,
                                          const std::optional<farm::FieldId>& field, Instant now);

/// In the order in which it matters: the crop to come, its distance from the goal, the target and the loose
/// density, then the loads tipped and the silo where they moved. `rules` hold the goal.
[[nodiscard]] std::vector<Message> messagesOf(const SampleChange& change, const farm::SiteRules& rules);

}  // namespace treadwell::density
