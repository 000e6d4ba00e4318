#pragma once

#include <Eigen/Core>

namespace treadwell::stats {

/// A normal vector of n parts: `mean` (n), `covariance` (n x n, symmetric, no negative eigenvalue).
struct Gaussian {
    Eigen::VectorXd mean;
    Eigen::MatrixXd covariance;
};

/// One measured or estimated number.
struct Scalar {
    double mean = 0.0;
    double variance = 0.0;
};

/// What `prior` becomes when y = H x + noise was seen, the noise normal with mean 0.
///
/// `seen` y (m), `design` H (m x n), `noise` (m x m, symmetric, positive definite together with H P H'). In
/// closed form: the gain comes from an LDLT of H P H' + noise, the covariance from Joseph's form
/// (I - K H) P (I - K H)' + K noise K', which stays symmetric and non-negative under rounding. Relative error
/// about the condition number of H P H' + noise times 1e-16. Throws std::invalid_argument for shapes that do
/// not fit, for anything not finite and where H P H' + noise is not positive definite.
/// Sources: Bucy & Joseph 1968, Filtering for Stochastic Processes; Golub & Van Loan, Matrix
/// Computations, 4.1.
[[nodiscard]] Gaussian conditioned(const Gaussian& prior, const Eigen::MatrixXd& design,
                                   const Eigen::VectorXd& seen, const Eigen::MatrixXd& noise);

/// The normal number weights' x of a normal vector; `weights` (n). Throws std::invalid_argument where the
/// shapes do not fit.
[[nodiscard]] Scalar combined(const Gaussian& vector, const Eigen::VectorXd& weights);

}  // namespace treadwell::stats
