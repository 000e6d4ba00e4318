// The Gaussian process against nlme (maximum likelihood) and spatial (the map), on data sets that come with
// them; each table says of which version and by which command it came.
#include "core/stats/gaussian_process.h"
#include "tests/support/reference_table.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::stats {
namespace {

using testing_support::ReferenceTable;

std::vector<PlacedValue> heights() {
    const ReferenceTable table{"topo.csv"};
    std::vector<PlacedValue> values;
    for (std::size_t row = 0; row < table.size(); ++row) {
        values.push_back({table.number(row, "x"), table.number(row, "y"), table.number(row, "z")});
    }
    return values;
}

/// What the table of the map was made with.
constexpr Resemblance kGiven{2.5, 0.85 * 60 * 60, 0.15 * 60 * 60};

std::vector<PlacedValue> yieldsOf(std::int64_t block) {
    const ReferenceTable table{"wheat.csv"};
    std::vector<PlacedValue> values;
    for (std::size_t row = 0; row < table.size(); ++row) {
        if (table.whole(row, "block") != block) continue;
        values.push_back({table.number(row, "x"), table.number(row, "y"), table.number(row, "value")});
    }
    return values;
}

TEST(PublishedKriging, IsAsLikelyAsNlmeFindsIt) {
    const ReferenceTable fits{"wheat_fit.csv"};
    ASSERT_EQ(fits.size(), 4U);
    for (std::size_t row = 0; row < fits.size(); ++row) {
        const double variance = fits.number(row, "variance"), nugget = fits.number(row, "nugget");
        const GaussianProcess process{
            yieldsOf(fits.whole(row, "block")),
            {fits.number(row, "range"), variance * (1 - nugget), variance * nugget}};
        EXPECT_NEAR(process.logLikelihood(), fits.number(row, "log_likelihood"), 1e-7) << row;
        EXPECT_NEAR(process.constant().mean, fits.number(row, "mean"), 1e-8) << row;
    }
}

TEST(PublishedKriging, FitsTheRangeThatNlmeFits) {
    const ReferenceTable fits{"wheat_fit.csv"};
    for (std::size_t row = 0; row < fits.size(); row += 2) {
        const auto fit = fittedResemblance(yieldsOf(fits.whole(row, "block")));
        ASSERT_TRUE(fit && fit->converged);
        const double all = fit->resemblance.variance + fit->resemblance.noise;
        EXPECT_NEAR(fit->logLikelihood, fits.number(row, "log_likelihood"), 1e-6) << row;
        EXPECT_NEAR(fit->resemblance.range, fits.number(row, "range"), 1e-3 * fits.number(row, "range"))
            << row;
        EXPECT_NEAR(fit->resemblance.noise / all, fits.number(row, "nugget"), 1e-3) << row;
        EXPECT_NEAR(all, fits.number(row, "variance"), 1e-3 * all) << row;
    }
}

TEST(PublishedKriging, MapsAsSpatialMaps) {
    const GaussianProcess process{heights(), kGiven};
    const ReferenceTable map{"topo_map.csv"};
    ASSERT_EQ(map.size(), 64U);
    for (std::size_t row = 0; row < map.size(); ++row) {
        const Scalar here = process.at(map.number(row, "x"), map.number(row, "y"));
        EXPECT_NEAR(here.mean, map.number(row, "value"), 0.05) << row;
        EXPECT_NEAR(std::sqrt(here.variance + kGiven.noise), map.number(row, "standard_error"), 0.05) << row;
    }
}

TEST(PublishedKriging, ForetellsWhatIsLeftOutAsSpatialDoes) {
    const ReferenceTable table{"topo_left_out.csv"};
    const auto foretold = GaussianProcess{heights(), kGiven}.leftOut();
    ASSERT_EQ(foretold.size(), table.size());
    for (std::size_t row = 0; row < table.size(); ++row) {
        EXPECT_NEAR(foretold[row].mean, table.number(row, "value"), 0.05) << row;
    }
}

}  // namespace
}  // namespace treadwell::stats
