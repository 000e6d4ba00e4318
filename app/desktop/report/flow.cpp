#include "app/desktop/report/flow.h"

namespace treadwell::report {

std::vector<std::vector<Placed>> paginated(const std::vector<Piece>& pieces, double pageHeight) {
    std::vector<std::vector<Placed>> pages(1);
    double used = 0.0;
    const auto place = [&](std::size_t piece) {
        pages.back().push_back({piece, used});
        used += pieces[piece].height;
    };
    for (std::size_t i = 0; i < pieces.size();) {
        std::size_t end = i + 1;
        double together = pieces[i].height;
        while (end < pieces.size() && pieces[end - 1].withNext) together += pieces[end++].height;
        const bool fits = used + together <= pageHeight;
        if (!fits && used > 0.0) {
            pages.emplace_back();
            used = 0.0;
            if (pieces[i].header) place(*pieces[i].header);
        }
        for (; i < end; ++i) {
            // What fills more than a page by itself is broken where it has to be.
            if (used + pieces[i].height > pageHeight && used > 0.0 && together > pageHeight) {
                pages.emplace_back();
                used = 0.0;
                if (pieces[i].header) place(*pieces[i].header);
            }
            place(i);
        }
    }
    return pages;
}

}  // namespace treadwell::report
