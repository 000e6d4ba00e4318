#include "core/stats/gaussian.h"

#include <Eigen/Cholesky>

#include <algorithm>
#include <stdexcept>

namespace treadwell::stats {

namespace {

void hold(bool condition, const char* what) {
    if (!condition) throw std::invalid_argument(what);
}

}  // namespace

Gaussian conditioned(const Gaussian& prior, const Eigen::MatrixXd& design, const Eigen::VectorXd& seen,
                     const Eigen::MatrixXd& noise) {
    const Eigen::Index n = prior.mean.size();
    const Eigen::Index m = seen.size();
    hold(prior.covariance.rows() == n && prior.covariance.cols() == n, "covariance is not n x n");
    hold(design.rows() == m && design.cols() == n, "design is not m x n");
    hold(noise.rows() == m && noise.cols() == m, "noise is not m x m");
    hold(prior.mean.allFinite() && prior.covariance.allFinite() && design.allFinite() && seen.allFinite() &&
             noise.allFinite(),
         "not finite");
    if (m == 0) return prior;

    const Eigen::MatrixXd crossed = design * prior.covariance;
    const Eigen::MatrixXd spread = crossed * design.transpose() + noise;
    const Eigen::LDLT<Eigen::MatrixXd> factor(spread);
    hold(factor.info() == Eigen::Success && factor.vectorD().minCoeff() > 0.0,
         "spread of what was seen is not positive definite");
    const Eigen::MatrixXd gain = factor.solve(crossed).transpose();
    const Eigen::MatrixXd left = Eigen::MatrixXd::Identity(n, n) - gain * design;

    Gaussian posterior;
    posterior.mean = prior.mean + gain * (seen - design * prior.mean);
    posterior.covariance = left * prior.covariance * left.transpose() + gain * noise * gain.transpose();
    posterior.covariance = (0.5 * (posterior.covariance + posterior.covariance.transpose())).eval();
    return posterior;
}

Scalar combined(const Gaussian& vector, const Eigen::VectorXd& weights) {
    hold(weights.size() == vector.mean.size(), "weights do not fit");
    return {weights.dot(vector.mean), std::max(0.0, weights.dot(vector.covariance * weights))};
}

}  // namespace treadwell::stats
