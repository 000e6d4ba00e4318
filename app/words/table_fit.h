#pragma once

#include <cstddef>
#include <vector>

namespace treadwell::words {

/// Columns of a table that stand side by side, and how wide each is, in letters or dots.
struct Band {
    std::vector<std::size_t> columns;
    std::vector<std::size_t> widths;
};

/// What a table's columns ask for.
struct TableNeeds {
    std::vector<std::size_t> least;  ///< of each column, without breaking a number or a usual word
    std::vector<std::size_t> most;   ///< without breaking a line
    std::size_t names = 1;           ///< leading columns that stand in every band
    std::size_t gap = 0;             ///< between columns
    std::size_t narrowest = 1;       ///< no column is pressed below this
};

/// Columns in their order, as many side by side as a line of `width` takes; what does not fit goes on in a
/// further band with the naming columns before it. Every column stands in a band; what is left of a line goes
/// where most is lacking.
[[nodiscard]] std::vector<Band> fittedBands(const TableNeeds& needs, std::size_t width);

}  // namespace treadwell::words
