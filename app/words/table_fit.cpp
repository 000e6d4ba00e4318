#include "app/words/table_fit.h"

#include <algorithm>
#include <numeric>

namespace treadwell::words {

namespace {

std::size_t needed(const TableNeeds& needs, const std::vector<std::size_t>& columns) {
    std::size_t sum = columns.empty() ? 0 : needs.gap * (columns.size() - 1);
    for (const std::size_t c : columns) sum += needs.least[c];
    return sum;
}

std::vector<std::size_t> fitted(const TableNeeds& needs, const std::vector<std::size_t>& columns,
                                std::size_t width) {
    std::vector<std::size_t> widths;
    for (const std::size_t c : columns) widths.push_back(needs.least[c]);
    std::size_t used = needed(needs, columns);
    while (used > width) {
        const auto widest = std::max_element(widths.begin(), widths.end());
        if (widest == widths.end() || *widest <= needs.narrowest) break;
        --*widest;
        --used;
    }
    while (used < width) {
        std::size_t neediest = 0, need = 0;
        for (std::size_t i = 0; i < columns.size(); ++i) {
            const std::size_t most = needs.most[columns[i]];
            const std::size_t lacks = most - std::min(widths[i], most);
            if (lacks > need) {
                need = lacks;
                neediest = i;
            }
        }
        if (need == 0) break;
        ++widths[neediest];
        ++used;
    }
    return widths;
}

}  // namespace

std::vector<Band> fittedBands(const TableNeeds& needs, std::size_t width) {
    std::vector<std::size_t> names(std::min(needs.names, needs.least.size()));
    std::iota(names.begin(), names.end(), std::size_t{0});
    std::vector<Band> bands;
    Band band{names, {}};
    for (std::size_t c = names.size(); c < needs.least.size(); ++c) {
        std::vector<std::size_t> wider = band.columns;
        wider.push_back(c);
        if (band.columns.size() > names.size() && needed(needs, wider) > width) {
            bands.push_back(std::move(band));
            wider = names;
            wider.push_back(c);
        }
        band.columns = std::move(wider);
    }
    bands.push_back(std::move(band));
    for (Band& each : bands) each.widths = fitted(needs, each.columns, width);
    return bands;
}

}  // namespace treadwell::words
