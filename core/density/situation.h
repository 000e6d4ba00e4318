#pragma once

#include "core/base/error.h"
#include "core/density/kernel.h"
#include "core/density/packing_factor.h"
#include "core/density/spread.h"
#include "core/density/target.h"
#include "core/packing/layers.h"
#include "core/samples/dry_matter.h"

#include <algorithm>
#include <optional>
#include <variant>
#include <vector>

namespace treadwell::density {

struct Machine {
    MachineMass mass;
    Share share = Share::fromFraction(1.0);  ///< of the interval in which it packs; spreading counts nothing
    std::optional<Length> trackWidth = {};   ///< both sides together
    std::optional<Speed> speed = {};
};

/// What was packed: a mass as fed and each machine's packing time on it, in the order of Situation::machines.
struct PackedMass {
    AsFedMass mass;
    std::vector<Seconds> packing;
    std::optional<AsFedRate> delivery = {};  ///< at which such mass comes now, for the rules on packing mass
};

/// How long the machines pack each tonne: a delivery, with their shares of the time; the time of all of them
/// together for each tonne, divided by their shares; or each machine's own time on a mass.
using Work = std::variant<AsFedRate, PackingIntensity, PackedMass>;

struct Situation {
    Work work;
    DryMatter dryMatter;
    std::optional<Length> layer =
        {};            ///< thickness as spread; where not seen kAssumedLayer is used, and said
    Length meanDepth;  ///< integral(Z^2) / integral(Z) of the silo: rule B6
    std::vector<Machine> machines = {};
    crop::Crop crop = crop::Crop::maize;
    TargetRule target = {};
};

/// Standard deviations of ln(entry); where none is given the default below stands.
struct EntrySpread {
    std::optional<double> machineMass = {};
    std::optional<double> layer = {};
    std::optional<double> packingTime = {};
    std::optional<double> loadMass = {};  ///< 0 by default: of a typed-in rate packingTime holds it
    std::optional<double> dryMatter = {};
};

inline constexpr double kMachineMassLogSd = 0.05;   ///< assumed
inline constexpr double kPackingTimeLogSd = 0.10;   ///< assumed
inline constexpr double kLayerSeenLogSd = 0.15;     ///< rule B5
inline constexpr double kLayerByLoadsLogSd = 0.20;  ///< rule B5: "k loads cover the surface"
inline constexpr double kLayerAssumedLogSd = 0.30;  ///< rule B5
inline constexpr double kDryMatterMethodLogSd = 0.015;

inline constexpr Length kAssumedLayer = packing::kAssumedThickness;
inline constexpr Length kThinnestLayer =
    Length::fromCentimetres(10);  ///< the equation has 1/L: held to these
inline constexpr Length kThickestLayer = Length::fromCentimetres(40);

struct Options {
    Reading reading = Reading::silo;
    double effectiveLayers = 1.0;  ///< for Reading::day, 1 or more
    Residual residual = {};        ///< the survey's, or what calibration made of it
    EntrySpread entries = {};
};

/// sd of ln(dry matter) of what samples say within `sd`: and 1.5 % for the method (rule B10).
[[nodiscard]] double dryMatterLogSd(DryMatter dryMatter, DryMatter sd) noexcept;

/// Holds every entry to what can be meant, so that all that follows is finite. Errors: valueNotFinite,
/// valueOutOfRange and packingTimesMismatch, each with the entry's field, as `machines[1].mass`.
[[nodiscard]] Result<void> check(const Situation& situation, const Options& options);

// The following take a situation that check() has passed.

/// Each machine's packing for a tonne as fed.
[[nodiscard]] std::vector<MachineWork> machineWork(const Situation& situation);

/// A thickness as spread held to what the equation takes, 10-40 cm.
[[nodiscard]] constexpr Length heldLayer(Length thickness) noexcept {
    return std::clamp(thickness, kThinnestLayer, kThickestLayer);
}

/// The thickness the equation is given: seen or assumed, held to 10-40 cm.
[[nodiscard]] Length layerUsed(const Situation& situation) noexcept;

[[nodiscard]] InputSpread inputSpread(const Situation& situation, const Options& options) noexcept;

/// For searches: everything but the packing factor.
[[nodiscard]] CaseFrame caseFrame(const Situation& situation, const Options& options);

}  // namespace treadwell::density
