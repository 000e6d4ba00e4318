#include "core/crop/porosity.h"

#include "core/crop/codes.h"
#include "core/quantity/range.h"

#include <limits>

namespace treadwell::crop {

Result<Porosity> porosity(DryDensity density, DryMatter dryMatter, Solids solids) {
    const DryMatter almostNone = DryMatter::fromFraction(1e-6);
    if (const auto held = within(dryMatter, almostNone, DryMatter::fromFraction(1.0), "dryMatter"); !held) {
        return tl::unexpected{held.error()};
    }
    const DryDensity most = DryDensity::fromSi(std::numeric_limits<double>::max());
    if (const auto held = within(density, DryDensity{}, most, "density"); !held) {
        return tl::unexpected{held.error()};
    }
    const DryDensity poreFree = poreFreeDensity(dryMatter, solids);
    if (density > poreFree) {
        return fail(code::densityImpossible, "density", density.amount(), dryMatter.amount(),
                    poreFree.amount());
    }
    return Porosity::fromFraction(1.0 - density / poreFree);
}

}  // namespace treadwell::crop
