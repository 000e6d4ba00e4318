#pragma once

#include "core/density/field_equation.h"
#include "core/density/spread.h"
#include "core/stats/student.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace treadwell::density {

/// What stays the same over a search for better packing, in SI and fractions. caseFrame() makes one;
/// estimate() itself goes through evaluateCase().
struct CaseFrame {
    double dryMatter;          ///< fraction
    double depthFactor;        ///< mean factor at the mean depth, times exp(level) of calibration
    double limit_kg_m3;        ///< saturation
    double logTarget;          ///< ln(target in kg DM/m3)
    bool porosityGoverns;      ///< the target moves with the dry matter
    double fixedVariance;      ///< site, silo, face, place and depth slope, of ln(density)
    double ordinaryInputs;     ///< the least variance through the entries
    double inputsCounted;      ///< their variance for which that stands
    double varianceDoubt;      ///< see Residual
    double wholeVariance;      ///< entries with elasticity s: machine mass and layer, of ln(entry)
    double halfVariance;       ///< entries with elasticity s/2 but for dry matter: packing time, loads
    double dryMatterVariance;  ///< of ln(dry matter)
};

/// One case. The distribution is log-normal about `uncapped` with `variance`, cut at the limit.
struct CaseValue {
    double uncapped_kg_m3;
    double density_kg_m3;  ///< median: min(uncapped, limit)
    double elasticity;     ///< of density in the packing factor
    double inputVariance;  ///< through the entries, before the ordinary part is taken from it
    double variance;       ///< of ln(density), the band's
    double score;          ///< ln(uncapped / target) in standard deviations; ranks cases as their chances do
    double degreesOfFreedom;  ///< of the score; infinite where the variances are known

    /// Chance of reaching the target.
    [[nodiscard]] double chance() const {
        if (degreesOfFreedom < kAlmostNormal) return stats::studentCdf(score, degreesOfFreedom);
        return 0.5 * std::erfc(-score / std::numbers::sqrt2);
    }
    static constexpr double kAlmostNormal = 1e6;
};

/// Elasticity of the density at a fixed porosity in dry matter (rule B9).
inline constexpr double kPorosityElasticity = 1.16;

/// Rules B2, B9 and B10 for a packing factor of 0 or more [SI, see PackingFactor]. Allocation-free; finite
/// for every finite frame.
[[nodiscard]] inline CaseValue evaluateCase(const CaseFrame& frame, double packingFactor) noexcept {
    constexpr double kLeastVariance = 1e-12;  // an entry said to be exact must not divide by zero
    CaseValue value;
    const double bracket = FieldEquation::bracket(packingFactor);
    const double s = FieldEquation::kBracketSlope * packingFactor / bracket;
    value.elasticity = s;
    value.uncapped_kg_m3 = bracket * frame.depthFactor;
    value.density_kg_m3 = std::min(value.uncapped_kg_m3, frame.limit_kg_m3);

    const double withoutDryMatter = s * s * (frame.wholeVariance + 0.25 * frame.halfVariance);
    value.inputVariance = withoutDryMatter + 0.25 * s * s * frame.dryMatterVariance;
    value.variance =
        frame.fixedVariance + frame.ordinaryInputs + std::max(0.0, value.inputVariance - frame.inputsCounted);

    // Where porosity sets the target, the dry matter moves density and target together and is counted once,
    // here.
    double chanceVariance = value.variance;
    if (frame.porosityGoverns) {
        const double together = kPorosityElasticity - 0.5 * s;
        chanceVariance = frame.fixedVariance + frame.ordinaryInputs +
                         std::max(0.0, withoutDryMatter - frame.inputsCounted) +
                         together * together * frame.dryMatterVariance;
    }
    value.score = (std::log(value.uncapped_kg_m3) - frame.logTarget) /
                  std::sqrt(std::max(chanceVariance, kLeastVariance));
    value.degreesOfFreedom = degreesOfFreedom(chanceVariance, frame.varianceDoubt);
    return value;
}

}  // namespace treadwell::density
