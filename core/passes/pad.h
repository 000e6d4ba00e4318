#pragma once

#include "core/base/error.h"
#include "core/passes/parameters.h"

#include <cstdint>
#include <span>
#include <vector>

namespace treadwell::passes {

/// The floor that is simulated, x along the silo from the back wall, y across from the left wall.
struct PadShape {
    Length length;
    Length width;
    Length cellAlong = Length::fromCentimetres(50);
    Length cellAcross = Length::fromCentimetres(25);

    [[nodiscard]] std::size_t along() const noexcept;   ///< columns in a row
    [[nodiscard]] std::size_t across() const noexcept;  ///< rows
};

/// Crop as it is spread.
struct Spread {
    DryMatter dryMatter;
    DryDensity loose;
};

/// A rectangle of the floor, held to the pad where it is used.
struct Patch {
    double x0_m, x1_m, y0_m, y1_m;
};

/// What the kernel needs to know of a layer.
struct PadLayer {
    Spread spread;
    double loose_m3_kg;      ///< specific volume as spread
    double saturated_m3_kg;  ///< no wheel presses further
    double attainable;       ///< factor of the attainable specific volume at this dry matter
};

/// A grid of columns of layers, as a structure of arrays: index = layer * columns + row * along + column,
/// layers bottom up. A column that holds nothing of a layer has no mass there. All public: plain state.
struct Pad {
    PadShape shape;
    Parameters parameters;
    std::size_t along = 0;
    std::size_t across = 0;
    std::vector<PadLayer> layers;
    std::vector<double> areal_kg_m2;    ///< dry matter
    std::vector<double> volume_m3_kg;   ///< of the dry matter, as rolled
    std::vector<std::uint16_t> passes;  ///< that rolled over it while it lay on top

    [[nodiscard]] std::size_t columns() const noexcept { return along * across; }
    [[nodiscard]] double cellArea_m2() const noexcept;
    [[nodiscard]] std::size_t indexOf(std::size_t layer, std::size_t row, std::size_t column) const noexcept {
        return layer * columns() + row * along + column;
    }
};

/// Length 1-500 m, width 3-100 m, cells 0.05-2 m. Errors: valueNotFinite, valueOutOfRange.
[[nodiscard]] Result<Pad> makePad(const PadShape& shape, const Parameters& parameters = {});

/// Begins a layer without crop. Dry matter 10-80 %, loose 30-300 kg DM/m3. Errors: valueNotFinite,
/// valueOutOfRange.
[[nodiscard]] Result<void> beginLayer(Pad& pad, const Spread& spread);

/// Tips loose crop evenly on a patch of the newest layer; a patch that holds no column's middle gives all to
/// the nearest column. Needs a layer.
void tip(Pad& pad, const Patch& patch, DryMass mass);

/// A layer of one thickness as spread, over the whole pad. Errors: those of beginLayer; thickness 1-100 cm.
[[nodiscard]] Result<void> spreadEvenly(Pad& pad, const Spread& spread, Length thickness);

enum class Direction : std::uint8_t { outward, back };  ///< along the silo, from the back wall or to it

/// A blade pushes the newest layer's crop along the rows of a patch and leaves no more than `thickness` as
/// spread; what is left over at the end stays in the last column. It moves what is loose: crop that was
/// rolled comes loose again where it is pushed. Dry matter is conserved. Needs a layer.
void blade(Pad& pad, const Patch& patch, Length thickness, Direction direction);

[[nodiscard]] DryMass dryMass(const Pad& pad);

}  // namespace treadwell::passes
