#include "core/passes/rest.h"

#include "core/packing/passes.h"

#include <algorithm>
#include <cmath>

namespace treadwell::passes {

namespace {

/// Calls `see(layer, cell at rest, thickness)` from the top down.
template <class See>
void fromTheTop(const Pad& pad, std::size_t place, double above_Pa, See see) {
    for (std::size_t layer = pad.layers.size(); layer-- > 0;) {
        const std::size_t cell = layer * pad.columns() + place;
        const double areal_kg_m2 = pad.areal_kg_m2[cell];
        const double weight_Pa = areal_kg_m2 / pad.layers[layer].spread.dryMatter.si() * kGravity_m_s2;
        const double density_kg_m3 =
            restFactor(above_Pa + 0.5 * weight_Pa, pad.parameters) / pad.volume_m3_kg[cell];
        above_Pa += weight_Pa;
        see(layer, density_kg_m3, areal_kg_m2);
    }
}

struct Sum {
    double mass_kg_m2 = 0.0;
    double height_m = 0.0;

    void add(double density_kg_m3, double areal_kg_m2) {
        mass_kg_m2 += areal_kg_m2;
        height_m += areal_kg_m2 / density_kg_m3;
    }
    [[nodiscard]] DryDensity density() const {
        return DryDensity::fromSi(height_m > 0.0 ? mass_kg_m2 / height_m : 0.0);
    }
};

bool lies(double from_m, double to_m, double cell_m, std::size_t index) {
    const double middle_m = (static_cast<double>(index) + 0.5) * cell_m;
    return from_m <= middle_m && middle_m < to_m;
}

}  // namespace

double restFactor(double above_Pa, const Parameters& parameters) noexcept {
    return std::min(parameters.restAtSurface + parameters.restPerPascal * above_Pa, parameters.restMost);
}

std::vector<CellAtRest> columnAtRest(const Pad& pad, std::size_t row, std::size_t column, double above_Pa) {
    std::vector<CellAtRest> cells(pad.layers.size());
    fromTheTop(pad, row * pad.along + column, above_Pa,
               [&](std::size_t layer, double density_kg_m3, double areal_kg_m2) {
                   cells[layer] = {0.0, 0.0, areal_kg_m2 > 0.0 ? density_kg_m3 : 0.0, areal_kg_m2};
               });
    double height_m = 0.0;
    for (CellAtRest& cell : cells) {
        cell.lower_m = height_m;
        if (cell.areal_kg_m2 > 0.0) height_m += cell.areal_kg_m2 / cell.density_kg_m3;
        cell.upper_m = height_m;
    }
    return cells;
}

PadPicture pictureOf(const Pad& pad) {
    PadPicture picture{pad.shape, pad.along, pad.across, {}};
    picture.columns.reserve(pad.columns());
    for (std::size_t place = 0; place < pad.columns(); ++place) {
        Sum sum;
        ColumnPicture column{};
        fromTheTop(pad, place, 0.0, [&](std::size_t layer, double density_kg_m3, double areal_kg_m2) {
            if (areal_kg_m2 <= 0.0) return;
            if (sum.mass_kg_m2 == 0.0) {
                column.topDensity = DryDensity::fromSi(density_kg_m3);
                column.passes = pad.passes[layer * pad.columns() + place];
            }
            sum.add(density_kg_m3, areal_kg_m2);
        });
        column.height = Length::fromMetres(sum.height_m);
        column.density = sum.density();
        picture.columns.push_back(column);
    }
    return picture;
}

std::optional<DryDensity> densityAtRest(const Pad& pad, const Patch& patch, std::size_t first,
                                        std::size_t end) {
    Sum sum;
    for (std::size_t row = 0; row < pad.across; ++row) {
        if (!lies(patch.y0_m, patch.y1_m, pad.shape.cellAcross.si(), row)) continue;
        for (std::size_t column = 0; column < pad.along; ++column) {
            if (!lies(patch.x0_m, patch.x1_m, pad.shape.cellAlong.si(), column)) continue;
            fromTheTop(pad, row * pad.along + column, 0.0,
                       [&](std::size_t layer, double density_kg_m3, double areal_kg_m2) {
                           if (layer >= first && layer < end) sum.add(density_kg_m3, areal_kg_m2);
                       });
        }
    }
    if (sum.mass_kg_m2 <= 0.0) return std::nullopt;
    return sum.density();
}

std::optional<DryDensity> densityAtRest(const Pad& pad) {
    return densityAtRest(pad, {0.0, pad.shape.length.si(), 0.0, pad.shape.width.si()}, 0, pad.layers.size());
}

Coverage coverageOf(const Pad& pad, std::size_t layer) {
    double cells = 0.0, passes = 0.0, unrolled = 0.0, three = 0.0, sum = 0.0, squares = 0.0;
    for (std::size_t place = 0; place < pad.columns(); ++place) {
        const std::size_t cell = layer * pad.columns() + place;
        if (pad.areal_kg_m2[cell] <= 0.0) continue;
        const double density_kg_m3 = 1.0 / pad.volume_m3_kg[cell];
        cells += 1.0;
        passes += pad.passes[cell];
        unrolled += pad.passes[cell] == 0 ? 1.0 : 0.0;
        three += pad.passes[cell] >= packing::kLeastPasses ? 1.0 : 0.0;
        sum += density_kg_m3;
        squares += density_kg_m3 * density_kg_m3;
    }
    if (cells == 0.0) return {0.0, {}, {}, 0.0};
    const double mean = sum / cells;
    return {passes / cells, Share::fromFraction(unrolled / cells), Share::fromFraction(three / cells),
            std::sqrt(std::max(0.0, squares / cells - mean * mean)) / mean};
}

}  // namespace treadwell::passes
