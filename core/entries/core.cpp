#include "core/entries/core.h"

#include "core/base/codes.h"
#include "core/entries/codes.h"
#include "core/quantity/range.h"

#include <numbers>

namespace treadwell::entries {

namespace {

std::optional<Volume> volumeOf(const Core& core) {
    if (core.volume || !core.diameter || !core.length) return core.volume;
    const Area section = *core.diameter * *core.diameter * (std::numbers::pi / 4.0);
    return section * *core.length;
}

template <class Q>
Result<void> heldIfAny(const std::optional<Q>& value, Q lowest, Q highest, const char* field) {
    return value ? holdsWithin(*value, lowest, highest, field) : Result<void>{};
}

Result<void> checkRanges(const Core& core) {
    const auto metres = [](double value) { return Length::fromMetres(value); };
    return firstFailure(
        holdsWithin(core.along, Length{}, metres(500), "along"),
        holdsWithin(core.across, Length{}, metres(100), "across"),
        heldIfAny(core.depth, Length{}, metres(12), "depth"),
        heldIfAny(core.height, Length{}, metres(12), "height"),
        heldIfAny(core.dryMatter, DryMatter::fromPercent(10), DryMatter::fromPercent(90), "dryMatter"),
        heldIfAny(core.mass, AsFedMass::fromKilograms(0.001), AsFedMass::fromTonnes(5), "mass"),
        heldIfAny(core.volume, Volume::fromSi(1e-5), Volume::fromSi(10), "volume"),
        heldIfAny(core.diameter, metres(0.01), metres(0.5), "diameter"),
        heldIfAny(core.length, metres(0.02), metres(3), "length"));
}

}  // namespace

std::optional<DryDensity> Core::dryDensity() const {
    if (origin == CoreOrigin::loaderRemoved) return std::nullopt;
    if (density) return density;
    const auto room = volumeOf(*this);
    if (!mass || !dryMatter || !room) return std::nullopt;
    return *mass * *dryMatter / *room;
}

Result<void> validate(const Core& entry) {
    if (auto held = checkRanges(entry); !held) return held;
    if (entry.depth.has_value() == entry.height.has_value()) return fail(code::coreHeightUnclear, "depth");
    if (entry.origin == CoreOrigin::loaderRemoved) {
        if (!entry.dryMatter) return fail(code::valueMissing, "dryMatter");
        return {};
    }
    const bool byTool = entry.diameter || entry.length;
    const int ways = (entry.density ? 1 : 0) + (entry.volume ? 1 : 0) + (byTool ? 1 : 0);
    const auto density = entry.dryDensity();
    if (ways != 1 || !density) return fail(code::coreDensityUnclear, "density");
    return holdsWithin(*density, DryDensity::fromKilogramsPerCubicMetre(30),
                       DryDensity::fromKilogramsPerCubicMetre(900), "density");
}

}  // namespace treadwell::entries
