#pragma once

#include "core/density/situation.h"
#include "core/farm/machines.h"

#include <optional>
#include <string>
#include <vector>

namespace treadwell::advice {

/// A tractor at the silo or standing by.
struct Tractor {
    std::string name;  ///< its own among the tractors
    MachineMass mass;
    farm::Activity activity = farm::Activity::packing;  ///< away: stands by
    Share share = Share::fromFraction(1.0);  ///< of its time in which it packs, while it is packing
    std::optional<CostRate> hourlyCost = {};
    std::optional<Length> trackWidth = {};
    std::optional<Speed> speed = {};
};

/// What advice looks at: how the silo is being packed now, and what the site asks for.
struct AdviceSituation {
    AsFedRate delivery;  ///< pace of now, rule B4
    DryMatter dryMatter;
    std::optional<Length> layer = {};  ///< as spread; none where nobody has seen it
    Length meanDepth;
    std::vector<Tractor> tractors = {};
    crop::Crop crop = crop::Crop::maize;
    density::TargetRule target = {};
    density::Options options = {};
    Chance wantedChance = Chance::fromPercent(50);
    Length maximumLayer = Length::fromCentimetres(15);
};

/// The same for the density engine; every tractor is a machine of the same index, and one that does not pack
/// has share 0.
[[nodiscard]] density::Situation densitySituation(const AdviceSituation& situation);

/// Holds every entry to its range. Errors: those of density::check(), with `machines[i]` for tractor i;
/// textEmpty and tractorNameTwice; valueOutOfRange for `wantedChance` (5-99 %), `maximumLayer` (5-40 cm)
/// and an hourly cost outside 0-2000.
[[nodiscard]] Result<void> check(const AdviceSituation& situation);

}  // namespace treadwell::advice
