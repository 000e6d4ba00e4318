#pragma once

#include "core/base/source.h"
#include "core/density/field_equation.h"
#include "core/quantity/relations.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace treadwell::density {

/// What a published regression may ask for.
struct RegressionInput {
    PackingFactor packing;
    DryMatter dryMatter;
    Length meanDepth;
};

/// A published regression for the dry-matter density of a silo. To add one: a file of its own beside
/// field_regression.cpp, and its line in regressions().
struct Regression {
    enum class Use : std::uint8_t {
        estimate,    ///< gives the estimate
        checkOfCap,  ///< stands beside the saturation limit in its narrow range
    };
    std::string_view name;     ///< stable name, as in `--json`
    std::string_view formula;  ///< in SI; P packing factor, D mean depth [m], DM dry matter
    Source source;
    Use use;
    DryMatter wettest;  ///< dry matter of the data, from
    DryMatter driest;   ///< to
    DryDensity lowest;  ///< density of the data, from
    DryDensity highest;
    std::optional<double> residualLogSd;  ///< of one silo's ln(density) about the value, where known
    /// Not capped at saturation and not held to the range.
    DryDensity (*value)(const RegressionInput& input) noexcept;
};

/// The field regression that the estimate rests on (field_equation.h).
[[nodiscard]] const Regression& fieldRegression() noexcept;

/// Wet grass, van Schooten & Fabri 2022: no packing term, so never an estimate; it lies about 2.4 % above the
/// saturation limit over its range and so confirms it.
[[nodiscard]] const Regression& wetGrassRegression() noexcept;

[[nodiscard]] std::span<const Regression* const> regressions() noexcept;

}  // namespace treadwell::density
