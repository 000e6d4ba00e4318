#pragma once

#include "core/stats/gaussian.h"

#include <Eigen/Cholesky>

#include <optional>
#include <span>
#include <vector>

namespace treadwell::stats {

/// A value that was measured somewhere in a plane.
struct PlacedValue {
    double x;
    double y;
    double value;
};

/// How values that lie near each other resemble each other: covariance variance * exp(-distance / range), and
/// `noise` more where they are one measurement.
struct Resemblance {
    double range = 1.0;     ///< above 0; the resemblance is down to 1/e there
    double variance = 1.0;  ///< of the surface, above 0
    double noise = 0.0;     ///< variance of one measurement about it, 0 or more
};

/// A surface that lies about a constant, and values of it; the constant's prior is flat.
class GaussianProcess {
  public:
    /// `values` finite and at least two. Throws std::invalid_argument for anything else, and where the
    /// covariance is not positive definite, as two values at one place without noise make it.
    GaussianProcess(std::span<const PlacedValue> values, const Resemblance& resemblance);

    /// The surface at a place: its mean and variance, the doubt of the constant within it, the noise of
    /// another measurement not.
    [[nodiscard]] Scalar at(double x, double y) const;

    /// Each value as the others alone foretell it, in their order: mean and variance of the measurement. The
    /// resemblance is not fitted anew. Three or more values.
    [[nodiscard]] std::vector<Scalar> leftOut() const;

    [[nodiscard]] Scalar constant() const noexcept { return m_constant; }
    [[nodiscard]] double logLikelihood() const noexcept { return m_logLikelihood; }
    [[nodiscard]] const Resemblance& resemblance() const noexcept { return m_resemblance; }

  private:
    std::vector<PlacedValue> m_values;
    Resemblance m_resemblance;
    Eigen::LLT<Eigen::MatrixXd> m_covariance;
    Eigen::VectorXd m_ones;       ///< covariance^-1 * 1
    Eigen::VectorXd m_residuals;  ///< covariance^-1 * (values - constant)
    Scalar m_constant;
    double m_logLikelihood = 0.0;
};

struct ResemblanceFit {
    Resemblance resemblance;
    double logLikelihood;
    int evaluations;
    bool converged;
};

/// The resemblance under which `values` are likeliest: range and the noise's share by a simplex search over
/// their logarithm and logit, the variance profiled out. The range stays between a hundredth and ten times
/// the values' widest distance, noise at least 1e-6 of all variance: where the values tell nothing of one it
/// ends at that bound. None for fewer than three values, values that are all the same or all at one place.
/// Cost n^3 an evaluation. Source: Mardia & Marshall 1984, Biometrika 71(1):135-146; Rasmussen & Williams
/// 2006, Gaussian Processes for Machine Learning, ch. 2 and 5.
[[nodiscard]] std::optional<ResemblanceFit> fittedResemblance(std::span<const PlacedValue> values);

}  // namespace treadwell::stats
