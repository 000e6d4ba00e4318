#include "app/desktop/report/flow.h"

#include <gtest/gtest.h>

namespace treadwell::report {
namespace {

Piece piece(double height, bool withNext = false, std::optional<std::size_t> header = {}) {
    return {height, withNext, header, {}};
}

std::vector<std::vector<std::size_t>> orderOf(const std::vector<Piece>& pieces, double height) {
    std::vector<std::vector<std::size_t>> order;
    for (const auto& page : paginated(pieces, height)) {
        order.emplace_back();
        for (const Placed& placed : page) order.back().push_back(placed.piece);
    }
    return order;
}

using Order = std::vector<std::vector<std::size_t>>;

TEST(Pages, FillUpInOrder) {
    EXPECT_EQ(orderOf({piece(4), piece(4), piece(4)}, 10), (Order{{0, 1}, {2}}));
    EXPECT_EQ(paginated({piece(4), piece(4)}, 10)[0][1].top, 4.0);
}

TEST(Pages, LeaveNoHeadingAlone) {
    EXPECT_EQ(orderOf({piece(8), piece(1, true), piece(2)}, 10), (Order{{0}, {1, 2}}));
}

// A heading, a table's head, and rows of which the first and the last are not alone.
TEST(Pages, RepeatATablesHead) {
    const std::vector<Piece> pieces{piece(1, true),     piece(1, true),     piece(2, true, 1),
                                    piece(2, false, 1), piece(2, false, 1), piece(2, true, 1),
                                    piece(2, false, 1)};
    EXPECT_EQ(orderOf(pieces, 8), (Order{{0, 1, 2, 3, 4}, {1, 5, 6}}));
    EXPECT_EQ(orderOf(pieces, 9), (Order{{0, 1, 2, 3, 4}, {1, 5, 6}})) << "the last row takes one along";
}

TEST(Pages, HoldWhatIsTallerThanOneOfThem) {
    EXPECT_EQ(orderOf({piece(2), piece(30), piece(2)}, 10), (Order{{0}, {1}, {2}}));
    EXPECT_EQ(orderOf({piece(6, true), piece(6, true), piece(6)}, 10), (Order{{0}, {1}, {2}}));
}

}  // namespace
}  // namespace treadwell::report
