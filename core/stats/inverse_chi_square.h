#pragma once

namespace treadwell::stats {

/// What is known of a variance: degreesOfFreedom * scale / variance is chi-square. The usual prior of a
/// normal variance; seeing deviations keeps the form. Source: Gelman et al. 2013, Bayesian Data Analysis, 3rd
/// ed., 2.6 and 3.2.
struct InverseChiSquare {
    double degreesOfFreedom;  ///< above 0
    double scale;             ///< a variance, above 0: that of the t which the next deviation follows

    /// After `count` (0 or more) deviations with a sum of squares: (nu s + sum) / (nu + count), nu + count.
    [[nodiscard]] constexpr InverseChiSquare after(double sumOfSquares, double count) const noexcept {
        const double degrees = degreesOfFreedom + count;
        return {degrees, (degreesOfFreedom * scale + sumOfSquares) / degrees};
    }

    /// The chance that the variance is at most `variance`; 0 for variance <= 0.
    [[nodiscard]] double cdf(double variance) const;

    /// The variance with cdf = `probability`, relative error below 1e-10. Throws std::invalid_argument unless
    /// 0 < probability < 1.
    [[nodiscard]] double quantile(double probability) const;
};

}  // namespace treadwell::stats
