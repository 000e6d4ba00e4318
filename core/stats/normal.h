#pragma once

namespace treadwell::stats {

/// Standard normal distribution function, the chance that a standard normal variable is at most `x`
/// [dimensionless]. Formula: erfc(-x / sqrt 2) / 2, which keeps its digits in the lower tail. Any finite x;
/// result in [0, 1]. Relative error below 1e-15 * max(1, x^2). Source: Abramowitz & Stegun 1964, Handbook of
/// Mathematical Functions, 7.1.2 and 26.2.29.
[[nodiscard]] double normalCdf(double x) noexcept;

/// The x with normalCdf(x) = `probability` [dimensionless]. Relative error about 1e-15 between 1e-300 and 1 -
/// 1e-16. Throws std::invalid_argument unless 0 < probability < 1, since the answer would not be finite.
/// Source: Wichura 1988, Algorithm AS 241 (PPND16), Applied Statistics 37(3):477-484.
[[nodiscard]] double normalQuantile(double probability);

/// normalQuantile(0.9): half the width, in standard deviations, of the central 80 % band that every estimate
/// carries.
inline constexpr double kHalfBand80 = 1.2815515655446004;

}  // namespace treadwell::stats
