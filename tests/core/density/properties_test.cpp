// What any density engine must obey, whatever its coefficients.
#include "core/density/estimate.h"
#include "tests/core/density/generators.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace treadwell::density {
namespace {

double median(const Situation& situation) {
    return estimate(situation).value().density.median().si();
}

constexpr double kRounding = 1.0 - 1e-12;

RC_GTEST_PROP(DensityProperty, MoreMassNeverLowersIt, ()) {
    Situation situation = generatedSituation();
    situation.machines.push_back(generatedMachine());
    const double before = median(situation);
    const auto chosen = *rc::gen::inRange<std::size_t>(0, situation.machines.size());
    situation.machines[chosen].mass = situation.machines[chosen].mass * *generated(1, 3);
    RC_ASSERT(median(situation) >= before * kRounding);
}

RC_GTEST_PROP(DensityProperty, MorePackingTimeNeverLowersIt, ()) {
    Situation situation = generatedSituation();
    situation.machines.push_back(generatedMachine());
    situation.work = PackingIntensity::fromMinutesPerTonne(*generated(0, 5));
    const double before = median(situation);
    std::get<PackingIntensity>(situation.work) += PackingIntensity::fromMinutesPerTonne(*generated(0, 2));
    RC_ASSERT(median(situation) >= before * kRounding);
}

RC_GTEST_PROP(DensityProperty, AMachinePackingLongerNeverLowersIt, ()) {
    Situation situation = generatedSituation();
    situation.machines.push_back(generatedMachine());
    const double before = median(situation);
    const auto chosen = *rc::gen::inRange<std::size_t>(0, situation.machines.size());
    Share& share = situation.machines[chosen].share;
    share = std::max(share, Share::fromFraction(*generated(0, 1)));
    RC_ASSERT(median(situation) >= before * kRounding);
}

RC_GTEST_PROP(DensityProperty, MoreDepthNeverLowersIt, ()) {
    Situation situation = generatedSituation();
    const double before = median(situation);
    situation.meanDepth += Length::fromMetres(*generated(0, 5));
    RC_ASSERT(median(situation) >= before * kRounding);
}

RC_GTEST_PROP(DensityProperty, AddingATractorNeverLowersIt, ()) {
    Situation situation = generatedSituation();
    const double before = median(situation);
    situation.machines.push_back(generatedMachine());
    RC_ASSERT(median(situation) >= before * kRounding);
}

RC_GTEST_PROP(DensityProperty, FasterDeliveryNeverRaisesIt, ()) {
    Situation situation = generatedSituation();
    const double before = median(situation);
    std::get<AsFedRate>(situation.work) = std::get<AsFedRate>(situation.work) * *generated(1, 3);
    RC_ASSERT(median(situation) * kRounding <= before);
}

// The US form as its authors write it, in US units throughout: machines alike, so that all of them count.
RC_GTEST_PROP(DensityProperty, TheUsFormGivesTheSame, ()) {
    const double pounds = *generated(8000, 60000), inches = *generated(4, 15),
                 dryMatter = *generated(0.3, 0.5);
    const double tonsPerHour = *generated(20, 300), feet = *generated(4, 20);
    const int machines = *rc::gen::inRange(1, 6);
    const double factor = pounds / inches * std::sqrt(machines * dryMatter / tonsPerHour);
    const double poundsPerCubicFoot = (8.5 + 0.0155 * factor) * (0.818 + 0.0136 * feet);

    Situation situation{.work = AsFedRate::fromShortTonsPerHour(tonsPerHour),
                        .dryMatter = DryMatter::fromFraction(dryMatter),
                        .layer = Length::fromInches(inches),
                        .meanDepth = Length::fromFeet(feet)};
    situation.machines.assign(static_cast<std::size_t>(machines), {.mass = MachineMass::fromPounds(pounds)});
    const Estimate result = estimate(situation).value();
    RC_ASSERT(std::abs(result.packing.factor.us() / factor - 1.0) < 1e-9);
    const double limit = result.target.limit.density.poundsPerCubicFoot();
    RC_ASSERT(std::abs(result.density.median().poundsPerCubicFoot() / std::min(poundsPerCubicFoot, limit) -
                       1.0) < 1e-9);
}

RC_GTEST_PROP(DensityProperty, EverythingIsFiniteAndInOrder, ()) {
    Situation situation = generatedSituation();
    if (*rc::gen::arbitrary<bool>()) situation.layer.reset();
    Options options{.reading = *rc::gen::element(Reading::silo, Reading::day, Reading::layer, Reading::core)};
    const Estimate result = estimate(situation, options).value();
    double before = 0.0;
    for (const double q : {1e-6, 0.1, 0.25, 0.5, 0.75, 0.9, 1 - 1e-6}) {
        const double density = result.density.quantile(q).si();
        RC_ASSERT(std::isfinite(density) && density >= before);
        RC_ASSERT(density <= result.density.limit().si());
        const double porosity = result.porosity.quantile(q).fraction();
        RC_ASSERT(porosity >= 0.0 && porosity <= 1.0);
        before = density;
    }
    RC_ASSERT(result.chance.fraction() >= 0.0 && result.chance.fraction() <= 1.0);
    RC_ASSERT(result.target.density <= result.density.limit());
    RC_ASSERT(result.density.mean() <= result.density.limit());
    RC_ASSERT(std::isfinite(result.yardsticks.passes) && std::isfinite(result.spread.total()));
    RC_ASSERT(result.yardsticks.timeForThreePasses > PackingIntensity{});
    RC_ASSERT(std::isfinite(result.yardsticks.timeForThreePasses.si()));
}

}  // namespace
}  // namespace treadwell::density
