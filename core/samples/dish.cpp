#include "core/samples/dish.h"

#include "core/base/codes.h"
#include "core/samples/codes.h"
#include "core/samples/grams.h"
#include "core/samples/item.h"

#include <cmath>

namespace treadwell::samples {

namespace {

constexpr DryMass kScaleNoise = DryMass::fromKilograms(0.0005);

Seconds heatAfter(std::size_t weighings) {
    using namespace std::chrono_literals;
    if (weighings == 0) return 3min;
    return weighings == 1 ? Seconds{1min} : Seconds{30s};
}

Result<void> checkWeighings(AsFedMass wet, std::span<const DryMass> weighings) {
    for (std::size_t i = 0; i < weighings.size(); ++i) {
        const std::string field = item("weighings", i);
        const DryMass weighing = weighings[i];
        if (!std::isfinite(weighing.si())) return fail(code::valueNotFinite, field);
        if (!(weighing > DryMass{} && weighing.si() < wet.si()))
            return fail(code::dishImpossible, field, gramsOf(wet), gramsOf(weighing));
        if (i > 0 && weighing > weighings[i - 1] + kScaleNoise)
            return fail(code::weighingGained, field, gramsOf(weighing), gramsOf(weighings[i - 1]));
    }
    return {};
}

}  // namespace

Result<DryMatter> dryMatterOfDish(AsFedMass wet, DryMass dry) {
    if (!std::isfinite(wet.si())) return fail(code::valueNotFinite, "wet");
    if (!std::isfinite(dry.si())) return fail(code::valueNotFinite, "dry");
    if (!(dry > DryMass{} && dry.si() < wet.si()))
        return fail(code::dishImpossible, "dry", gramsOf(wet), gramsOf(dry));
    return dry / wet;
}

Result<AsFedMass> netOfDish(AsFedMass gross, AsFedMass dish) {
    if (!std::isfinite(gross.si())) return fail(code::valueNotFinite, "gross");
    if (!std::isfinite(dish.si())) return fail(code::valueNotFinite, "dish");
    if (!(dish >= AsFedMass{} && gross > dish))
        return fail(code::grossBelowTare, "gross", gramsOf(gross), gramsOf(dish));
    return gross - dish;
}

Result<DryingStep> nextDryingStep(AsFedMass wet, std::span<const DryMass> weighings) {
    const auto held = holdsGrams(wet, AsFedMass::fromKilograms(0.020), AsFedMass::fromKilograms(1), "wet");
    if (!held) return Unexpected{held.error()};
    if (const auto checked = checkWeighings(wet, weighings); !checked) return Unexpected{checked.error()};
    DryingStep step;
    step.small = wet < kSmallestMicrowaveSample;
    step.heat = heatAfter(weighings.size());
    if (weighings.empty()) return step;
    step.dryMatter = weighings.back() / wet;
    if (weighings.size() < 2) return step;
    step.lastLoss = weighings[weighings.size() - 2] - weighings.back();
    step.isDry = *step.lastLoss < kDryEnough;
    if (step.isDry) step.heat = Seconds{0};
    return step;
}

}  // namespace treadwell::samples
