#pragma once

#include "core/farm/silo.h"
#include "core/quantity/relations.h"

namespace treadwell::farm {

/// The surface on which crop is spread when the silo stands `height` high: the whole floor for level layers,
/// the ramp W * z * sqrt(1 + s^2) for the progressive wedge (s the run of the ramp for one of rise).
[[nodiscard]] Area workingArea(const Silo& silo, Length height) noexcept;

/// Height of the ramp of a wedge that holds `volume` (0 or more): sqrt(2V / (n*W*s)) until it reaches the
/// planned depth, from where the ramp moves on at that height. n ramp ends share the volume.
[[nodiscard]] Length rampHeight(const Silo& silo, Volume volume) noexcept;

/// The inverse while the ramp still rises: n*W*s*z^2/2.
[[nodiscard]] Volume risingRampVolume(const Silo& silo, Length height) noexcept;

/// Volume of a level bunker with its ramps inside the length: W*H*(L - n*s*H/2).
[[nodiscard]] Volume levelVolume(const Silo& silo, Length height) noexcept;

/// Cross-section filled to the walls and crowned: W*Hw + c*(W - k*c), the sides of the crown rising 1:k.
/// Needs 2*k*c <= W.
[[nodiscard]] Area crownedSection(Length width, Length wallHeight, Length crown, Slope side) noexcept;

/// Volume of a drive-over pile, all its sides rising 1:s from a base Wb x Lb to a flat top at height H:
/// H*(Wb*Lb - s*H*(Wb + Lb) + 4/3*s^2*H^2). Needs 2*s*H <= the shorter side of the base.
[[nodiscard]] Volume pileVolume(Length baseWidth, Length baseLength, Length height, Slope side) noexcept;

}  // namespace treadwell::farm
