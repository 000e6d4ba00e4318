#include "core/stats/gaussian.h"

#include <Eigen/Eigenvalues>
#include <Eigen/LU>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace treadwell::stats {
namespace {

Eigen::MatrixXd someMatrix(Eigen::Index rows, Eigen::Index columns) {
    Eigen::MatrixXd matrix(rows, columns);
    for (Eigen::Index i = 0; i < matrix.size(); ++i)
        matrix.data()[i] = static_cast<double>(*rc::gen::inRange(-1000, 1001)) / 500.0;
    return matrix;
}

TEST(Gaussian, TwoReadingsOfOneNumberAreWeighedByTheirPrecisions) {
    const Gaussian prior{Eigen::VectorXd::Constant(1, 10.0), Eigen::MatrixXd::Constant(1, 1, 4.0)};
    const Gaussian posterior = conditioned(prior, Eigen::MatrixXd::Ones(2, 1), Eigen::Vector2d{13.0, 9.0},
                                           Eigen::Vector2d{1.0, 2.0}.asDiagonal());
    // (10/4 + 13/1 + 9/2) / (1/4 + 1 + 1/2), the precisions adding up.
    EXPECT_NEAR(posterior.mean(0), 20.0 / 1.75, 1e-13);
    EXPECT_NEAR(posterior.covariance(0, 0), 1.0 / 1.75, 1e-14);
}

// The same posterior in its information form: precision P^-1 + H' R^-1 H.
RC_GTEST_PROP(Gaussian, AgreesWithTheInformationForm, ()) {
    const auto n = *rc::gen::inRange<Eigen::Index>(1, 6);
    const auto m = *rc::gen::inRange<Eigen::Index>(1, 6);
    const Eigen::MatrixXd root = someMatrix(n, n);
    const Gaussian prior{someMatrix(n, 1), root * root.transpose() + Eigen::MatrixXd::Identity(n, n)};
    const Eigen::MatrixXd design = someMatrix(m, n);
    const Eigen::MatrixXd noiseRoot = someMatrix(m, m);
    const Eigen::MatrixXd noise = noiseRoot * noiseRoot.transpose() + Eigen::MatrixXd::Identity(m, m);
    const Eigen::VectorXd seen = someMatrix(m, 1);
    const Gaussian posterior = conditioned(prior, design, seen, noise);
    const Eigen::MatrixXd precision =
        prior.covariance.inverse() + design.transpose() * noise.inverse() * design;
    const Eigen::VectorXd pull =
        prior.covariance.inverse() * prior.mean + design.transpose() * noise.inverse() * seen;
    RC_ASSERT((posterior.covariance - precision.inverse()).norm() < 1e-9);
    RC_ASSERT((posterior.mean - precision.inverse() * pull).norm() < 1e-8);
    RC_ASSERT(posterior.covariance == posterior.covariance.transpose());
}

TEST(Gaussian, StaysNonNegativeWhereTheReadingIsFarSharperThanThePrior) {
    const Gaussian prior{Eigen::VectorXd::Zero(2), Eigen::MatrixXd::Identity(2, 2) * 1e8};
    Eigen::MatrixXd design(2, 2);
    design << 1.0, 1.0, 1.0, 1.0 + 1e-6;
    Gaussian posterior = prior;
    for (int i = 0; i < 50; ++i) {
        posterior =
            conditioned(posterior, design, Eigen::Vector2d{1.0, 1.0}, Eigen::MatrixXd::Identity(2, 2) * 1e-6);
    }
    const Eigen::VectorXd values =
        Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd>(posterior.covariance).eigenvalues();
    EXPECT_GE(values.minCoeff(), 0.0);
    EXPECT_NEAR(combined(posterior, Eigen::Vector2d{1.0, 1.0}).mean, 1.0, 1e-3);
}

TEST(Gaussian, NothingSeenChangesNothing) {
    const Gaussian prior{Eigen::VectorXd::Ones(2), Eigen::MatrixXd::Identity(2, 2)};
    const Gaussian posterior =
        conditioned(prior, Eigen::MatrixXd(0, 2), Eigen::VectorXd(0), Eigen::MatrixXd(0, 0));
    EXPECT_EQ(posterior.mean, prior.mean);
    EXPECT_EQ(posterior.covariance, prior.covariance);
}

TEST(Gaussian, RefusesWhatDoesNotFit) {
    const Gaussian prior{Eigen::VectorXd::Ones(2), Eigen::MatrixXd::Identity(2, 2)};
    const Eigen::MatrixXd one = Eigen::MatrixXd::Ones(1, 1);
    const Eigen::VectorXd seen = Eigen::VectorXd::Ones(1);
    EXPECT_THROW((void)conditioned(prior, one, seen, one), std::invalid_argument);
    EXPECT_THROW((void)conditioned(prior, Eigen::MatrixXd::Zero(1, 2), seen, 0.0 * one),
                 std::invalid_argument);
    EXPECT_THROW((void)conditioned(prior, Eigen::MatrixXd::Ones(1, 2), seen / 0.0, one),
                 std::invalid_argument);
    EXPECT_THROW((void)combined(prior, seen), std::invalid_argument);
}

}  // namespace
}  // namespace treadwell::stats
