#pragma once

namespace treadwell::stats {

/// A quantity whose natural logarithm is normal: `median` in the quantity's own unit (finite, above 0) and
/// `sigma`, the standard deviation of its logarithm (finite, 0 or more; 0 is a value known exactly).
struct LogNormal {
    double median;
    double sigma;

    /// median * exp(z * sigma) with z the standard normal quantile. Throws std::invalid_argument unless
    /// 0 < probability < 1.
    [[nodiscard]] double quantile(double probability) const;

    /// The chance of at most `x`; 0 for x <= 0. With sigma 0 a step at the median.
    [[nodiscard]] double cdf(double x) const noexcept;

    /// median * exp(sigma^2 / 2).
    [[nodiscard]] double mean() const noexcept;

    /// The mean of min(value, cap), cap above 0: what is beyond the cap lies at the cap.
    [[nodiscard]] double meanUpTo(double cap) const noexcept;
};

}  // namespace treadwell::stats
