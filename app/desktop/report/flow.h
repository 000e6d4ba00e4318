#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

class QPainter;

namespace treadwell::report {

/// Something of a fixed height that stands on one page.
struct Piece {
    double height;
    bool withNext = false;  ///< not the last on its page: a title, a heading, a table's first row
    std::optional<std::size_t> header = {};  ///< of its table: drawn anew where a page begins with this piece
    std::function<void(QPainter&, double top)> draw = {};
};

struct Placed {
    std::size_t piece;
    double top;
};

/// Puts pieces on pages of a height, in their order. Pieces that belong with the next go over together,
/// unless they fill a page by themselves. A piece taller than a page stands alone.
[[nodiscard]] std::vector<std::vector<Placed>> paginated(const std::vector<Piece>& pieces, double pageHeight);

}  // namespace treadwell::report
