#include "core/density/estimate.h"

#include "core/density/messages.h"

#include <cmath>

namespace treadwell::density {

Result<Estimate> estimate(const Situation& situation, const Options& options) {
    if (const auto checked = check(situation, options); !checked) return tl::unexpected{checked.error()};
    Packing packed = packingOf(machineWork(situation), layerUsed(situation), situation.dryMatter);
    const SpreadParts fixed =
        fixedParts(options.residual, options.reading, options.effectiveLayers, situation.meanDepth);
    return estimateFrom(situation, options, caseFrame(situation, options), std::move(packed), fixed, {});
}

Estimate estimateFrom(const Situation& situation, const Options& options, const CaseFrame& frame,
                      Packing packing, const SpreadParts& fixed, const Grounds& grounds) {
    const Target target = targetFor(situation.target, situation.dryMatter, situation.crop);
    const CaseValue value = evaluateCase(frame, packing.factor.si);
    SpreadParts spread = fixed;
    setInputs(spread, options.residual, value.inputVariance);

    const Distribution density{{value.uncapped_kg_m3, std::sqrt(value.variance)},
                               target.limit.density,
                               degreesOfFreedom(value.variance, options.residual.varianceDoubt)};
    const auto solids = crop::Solids::fromOrganicMatter(crop::factsOf(situation.crop).organicMatter);
    Estimate result{.density = density,
                    .porosity = {density, crop::poreFreeDensity(situation.dryMatter, solids)},
                    .chance = Chance::fromFraction(value.chance()),
                    .target = target,
                    .packing = std::move(packing),
                    .layer = layerUsed(situation),
                    .elasticity = value.elasticity,
                    .spread = spread,
                    .inputs = inputParts(inputSpread(situation, options), value.elasticity),
                    .yardsticks = {},
                    .warnings = {},
                    .working = {}};
    const bool saturated = density.isLimited() && target.limit.saturation;
    result.yardsticks = yardsticksFor(situation, result.packing.factor, density.median(), saturated, target);
    result.warnings = warningsOf(situation, result);
    result.working = workingOf(situation, options, result, grounds);
    return result;
}

}  // namespace treadwell::density
