#include "core/stats/gaussian_process.h"

#include "core/stats/minimise.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

namespace treadwell::stats {

namespace {

constexpr double kLeastRange = 0.01;  ///< of the widest distance
constexpr double kMostRange = 10.0;
constexpr double kLeastNoise = 1e-6;  ///< of all variance
constexpr int kMostEvaluations = 2'000;

double distance(const PlacedValue& a, const PlacedValue& b) {
    return std::hypot(a.x - b.x, a.y - b.y);
}

Eigen::MatrixXd covarianceOf(std::span<const PlacedValue> values, const Resemblance& resemblance) {
    const auto n = static_cast<Eigen::Index>(values.size());
    Eigen::MatrixXd covariance(n, n);
    for (Eigen::Index i = 0; i < n; ++i) {
        for (Eigen::Index j = 0; j <= i; ++j) {
            const double apart =
                distance(values[static_cast<std::size_t>(i)], values[static_cast<std::size_t>(j)]);
            covariance(i, j) = covariance(j, i) = resemblance.variance * std::exp(-apart / resemblance.range);
        }
        covariance(i, i) += resemblance.noise;
    }
    return covariance;
}

Eigen::VectorXd valuesOf(std::span<const PlacedValue> values) {
    Eigen::VectorXd seen(static_cast<Eigen::Index>(values.size()));
    for (std::size_t i = 0; i < values.size(); ++i) seen[static_cast<Eigen::Index>(i)] = values[i].value;
    return seen;
}

/// The resemblance of a range and a noise's share, its variance that which makes the values likeliest.
Resemblance profiled(std::span<const PlacedValue> values, double range, double noiseShare) {
    const Resemblance unit{range, 1.0 - noiseShare, noiseShare};
    const Eigen::LLT<Eigen::MatrixXd> correlation{covarianceOf(values, unit)};
    const Eigen::VectorXd seen = valuesOf(values);
    const Eigen::VectorXd ones = Eigen::VectorXd::Ones(seen.size());
    const Eigen::VectorXd weights = correlation.solve(ones);
    const Eigen::VectorXd residual = seen - weights.dot(seen) / weights.sum() * ones;
    const double variance = residual.dot(correlation.solve(residual)) / static_cast<double>(values.size());
    return {range, unit.variance * variance, unit.noise * variance};
}

/// Between bounds whatever the search asks for.
double within(double low, double high, double free) {
    return low * std::pow(high / low, 1.0 / (1.0 + std::exp(-free)));
}

}  // namespace

GaussianProcess::GaussianProcess(std::span<const PlacedValue> values, const Resemblance& resemblance)
    : m_values(values.begin(), values.end()), m_resemblance{resemblance} {
    const auto finite = [](const PlacedValue& v) {
        return std::isfinite(v.x) && std::isfinite(v.y) && std::isfinite(v.value);
    };
    if (values.size() < 2 || !std::all_of(values.begin(), values.end(), finite)) {
        throw std::invalid_argument{"a surface needs two finite values"};
    }
    const bool usable = resemblance.range > 0.0 && resemblance.variance > 0.0 && resemblance.noise >= 0.0 &&
                        std::isfinite(resemblance.range + resemblance.variance + resemblance.noise);
    if (!usable) throw std::invalid_argument{"range and variance are above 0, noise is not below"};
    m_covariance.compute(covarianceOf(values, resemblance));
    if (m_covariance.info() != Eigen::Success)
        throw std::invalid_argument{"two values at one place without noise"};
    const Eigen::VectorXd seen = valuesOf(values);
    m_ones = m_covariance.solve(Eigen::VectorXd::Ones(seen.size()));
    m_constant = {m_ones.dot(seen) / m_ones.sum(), 1.0 / m_ones.sum()};
    const Eigen::VectorXd centred = seen.array() - m_constant.mean;
    m_residuals = m_covariance.solve(centred);
    const Eigen::MatrixXd factor = m_covariance.matrixL();
    m_logLikelihood = -0.5 * centred.dot(m_residuals) - factor.diagonal().array().log().sum() -
                      0.5 * static_cast<double>(seen.size()) * std::log(2.0 * std::numbers::pi);
}

Scalar GaussianProcess::at(double x, double y) const {
    Eigen::VectorXd near(m_residuals.size());
    for (std::size_t i = 0; i < m_values.size(); ++i) {
        near[static_cast<Eigen::Index>(i)] =
            m_resemblance.variance * std::exp(-distance(m_values[i], {x, y, 0.0}) / m_resemblance.range);
    }
    const double lack = 1.0 - m_ones.dot(near);
    const double variance =
        m_resemblance.variance - near.dot(m_covariance.solve(near)) + lack * lack * m_constant.variance;
    return {m_constant.mean + near.dot(m_residuals), std::max(0.0, variance)};
}

std::vector<Scalar> GaussianProcess::leftOut() const {
    if (m_values.size() < 3) throw std::invalid_argument{"two values that are left are needed"};
    std::vector<Scalar> foretold;
    for (std::size_t i = 0; i < m_values.size(); ++i) {
        std::vector<PlacedValue> others = m_values;
        others.erase(others.begin() + static_cast<std::ptrdiff_t>(i));
        Scalar surface = GaussianProcess{others, m_resemblance}.at(m_values[i].x, m_values[i].y);
        surface.variance += m_resemblance.noise;
        foretold.push_back(surface);
    }
    return foretold;
}

std::optional<ResemblanceFit> fittedResemblance(std::span<const PlacedValue> values) {
    if (values.size() < 3) return std::nullopt;
    double widest = 0.0;
    bool differ = false;
    for (const PlacedValue& a : values) {
        for (const PlacedValue& b : values) widest = std::max(widest, distance(a, b));
        differ |= a.value != values.front().value;
    }
    if (!(widest > 0.0) || !differ) return std::nullopt;
    const auto resemblanceAt = [&](const std::vector<double>& free) {
        return profiled(values, within(kLeastRange * widest, kMostRange * widest, free[0]),
                        within(kLeastNoise, 0.999, free[1]));
    };
    const auto misfit = [&](const std::vector<double>& free) {
        return -GaussianProcess{values, resemblanceAt(free)}.logLikelihood();
    };
    // A short and a long range, little noise and much: the likelihood may have several tops.
    std::optional<Minimum> best;
    int evaluations = 0;
    for (const double range : {-1.0, 1.0}) {
        for (const double noise : {-1.0, 2.0}) {
            const Minimum found = minimised(misfit, {range, noise}, 0.5, kMostEvaluations);
            evaluations += found.evaluations;
            if (!best || found.value < best->value) best = found;
        }
    }
    return ResemblanceFit{resemblanceAt(best->at), -best->value, evaluations, best->converged};
}

}  // namespace treadwell::stats
