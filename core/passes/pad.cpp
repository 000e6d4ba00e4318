#include "core/passes/pad.h"

#include "core/crop/saturation.h"
#include "core/quantity/range.h"

#include <algorithm>
#include <cmath>

namespace treadwell::passes {

namespace {

/// The columns of one axis whose middles lie in [from, to), at least one.
struct Cells {
    std::size_t first;
    std::size_t end;
};

Cells cellsIn(double from_m, double to_m, double cell_m, std::size_t count) {
    const auto held = [&](double edge_m) {
        const double cell = std::ceil(edge_m / cell_m - 0.5);
        return static_cast<std::size_t>(std::clamp(cell, 0.0, static_cast<double>(count)));
    };
    Cells cells{held(from_m), held(to_m)};
    if (cells.end <= cells.first) {
        cells.first = std::min(cells.first, count - 1);
        cells.end = cells.first + 1;
    }
    return cells;
}

/// Puts loose crop onto a cell of a layer; what lay there keeps its volume.
void addLoose(Pad& pad, std::size_t cell, double areal_kg_m2, double loose_m3_kg) {
    const double before = pad.areal_kg_m2[cell];
    const double after = before + areal_kg_m2;
    if (after <= 0.0) return;
    pad.volume_m3_kg[cell] = (before * pad.volume_m3_kg[cell] + areal_kg_m2 * loose_m3_kg) / after;
    pad.areal_kg_m2[cell] = after;
}

std::size_t cellsOf(Length whole, Length cell) {
    return static_cast<std::size_t>(std::max(1.0, std::round(whole.si() / cell.si())));
}

}  // namespace

std::size_t PadShape::along() const noexcept {
    return cellsOf(length, cellAlong);
}

std::size_t PadShape::across() const noexcept {
    return cellsOf(width, cellAcross);
}

double Pad::cellArea_m2() const noexcept {
    return shape.length.si() * shape.width.si() / static_cast<double>(columns());
}

Result<Pad> makePad(const PadShape& shape, const Parameters& parameters) {
    const auto metres = [](double m) { return Length::fromMetres(m); };
    const auto checked = firstFailure(holdsWithin(shape.length, metres(1), metres(500), "length"),
                                      holdsWithin(shape.width, metres(3), metres(100), "width"),
                                      holdsWithin(shape.cellAlong, metres(0.05), metres(2), "cell_along"),
                                      holdsWithin(shape.cellAcross, metres(0.05), metres(2), "cell_across"));
    if (!checked) return Unexpected{checked.error()};
    Pad pad;
    pad.shape = shape;
    pad.parameters = parameters;
    pad.along = shape.along();
    pad.across = shape.across();
    // Cells are made to fill the floor exactly.
    pad.shape.cellAlong = shape.length / static_cast<double>(pad.along);
    pad.shape.cellAcross = shape.width / static_cast<double>(pad.across);
    return pad;
}

Result<void> beginLayer(Pad& pad, const Spread& spread) {
    const auto density = [](double value) { return DryDensity::fromKilogramsPerCubicMetre(value); };
    const auto checked = firstFailure(
        holdsWithin(spread.dryMatter, DryMatter::fromPercent(10), DryMatter::fromPercent(80), "dry_matter"),
        holdsWithin(spread.loose, density(30), density(300), "loose"));
    if (!checked) return checked;
    PadLayer layer{};
    layer.spread = spread;
    layer.loose_m3_kg = 1.0 / spread.loose.si();
    const DryMatter known = std::clamp(spread.dryMatter, crop::kSaturationFrom, crop::kSaturationTo);
    layer.saturated_m3_kg = std::min(1.0 / crop::saturationLimit(known)->si(), layer.loose_m3_kg);
    layer.attainable = std::pow(0.35 / spread.dryMatter.si(), pad.parameters.dryMatterExponent);
    pad.layers.push_back(layer);
    const std::size_t cells = pad.layers.size() * pad.columns();
    pad.areal_kg_m2.resize(cells, 0.0);
    pad.volume_m3_kg.resize(cells, layer.loose_m3_kg);
    pad.passes.resize(cells, 0);
    return {};
}

void tip(Pad& pad, const Patch& patch, DryMass mass) {
    const Cells columns = cellsIn(patch.x0_m, patch.x1_m, pad.shape.cellAlong.si(), pad.along);
    const Cells rows = cellsIn(patch.y0_m, patch.y1_m, pad.shape.cellAcross.si(), pad.across);
    const auto cells = static_cast<double>((columns.end - columns.first) * (rows.end - rows.first));
    const double areal_kg_m2 = mass.si() / (cells * pad.cellArea_m2());
    const std::size_t layer = pad.layers.size() - 1;
    for (std::size_t row = rows.first; row < rows.end; ++row) {
        for (std::size_t column = columns.first; column < columns.end; ++column) {
            addLoose(pad, pad.indexOf(layer, row, column), areal_kg_m2, pad.layers[layer].loose_m3_kg);
        }
    }
}

Result<void> spreadEvenly(Pad& pad, const Spread& spread, Length thickness) {
    const auto checked =
        holdsWithin(thickness, Length::fromCentimetres(1), Length::fromCentimetres(100), "thickness");
    if (!checked) return checked;
    if (const auto begun = beginLayer(pad, spread); !begun) return begun;
    const auto first = pad.areal_kg_m2.end() - static_cast<std::ptrdiff_t>(pad.columns());
    std::fill(first, pad.areal_kg_m2.end(), spread.loose.si() * thickness.si());
    return {};
}

void blade(Pad& pad, const Patch& patch, Length thickness, Direction direction) {
    const Cells columns = cellsIn(patch.x0_m, patch.x1_m, pad.shape.cellAlong.si(), pad.along);
    const Cells rows = cellsIn(patch.y0_m, patch.y1_m, pad.shape.cellAcross.si(), pad.across);
    const std::size_t layer = pad.layers.size() - 1;
    const double loose_m3_kg = pad.layers[layer].loose_m3_kg;
    const double most_kg_m2 = thickness.si() / loose_m3_kg;
    const std::size_t count = columns.end - columns.first;
    for (std::size_t row = rows.first; row < rows.end; ++row) {
        double carried_kg_m2 = 0.0;
        for (std::size_t step = 0; step < count; ++step) {
            const std::size_t column =
                direction == Direction::outward ? columns.first + step : columns.end - 1 - step;
            const std::size_t cell = pad.indexOf(layer, row, column);
            const double surplus_kg_m2 = pad.areal_kg_m2[cell] - most_kg_m2;
            if (surplus_kg_m2 > 0.0) {
                pad.areal_kg_m2[cell] = most_kg_m2;
                carried_kg_m2 += surplus_kg_m2;
            } else if (carried_kg_m2 > 0.0) {
                const double left_kg_m2 = std::min(carried_kg_m2, -surplus_kg_m2);
                addLoose(pad, cell, left_kg_m2, loose_m3_kg);
                carried_kg_m2 -= left_kg_m2;
            }
            if (step + 1 == count) addLoose(pad, cell, carried_kg_m2, loose_m3_kg);
        }
    }
}

DryMass dryMass(const Pad& pad) {
    double areal_kg_m2 = 0.0;
    for (const double cell : pad.areal_kg_m2) areal_kg_m2 += cell;
    return DryMass::fromKilograms(areal_kg_m2 * pad.cellArea_m2());
}

}  // namespace treadwell::passes
