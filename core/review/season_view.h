#pragma once

#include "core/density/readings.h"
#include "core/review/day_view.h"

namespace treadwell::review {

/// A season as it stands at its end, silo by silo.
struct SeasonView {
    const season::Season& season;
    Instant until;
    std::map<farm::SiloId, density::Readings> readings;

    [[nodiscard]] std::string nameOf(farm::SiloId silo) const { return nameText(season.farm().silos, silo); }
    [[nodiscard]] std::string dayOf(Instant at) const { return toIso8601(season.zone().dayOf(at)); }
};

inline void appendBand(std::vector<Cell>& row, const density::Distribution& density) {
    for (const DryDensity end : {density.median(), density.low80(), density.high80()})
        row.emplace_back(end.amount());
}

// Sections of the season review that look within its days.
[[nodiscard]] Section shiftsSideOf(const SeasonView& view);
[[nodiscard]] Section limitsOf(const SeasonView& view);

}  // namespace treadwell::review
