#include "core/density/situation.h"

#include "tests/core/density/example.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <limits>

namespace treadwell::density {
namespace {

struct Fault {
    const char* field;
    std::function<void(Situation&, Options&)> make;
};

const double kNan = std::nan("");
const double kInfinity = std::numeric_limits<double>::infinity();

const Fault kFaults[] = {
    {"rate", [](Situation& s, Options&) { s.work = AsFedRate{}; }},
    {"rate", [](Situation& s, Options&) { s.work = AsFedRate::fromTonnesPerHour(-3); }},
    {"rate", [](Situation& s, Options&) { s.work = AsFedRate::fromSi(kInfinity); }},
    {"packingTime", [](Situation& s, Options&) { s.work = PackingIntensity::fromMinutesPerTonne(-1); }},
    {"mass",
     [](Situation& s, Options&) {
         s.work = PackedMass{AsFedMass{}, {Seconds{60}, Seconds{60}}};
     }},
    {"packing",
     [](Situation& s, Options&) {
         s.work = PackedMass{AsFedMass::fromTonnes(12), {Seconds{60}}};
     }},
    {"packing[1]",
     [](Situation& s, Options&) {
         s.work = PackedMass{AsFedMass::fromTonnes(12), {Seconds{60}, Seconds{-1}}};
     }},
    {"dryMatter", [](Situation& s, Options&) { s.dryMatter = DryMatter::fromFraction(35); }},
    {"dryMatter", [](Situation& s, Options&) { s.dryMatter = DryMatter::fromPercent(100); }},
    {"dryMatter", [](Situation& s, Options&) { s.dryMatter = DryMatter{}; }},
    {"layer", [](Situation& s, Options&) { s.layer = Length{}; }},
    {"layer", [](Situation& s, Options&) { s.layer = Length::fromMetres(15); }},
    {"meanDepth", [](Situation& s, Options&) { s.meanDepth = Length::fromMetres(-0.1); }},
    {"meanDepth", [](Situation& s, Options&) { s.meanDepth = Length::fromMetres(kNan); }},
    {"machines[0].mass", [](Situation& s, Options&) { s.machines[0].mass = MachineMass{}; }},
    {"machines[1].share", [](Situation& s, Options&) { s.machines[1].share = Share::fromFraction(1.01); }},
    {"machines[1].speed", [](Situation& s, Options&) { s.machines[1].speed = Speed::fromSi(-1); }},
    {"machines[0].trackWidth", [](Situation& s, Options&) { s.machines[0].trackWidth = Length{}; }},
    {"target.minimum", [](Situation& s, Options&) { s.target.minimum = DryDensity{}; }},
    {"target.porosity", [](Situation& s, Options&) { s.target.porosity = Porosity::fromFraction(1); }},
    {"effectiveLayers", [](Situation&, Options& o) { o.effectiveLayers = 0; }},
    {"residual.silo", [](Situation&, Options& o) { o.residual.silo = -0.1; }},
    {"residual.level", [](Situation&, Options& o) { o.residual.level = kNan; }},
    {"entries.layer", [](Situation&, Options& o) { o.entries.layer = -0.1; }},
    {"entries.dryMatter", [](Situation&, Options& o) { o.entries.dryMatter = kInfinity; }},
};

TEST(Situation, EveryFaultNamesItsField) {
    ASSERT_TRUE(check(exampleSituation(), {}));
    for (const Fault& fault : kFaults) {
        Situation situation = exampleSituation();
        Options options;
        fault.make(situation, options);
        const auto result = estimate(situation, options);
        ASSERT_FALSE(result) << fault.field;
        EXPECT_EQ(result.error().field, fault.field);
    }
}

TEST(Situation, TheFirstFaultIsTheOneReported) {
    Situation situation = exampleSituation();
    situation.dryMatter = DryMatter{};
    situation.meanDepth = Length::fromMetres(-1);
    EXPECT_EQ(check(situation, {}).error().field, "dryMatter");
}

TEST(Situation, MoreSamplesMakeTheDryMatterSurer) {
    const DryMatter dryMatter = DryMatter::fromPercent(35);
    EXPECT_NEAR(dryMatterLogSd(dryMatter, samples::kSampleSd), std::hypot(0.015, 0.037 / 0.35), 1e-15);
    EXPECT_NEAR(dryMatterLogSd(dryMatter, samples::kSampleSd / 2.0), std::hypot(0.015, 0.0185 / 0.35), 1e-15);
    EXPECT_NEAR(dryMatterLogSd(dryMatter, DryMatter{}), 0.015, 1e-6);
}

}  // namespace
}  // namespace treadwell::density
