#pragma once

#include "core/quantity/relations.h"

namespace treadwell::outcome {

/// How a surface is covered in sheets laid across it. Lengths above 0, sheets wider than their overlap.
struct SheetRule {
    Length width;    ///< of a sheet as delivered
    Length overlap;  ///< of neighbours: 1.2-1.8 m (published)
    Length edge;     ///< beyond the surface on each side; wall film at least 2 m over the top (published)

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("edge_m", self.edge);
        visit("overlap_m", self.overlap);
        visit("sheet_width_m", self.width);
    }
    friend bool operator==(const SheetRule&, const SheetRule&) = default;
};

struct Sheets {
    int count = 0;
    Area area;  ///< of all sheets
    Area laps;  ///< where two lie on each other; these get double weight (published)
};

/// Sheets side by side over a surface `along` by `across`, both on the slope and above 0: the fewest n with
/// n*width - (n-1)*overlap >= along + 2*edge, each across + 2*edge long.
[[nodiscard]] Sheets sheetsOver(Length along, Length across, const SheetRule& rule) noexcept;

/// Part of the exposed dry matter that is lost by waiting to cover: up to 11 % for 4 days (Bruening et al.
/// 2018, published), in proportion below (assumed); held there beyond. `days` 0 or more.
[[nodiscard]] Loss waitingLoss(double days) noexcept;
inline constexpr double kLongestWait_days = 4.0;

}  // namespace treadwell::outcome
