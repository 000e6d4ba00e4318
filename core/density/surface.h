#pragma once

#include "core/entries/height_survey.h"
#include "core/quantity/relations.h"

#include <cstdint>
#include <span>
#include <vector>

namespace treadwell::density {

/// The crop's surface over a silo's floor as heights read at points give it: a grid of cells, each with the
/// height in its middle.
struct Surface {
    int alongCells = 0;
    int acrossCells = 0;
    Length alongStep;              ///< of one cell, from the back wall forward
    Length acrossStep;             ///< from the left wall to the right
    std::vector<double> height_m;  ///< [along * acrossCells + across]; 0 where no crop lies

    Volume volume;
    Length meanDepth;           ///< integral(Z^2) / integral(Z): rule B6
    Length meanHeight;          ///< over the floor that is covered
    double volumeLogSd = 0.0;   ///< sd V / V
    std::int64_t readings = 0;  ///< on the crop, those less than a metre apart counted as one
    bool frontSeen = true;      ///< false: where the ramp ends was not read, and is put in the middle

    [[nodiscard]] Area cell() const noexcept { return alongStep * acrossStep; }
    /// Mean height across, at the middle of each cell along.
    [[nodiscard]] std::vector<Length> profile() const;
};

/// Errors of a height, metres (assumed: rule B10): of one reading, of what lies between the readings, and of
/// the floor beneath all of them.
inline constexpr double kHeightReadingSd_m = 0.04;
inline constexpr double kHeightBetweenSd_m = 0.12;
inline constexpr double kFloorSd_m = 0.02;

/// sd V / V of `readings` (1 or more) heights at a mean height above 0:
/// sqrt((.04^2 + .12^2) / n + .02^2) / mean height (rule B10).
[[nodiscard]] double volumeLogSdOf(std::int64_t readings, Length meanHeight) noexcept;

/// The surface from heights above the floor, read by whatever instrument at one or more points.
///
/// What is known of the shape stands first: a level top, the ramps at their slope, the crown's sides 1:3 from
/// the walls' edge. Between the readings their differences from that shape are interpolated, weighted by the
/// inverse fourth power of the distance. In a silo filled by layers the ramp's foot lies at the silo's
/// length; on a progressive wedge its place follows from the readings on the ramp, and where there are none
/// it is put between the last reading and the next that found no crop, with the error that this has.
/// Errors: readingsMissing; heightOutsideSilo and heightAboveSilo (more than half a metre above wall and
/// crown) name the reading; heightsWithoutCrop where all are 0.
[[nodiscard]] Result<Surface> surfaceOf(const farm::Silo& silo,
                                        std::span<const entries::HeightReading> readings);

}  // namespace treadwell::density
