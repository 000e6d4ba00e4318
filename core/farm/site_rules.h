#pragma once

#include "core/base/error.h"
#include "core/base/instant.h"
#include "core/quantity/fraction.h"
#include "core/quantity/geometry.h"
#include "core/quantity/mass.h"
#include "core/samples/sieve.h"

#include <optional>

namespace treadwell::farm {

/// What the person in charge has set for this site: goals and limits that change what is computed or said.
struct SiteRules {
    DryDensity minimumDensity = DryDensity::fromKilogramsPerCubicMetre(225);
    Porosity porosityGoal = Porosity::fromFraction(0.40);
    Chance wantedChance = Chance::fromPercent(50);
    Length maximumLayer = Length::fromCentimetres(15);
    DryMatter dryMatterLow = DryMatter::fromPercent(34);
    DryMatter dryMatterHigh = DryMatter::fromPercent(36);
    Seconds sampleInterval = std::chrono::hours{1};  ///< a sample older than this is overdue
    Seconds rateWindow = std::chrono::minutes{60};   ///< of the delivery rate that is displayed
    std::optional<DryDensity> fillingDensity;        ///< usual while filling; none: the minimum

    std::optional<Share> sieveLoss;  ///< of a sample, that goes unremarked; none: the usual

    [[nodiscard]] Share sieveLossLimit() const noexcept {
        return sieveLoss.value_or(samples::kUsualSieveLoss);
    }

    /// What a ramp is taken to hold until its height is read; never the estimate itself.
    [[nodiscard]] DryDensity usualFilling() const noexcept { return fillingDensity.value_or(minimumDensity); }

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("dry_matter_high", self.dryMatterHigh);
        visit("dry_matter_low", self.dryMatterLow);
        visit("filling_density_kg_dm_m3", self.fillingDensity);
        visit("maximum_layer_m", self.maximumLayer);
        visit("minimum_density_kg_dm_m3", self.minimumDensity);
        visit("porosity_goal", self.porosityGoal);
        visit("rate_window_s", self.rateWindow);
        visit("sample_interval_s", self.sampleInterval);
        visit("sieve_loss", self.sieveLoss);
        visit("wanted_chance", self.wantedChance);
    }
    friend bool operator==(const SiteRules&, const SiteRules&) = default;
};

/// Densities 100-400 kg DM/m3, porosity 0.2-0.6, chance 5-99 %, layer 5-40 cm, dry matter 15-70 %, low below
/// high, interval and window 5 min to 24 h, a loss of 0-50 % at the sieves.
[[nodiscard]] Result<void> validate(const SiteRules& rules);

}  // namespace treadwell::farm
