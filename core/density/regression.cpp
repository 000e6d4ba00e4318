#include "core/density/regression.h"

#include <array>

namespace treadwell::density {

std::span<const Regression* const> regressions() noexcept {
    static const std::array kAll{&fieldRegression(), &wetGrassRegression()};
    return kAll;
}

}  // namespace treadwell::density
