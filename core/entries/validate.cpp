#include "core/base/codes.h"
#include "core/entries/body.h"
#include "core/entries/codes.h"
#include "core/entries/density_evidence.h"
#include "core/farm/codes.h"
#include "core/quantity/range.h"
#include "core/samples/codes.h"

#include <algorithm>
#include <cmath>

namespace treadwell::entries {

Result<void> validate(const SeasonStarted& entry) {
    if (entry.farm.empty()) return fail(code::nameEmpty, "farm");
    return FarmZone::named(entry.zone).map([](const FarmZone&) {});
}

Result<void> validate(const Load& entry) {
    return holdsWithin(entry.mass, AsFedMass::fromTonnes(0.1), AsFedMass::fromTonnes(80), "mass");
}

Result<void> validate(const DryMatterSample& entry) {
    if (auto range =
            holdsWithin(entry.dryMatter, DryMatter::fromPercent(10), DryMatter::fromPercent(90), "dryMatter");
        !range) {
        return range;
    }
    if (!entry.wet || !entry.dry) return {};
    const DryMatter dish = *entry.dry / *entry.wet;
    if (!(std::abs(dish.percent() - entry.dryMatter.percent()) < 0.05)) {
        return fail(code::dishDisagrees, "dryMatter", entry.dryMatter.amount(), dish.amount());
    }
    return {};
}

Result<void> validate(const TractorWork& entry) {
    if (entry.activity != farm::Activity::away && !entry.silo) return fail(code::valueMissing, "silo");
    return holdsWithin(entry.packingShare, Share{}, Share::fromFraction(1), "packingShare");
}

Result<void> validate(const LayerSeen& entry) {
    return holdsWithin(entry.thickness, Length::fromCentimetres(2), Length::fromCentimetres(100),
                       "thickness");
}

Result<void> validate(const HeightSurvey& entry) {
    if (entry.readings.empty()) return fail(code::readingsMissing, "readings");
    for (std::size_t i = 0; i < entry.readings.size(); ++i) {
        const HeightReading& reading = entry.readings[i];
        const std::string place = "readings[" + std::to_string(i) + "].";
        const auto bounded = [&](const char* field, Length value, double metres) {
            return holdsWithin(value, Length{}, Length::fromMetres(metres), place + field);
        };
        auto held = firstFailure(bounded("along", reading.along, 500), bounded("across", reading.across, 100),
                                 bounded("height", reading.height, 12));
        if (!held) return held;
    }
    return {};
}

Result<void> validate(const Note& entry) {
    if (entry.text.empty()) return fail(code::textEmpty, "text");
    return {};
}

Result<void> validate(const RowSetAside& entry) {
    if (entry.file.empty()) return fail(code::textEmpty, "file");
    if (entry.reason.empty()) return fail(code::textEmpty, "reason");
    if (entry.line < 1) return fail(code::valueMissing, "line");
    return {};
}

Result<void> validate(const DayClosed& entry) {
    if (entry.end <= entry.begin) return fail(code::spanEmpty, "end", entry.begin, entry.end);
    return {};
}

Result<void> validate(const AdviceDecided& entry) {
    if (entry.advice.empty()) return fail(code::nameEmpty, "advice");
    const auto highest = DryDensity::fromKilogramsPerCubicMetre(1500);
    return firstFailure(holdsWithin(entry.before, DryDensity{}, highest, "before"),
                        holdsWithin(entry.after, DryDensity{}, highest, "after"));
}

Result<void> validate(const DensityEvidence& evidence) {
    const auto lowest = DryDensity::fromKilogramsPerCubicMetre(1);
    const auto highest = DryDensity::fromKilogramsPerCubicMetre(1500);
    auto held = firstFailure(holdsWithin(evidence.measured, lowest, highest, "measured"),
                             holdsWithin(evidence.predicted, lowest, highest, "predicted"),
                             holdsWithin(evidence.inputs, 0.0, 1.0, "inputs"),
                             holdsWithin(evidence.error, 1e-8, 1.0, "error"),
                             holdsWithin(evidence.layers, 1.0, 1e6, "layers"));
    if (!held) return held;
    return holdsWithin(evidence.logRatio(), -2.0, 2.0, "logRatio");
}

Result<void> validate(const SeasonCarried& entry) {
    if (entry.from.empty()) return fail(code::valueMissing, "from");
    if (entry.dryMatter) {
        auto held = holdsWithin(*entry.dryMatter, DryMatter::fromPercent(10), DryMatter::fromPercent(90),
                                "dryMatter");
        if (!held) return held;
    }
    if (!entry.evidence) return {};
    for (std::size_t i = 0; i < entry.evidence->size(); ++i) {
        const DensityEvidence& each = (*entry.evidence)[i];
        const std::string place = "evidence[" + std::to_string(i) + "].";
        const bool isNamed = std::any_of(entry.from.begin(), entry.from.end(), [&](const auto& earlier) {
            return earlier.season.value.text() == each.season;
        });
        if (!isNamed) return fail(code::valueMissing, place + "season");
        if (auto held = validate(each); !held) {
            held.error().field = place + held.error().field;
            return held;
        }
    }
    return {};
}

}  // namespace treadwell::entries
