#pragma once

namespace treadwell::stats {

[[nodiscard]] constexpr double square(double x) noexcept {
    return x * x;
}

}  // namespace treadwell::stats
