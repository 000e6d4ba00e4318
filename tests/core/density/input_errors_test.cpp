// The spread through the entries, as it is propagated, against entries drawn anew and read by the engine
// itself.
#include "core/density/readings.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace treadwell::density {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

/// By what factor each entry is off.
struct Errors {
    double machineMass = 1.0;
    double share = 1.0;
    double layer = 1.0;
    double method = 1.0;
    std::array<double, 2> samples_points{};
    double massCommon = 1.0;
    std::array<double, 40> massOwn;

    Errors() { massOwn.fill(1.0); }
};

/// Forty loads that were not weighed, a layer seen once, two samples, one tractor for part of its time.
Readings readWith(const Errors& errors) {
    SeasonMaker maker;
    const Instant start = at("2026-02-10T08:00:00Z");
    farm::Silo silo = someSilo();
    silo.filling = farm::FillingWay::wedge;
    maker.add(entries::SiloDefined{silo}, start);
    maker.add(entries::TractorDefined{someTractor(1, 16 * errors.machineMass)}, start);
    maker.add(entries::LayerSeen{kBunker, Length::fromCentimetres(20 * errors.layer), {}}, start);
    maker.add(someWork(1, farm::Activity::packing, 0.5 * errors.share), start);
    const Instant noon = at("2026-02-10T12:00:00Z");
    for (int i = 0; i < 40; ++i) {
        if (i % 20 == 0) {
            const double percent =
                (34 + 3.7 * errors.samples_points[static_cast<std::size_t>(i / 20)]) * errors.method;
            maker.add(entries::DryMatterSample{DryMatter::fromPercent(percent), {}, {}, {}, {}},
                      noon + i * 6min);
        }
        entries::Load load = someLoad(10 * errors.massCommon * errors.massOwn[static_cast<std::size_t>(i)]);
        load.source = entries::MassSource::box;
        maker.add(load, noon + i * 6min);
    }
    return readingsAt(season::Season::fold(maker.entries), kBunker, noon + 240min);
}

double sdOf(const std::vector<double>& values) {
    double sum = 0, squares = 0;
    for (const double value : values) sum += value;
    const double mean = sum / static_cast<double>(values.size());
    for (const double value : values) squares += (value - mean) * (value - mean);
    return std::sqrt(squares / static_cast<double>(values.size() - 1));
}

TEST(InputErrors, PropagateAsDrawnOnes) {
    constexpr int kDraws = 6000;
    std::mt19937_64 random{20260210};
    std::normal_distribution<double> normal;
    std::vector<double> silo, layer;
    for (int draw = 0; draw < kDraws; ++draw) {
        Errors errors;
        errors.machineMass = std::exp(kMachineMassLogSd * normal(random));
        errors.share = std::exp(kPackingTimeLogSd * normal(random));
        errors.layer = std::exp(kLayerSeenLogSd * normal(random));
        errors.method = std::exp(kDryMatterMethodLogSd * normal(random));
        for (double& sample : errors.samples_points) sample = normal(random);
        errors.massCommon = std::exp(0.086 * normal(random));
        for (double& own : errors.massOwn) own = std::exp(0.051 * normal(random));
        const Readings readings = readWith(errors);
        silo.push_back(std::log(readings.silo.estimate->density.median().si()));
        layer.push_back(std::log(readings.layer.estimate->density.median().si()));
    }
    const Readings expected = readWith({});
    const auto sd = [](const InputParts& parts) {
        return std::sqrt(parts.machineMass + parts.layer + parts.packingTime + parts.loadMass +
                         parts.dryMatter);
    };
    EXPECT_NEAR(sdOf(silo) / sd(expected.silo.estimate->inputs), 1.0, 0.02);
    EXPECT_NEAR(sdOf(layer) / sd(expected.layer.estimate->inputs), 1.0, 0.02);
}

/// Of what the forty loads of readWith() are taken for, in points squared: the local level model's
/// covariance, pair by pair. 3.7 points a sample, a point of wander in the root of an hour, the second sample
/// after 2 h.
double covariance(int earlier, int later) {
    constexpr double kSample = 3.7 * 3.7, kLoadsInAnHour = 10.0;
    constexpr double kLeft = kSample / (2 * kSample + 2.0);
    const double hours = (earlier % 20) / kLoadsInAnHour;
    if (earlier >= 20) return kLeft * (kSample + 2.0) + hours;
    return (later >= 20 ? kLeft : 1.0) * (kSample + hours);
}

// Worked by hand from rule B10: of what is in common to the silo's layers nothing averages out, of the forty
// loads' own errors the root of their number does, and the samples' as the model carries them to the loads.
TEST(InputErrors, CommonOnesDoNotAverageOut) {
    const EntrySpread silo = readWith({}).silo.options.entries;
    EXPECT_NEAR(*silo.layer, 0.15, 1e-9);
    EXPECT_NEAR(*silo.packingTime, 0.10, 1e-3);
    EXPECT_NEAR(*silo.loadMass, std::hypot(0.086, 0.051 / std::sqrt(40.0)), 1e-9);
    double variance = 0.0;
    for (int i = 0; i < 40; ++i) {
        for (int j = 0; j < 40; ++j) variance += covariance(std::min(i, j), std::max(i, j)) / (40.0 * 40.0);
    }
    EXPECT_NEAR(*silo.dryMatter, std::hypot(0.015, std::sqrt(variance) / 34), 1e-3);
    const EntrySpread layer = readWith({}).layer.options.entries;
    EXPECT_NEAR(*layer.dryMatter, std::hypot(0.015, std::sqrt(covariance(39, 39)) / 34), 1e-3);
}

}  // namespace
}  // namespace treadwell::density
