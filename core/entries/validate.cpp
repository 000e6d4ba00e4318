#include "core/entries/body.h"
#include "core/quantity/range.h"

#include <cmath>

namespace treadwell::entries {

namespace {

template <class Q>
Result<void> holds(std::string field, Q value, Q lowest, Q highest) {
    return within(value, lowest, highest, std::move(field)).map([](Q) {});
}

}  // namespace

Result<void> validate(const SeasonStarted& entry) {
    if (entry.farm.empty()) return fail(Code::nameEmpty, "farm");
    return FarmZone::named(entry.zone).map([](const FarmZone&) {});
}

Result<void> validate(const Load& entry) {
    return holds("mass", entry.mass, AsFedMass::fromTonnes(0.1), AsFedMass::fromTonnes(80));
}

Result<void> validate(const DryMatterSample& entry) {
    if (auto range =
            holds("dryMatter", entry.dryMatter, DryMatter::fromPercent(10), DryMatter::fromPercent(90));
        !range) {
        return range;
    }
    if (!entry.wet || !entry.dry) return {};
    const DryMatter dish = DryMatter::fromFraction(entry.dry->si() / entry.wet->si());
    if (!(std::abs(dish.percent() - entry.dryMatter.percent()) < 0.05)) {
        return fail(Code::dishDisagrees, "dryMatter", entry.dryMatter.amount(), dish.amount());
    }
    return {};
}

Result<void> validate(const TractorWork& entry) {
    if (entry.activity != farm::Activity::away && !entry.silo) return fail(Code::valueMissing, "silo");
    return holds("packingShare", entry.packingShare, Share{}, Share::fromFraction(1));
}

Result<void> validate(const LayerSeen& entry) {
    return holds("thickness", entry.thickness, Length::fromCentimetres(2), Length::fromCentimetres(100));
}

Result<void> validate(const HeightSurvey& entry) {
    if (entry.readings.empty()) return fail(Code::readingsMissing, "readings");
    for (std::size_t i = 0; i < entry.readings.size(); ++i) {
        const HeightReading& reading = entry.readings[i];
        const std::string place = "readings[" + std::to_string(i) + "].";
        const auto bounded = [&](const char* field, Length value, double metres) {
            return holds(place + field, value, Length{}, Length::fromMetres(metres));
        };
        if (auto along = bounded("along", reading.along, 500); !along) return along;
        if (auto across = bounded("across", reading.across, 100); !across) return across;
        if (auto height = bounded("height", reading.height, 12); !height) return height;
    }
    return {};
}

Result<void> validate(const Note& entry) {
    if (entry.text.empty()) return fail(Code::textEmpty, "text");
    return {};
}

Result<void> validate(const DayClosed& entry) {
    if (entry.end <= entry.begin) return fail(Code::spanEmpty, "end", entry.begin, entry.end);
    return {};
}

Result<void> validate(const AdviceDecided& entry) {
    if (entry.advice.empty()) return fail(Code::nameEmpty, "advice");
    const auto highest = DryDensity::fromKilogramsPerCubicMetre(1500);
    if (auto before = holds("before", entry.before, DryDensity{}, highest); !before) return before;
    return holds("after", entry.after, DryDensity{}, highest);
}

}  // namespace treadwell::entries
