#pragma once

#include "core/passes/pad.h"

#include <optional>

namespace treadwell::passes {

/// Part of the rolled density that is left once the wheels are gone, under crop that weighs `above_Pa` (0 or
/// more): crop rebounds, and the weight above holds it back.
[[nodiscard]] double restFactor(double above_Pa, const Parameters& parameters) noexcept;

/// One cell as it lies at rest.
struct CellAtRest {
    double lower_m;  ///< above the floor
    double upper_m;
    double density_kg_m3;  ///< dry; 0 where nothing lies
    double areal_kg_m2;    ///< dry
};

/// The layers of one column, bottom up, under `above_Pa` of crop that is still to come or not simulated.
[[nodiscard]] std::vector<CellAtRest> columnAtRest(const Pad& pad, std::size_t row, std::size_t column,
                                                   double above_Pa = 0.0);

/// What a plan view draws of one column.
struct ColumnPicture {
    Length height;
    DryDensity density;     ///< of the column, 0 where nothing lies
    DryDensity topDensity;  ///< of the newest layer there
    std::uint16_t passes;   ///< over the newest layer
};

/// The pad as a page draws it: in plan, row by row, along first.
struct PadPicture {
    PadShape shape;
    std::size_t along;
    std::size_t across;
    std::vector<ColumnPicture> columns;
};

[[nodiscard]] PadPicture pictureOf(const Pad& pad);

/// Dry mass over volume at rest, of the columns whose middles lie in the patch and the layers from `first`
/// up to `end`. None without crop there.
[[nodiscard]] std::optional<DryDensity> densityAtRest(const Pad& pad, const Patch& patch, std::size_t first,
                                                      std::size_t end);
[[nodiscard]] std::optional<DryDensity> densityAtRest(const Pad& pad);

/// How a layer was rolled while it lay on top: over the columns that hold crop of it.
struct Coverage {
    double meanPasses = 0.0;
    Share unrolled;
    Share threeOrMore;       ///< the least that is advised
    double variation = 0.0;  ///< of the columns' density: standard deviation over mean
};

/// Nothing rolled and 0 variation where the layer holds no crop.
[[nodiscard]] Coverage coverageOf(const Pad& pad, std::size_t layer);

}  // namespace treadwell::passes
