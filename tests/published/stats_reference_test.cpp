// The statistics against what SciPy, lme4 and nlme give; each table says from which version and by which
// command it came.
#include "core/stats/inverse_chi_square.h"
#include "core/stats/reml.h"
#include "core/stats/student.h"
#include "tests/support/reference_table.h"

#include <gtest/gtest.h>

namespace treadwell::stats {
namespace {

using testing_support::ReferenceTable;

TEST(PublishedStatistics, StudentsTAgreesWithSciPy) {
    const ReferenceTable table{"student.csv"};
    ASSERT_EQ(table.size(), 81U);
    for (std::size_t row = 0; row < table.size(); ++row) {
        const double degrees = table.number(row, "degrees_of_freedom");
        const double probability = table.number(row, "probability");
        const double quantile = table.number(row, "quantile");
        EXPECT_NEAR(studentQuantile(probability, degrees), quantile, 1e-9 * (1.0 + std::abs(quantile)))
            << probability << ' ' << degrees;
        const double chance = table.number(row, "cdf_of_1.5");
        const double error = degrees <= 1000.0 ? 1e-12 : 1e-10;
        EXPECT_NEAR(studentCdf(1.5, degrees), chance, error);
        EXPECT_NEAR(studentCdf(-1.5, degrees), 1.0 - chance, error);
    }
}

TEST(PublishedStatistics, VariancesAgreeWithSciPysInverseGamma) {
    const ReferenceTable table{"inverse_chi_square.csv"};
    ASSERT_EQ(table.size(), 112U);
    for (std::size_t row = 0; row < table.size(); ++row) {
        const double scale = table.number(row, "scale");
        const InverseChiSquare variance{table.number(row, "degrees_of_freedom"), scale};
        const double quantile = table.number(row, "quantile");
        EXPECT_NEAR(variance.quantile(table.number(row, "probability")), quantile, 1e-9 * quantile);
        EXPECT_NEAR(variance.cdf(1.3 * scale), table.number(row, "cdf_of_1.3_scale"), 1e-11);
    }
}

TEST(PublishedStatistics, VarianceComponentsAgreeWithLme4AndNlme) {
    const ReferenceTable values{"nested.csv"};
    NestedSample sample;
    sample.levels.resize(3);
    for (std::size_t row = 0; row < values.size(); ++row) {
        sample.values.push_back(values.number(row, "value"));
        sample.levels[0].push_back(values.whole(row, "silo"));
        sample.levels[1].push_back(values.whole(row, "face"));
        sample.levels[2].push_back(values.whole(row, "place"));
    }
    const RemlFit fit = reml(sample);
    ASSERT_TRUE(fit.isUsable());
    ASSERT_EQ(fit.components.size(), 3U);
    const ReferenceTable fits{"nested_fit.csv"};
    ASSERT_EQ(fits.size(), 2U);
    for (std::size_t row = 0; row < fits.size(); ++row) {
        // nlme prints its variances to eight digits.
        const auto expectClose = [&](double ours, std::string_view column) {
            const double theirs = fits.number(row, column);
            EXPECT_NEAR(ours, theirs, 1e-5 * std::abs(theirs)) << fits.text(row, "by") << ' ' << column;
        };
        expectClose(fit.components[0], "silo");
        expectClose(fit.components[1], "face");
        expectClose(fit.components[2], "place");
        expectClose(fit.residual, "residual");
        expectClose(fit.mean, "mean");
        expectClose(fit.meanVariance, "mean_variance");
        expectClose(fit.logLikelihood, "log_likelihood");
    }
}

}  // namespace
}  // namespace treadwell::stats
