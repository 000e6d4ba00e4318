#include "core/density/target.h"

namespace treadwell::density {

Target targetFor(const TargetRule& rule, DryMatter dryMatter, crop::Crop crop) {
    const auto solids = crop::Solids::fromOrganicMatter(crop::factsOf(crop).organicMatter);
    Target target;
    target.minimum = rule.minimum;
    target.atPorosity = crop::densityAtPorosity(rule.porosity, dryMatter, solids);
    target.limit = limitOf(dryMatter, crop);
    const bool byPorosity = target.atPorosity > target.minimum;
    target.density = byPorosity ? target.atPorosity : target.minimum;
    target.governs = byPorosity ? Governs::porosity : Governs::minimum;
    if (target.density > target.limit.density) {
        target.density = target.limit.density;
        target.governs = Governs::saturation;
    }
    return target;
}

}  // namespace treadwell::density
