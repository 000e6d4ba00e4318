#pragma once

namespace treadwell::stats {

/// Where a rising function passes `wanted` between two points that hold it between them: halved until the two
/// are neighbours in a double.
template <class Function>
[[nodiscard]] double bisected(Function rising, double wanted, double low, double high) {
    for (;;) {
        const double middle = low + 0.5 * (high - low);
        if (!(middle > low && middle < high)) return middle;
        (rising(middle) < wanted ? low : high) = middle;
    }
}

}  // namespace treadwell::stats
