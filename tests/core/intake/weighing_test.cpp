#include "core/intake/weighing.h"

#include "core/base/codes.h"
#include "core/formats/codes.h"
#include "core/intake/codes.h"
#include "tests/core/intake/farm_context.h"

#include <gtest/gtest.h>

namespace treadwell::intake {
namespace {

using formats::ScaleFrame;
using formats::ScaleReading;
using formats::ScaleState;
using formats::WeightKind;

ScaleFrame frame(double kilograms, ScaleState state = ScaleState::stable,
                 WeightKind kind = WeightKind::gross) {
    ScaleReading reading{state, kind, AsFedMass::fromKilograms(kilograms), {}};
    return {"ST,GS,+" + std::to_string(static_cast<int>(kilograms)) + ",kg", reading};
}

Instant after(int milliseconds) {
    return utc("2026-09-15T10:00:00Z") + std::chrono::milliseconds{milliseconds};
}

TEST(SteadyWeight, IsThreeEqualStableFrames) {
    SteadyWeight steady;
    EXPECT_FALSE(steady.take(frame(12340), after(0)));
    EXPECT_FALSE(steady.take(frame(12340), after(100)));
    const auto weighing = steady.take(frame(12340), after(200));
    ASSERT_TRUE(weighing);
    EXPECT_EQ(weighing->reading.weight, AsFedMass::fromKilograms(12340));
    EXPECT_EQ(weighing->at, after(200));
    EXPECT_EQ(weighing->evidence.content,
              "2026-09-15T10:00:00Z ST,GS,+12340,kg\n"
              "2026-09-15T10:00:00.1Z ST,GS,+12340,kg\n"
              "2026-09-15T10:00:00.2Z ST,GS,+12340,kg\n");
    EXPECT_EQ(weighing->evidence.hash, sha256(weighing->evidence.content));
}

TEST(SteadyWeight, AnythingElseStartsAnew) {
    const ScaleFrame broken{"x", fail(code::frameUnreadable, "frame", std::string{"x"})};
    const ScaleFrame over{"OL", ScaleReading{ScaleState::overload, WeightKind::gross, {}, {}}};
    for (const ScaleFrame& between : {frame(12360), frame(12340, ScaleState::motion), broken, over,
                                      frame(12340, ScaleState::stable, WeightKind::net)}) {
        SteadyWeight steady;
        EXPECT_FALSE(steady.take(frame(12340), after(0)));
        EXPECT_FALSE(steady.take(frame(12340), after(100)));
        EXPECT_FALSE(steady.take(between, after(200)));
        EXPECT_FALSE(steady.take(frame(12340), after(300)));
        EXPECT_FALSE(steady.take(frame(12340), after(400)));
        EXPECT_TRUE(steady.take(frame(12340), after(500)));
    }
    SteadyWeight slow;
    EXPECT_FALSE(slow.take(frame(12340), after(0)));
    EXPECT_FALSE(slow.take(frame(12340), after(1000)));
    EXPECT_FALSE(slow.take(frame(12340), after(3001)));
    EXPECT_FALSE(slow.take(frame(12340), after(2000)));  // the clock was set back
}

TEST(SteadyWeight, OfAScaleThatDoesNotSayLastsTwoSeconds) {
    SteadyWeight steady;
    for (int i = 0; i < 20; ++i) EXPECT_FALSE(steady.take(frame(12340, ScaleState::untold), after(100 * i)));
    EXPECT_TRUE(steady.take(frame(12340, ScaleState::untold), after(2000)));
}

struct NetCase {
    WeightKind kind;
    double shown;
    std::optional<double> frameTare;
    std::optional<double> tare;
    std::optional<double> net;
    Code code = code::valueMissing;
};

class NetWeights : public testing::TestWithParam<NetCase> {};

TEST_P(NetWeights, AreWhatTheCropWeighs) {
    const NetCase& given = GetParam();
    const auto kilograms = [](std::optional<double> value) {
        return value ? std::optional{AsFedMass::fromKilograms(*value)} : std::nullopt;
    };
    const Weighing weighing{
        {ScaleState::stable, given.kind, kilograms(given.shown), kilograms(given.frameTare)}, after(0), {}};
    entries::Load known;
    known.silo = idOf<farm::SiloId>(1);
    const auto load = loadOf(weighing, known, kilograms(given.tare));
    ASSERT_EQ(load.has_value(), given.net.has_value());
    if (load) {
        EXPECT_DOUBLE_EQ(load->mass.kilograms(), *given.net);
        EXPECT_EQ(load->source, entries::MassSource::weighed);
        EXPECT_EQ(load->silo, known.silo);
    } else {
        EXPECT_EQ(load.error().code(), given.code);
    }
}

INSTANTIATE_TEST_SUITE_P(
    Kinds, NetWeights,
    testing::Values(NetCase{WeightKind::net, 8320, {}, {}, 8320},
                    NetCase{WeightKind::net, 8320, 11860, {}, 8320},
                    NetCase{WeightKind::gross, 20180, {}, 11860, 8320},
                    NetCase{WeightKind::gross, 20180, 11860, {}, 8320},
                    NetCase{WeightKind::gross, 20180, {}, {}, {}, code::scaleTareNeeded},
                    NetCase{WeightKind::untold, 20180, 11860, {}, {}, code::scaleTareNeeded},
                    NetCase{WeightKind::untold, 8320, {}, 0, 8320},
                    NetCase{WeightKind::tare, 11860, {}, {}, {}, code::scaleShowsTare},
                    NetCase{WeightKind::gross, 11860, {}, 20180, {}, code::scaleNetNegative},
                    NetCase{WeightKind::net, 50, {}, {}, {}, code::valueOutOfRange}));

}  // namespace
}  // namespace treadwell::intake
