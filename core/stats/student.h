#pragma once

namespace treadwell::stats {

/// The chance that Student's t with `degreesOfFreedom` is at most `x` [dimensionless]. Half the regularised
/// incomplete beta function of (nu/2, 1/2) at nu/(nu + x^2), so the lower tail keeps its digits. Any finite
/// x; error below 1e-12 to 1,000 degrees of freedom and 1e-10 beyond. Throws std::invalid_argument unless
/// degreesOfFreedom is above 0; where it is infinite the normal distribution answers.
/// Source: Abramowitz & Stegun 1964, Handbook of Mathematical Functions, 26.7.1 and 26.5.27.
[[nodiscard]] double studentCdf(double x, double degreesOfFreedom);

/// The x with studentCdf(x) = `probability`, found by bisection; error below 1e-9 (1 + |x|). Infinite degrees
/// of freedom give the normal quantile. Throws std::invalid_argument unless 1e-300 <= probability < 1 and
/// degreesOfFreedom >= 1, since beyond these the answer leaves what a double holds.
[[nodiscard]] double studentQuantile(double probability, double degreesOfFreedom);

}  // namespace treadwell::stats
