#include "app/desktop/fill/advice_state.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

namespace treadwell::fill {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

/// Loads of 12 t every 6 min; one tractor packs, and one may stand by.
std::optional<QString> silenceWith(double tractorTonnes, int loads, double standbyTonnes = 0) {
    SeasonMaker maker;
    const Instant start = at("2026-02-10T08:00:00Z");
    maker.add(entries::SiloDefined{someSilo()}, start);
    maker.add(entries::TractorDefined{someTractor(1, tractorTonnes)}, start);
    if (standbyTonnes > 0) maker.add(entries::TractorDefined{someTractor(2, standbyTonnes)}, start);
    maker.add(entries::LayerSeen{idOf<farm::SiloTag>(1), Length::fromCentimetres(15), {}}, start);
    maker.add(someWork(1, farm::Activity::packing), start);
    for (int i = 0; i < loads; ++i) maker.add(someLoad(12), at("2026-02-10T12:00:00Z") + i * 6min);
    const auto season = season::Season::fold(maker.entries);
    const auto readings = density::readingsAt(season, idOf<farm::SiloTag>(1), at("2026-02-10T13:54:00Z"));
    const settings::DisplayUnits units{UnitSystem::metric, QLocale::c()};
    return silenceOf(adviceAt(season, readings, {}), readings, Speech(units, FarmZone{}));
}

TEST(Silence, SaysThatAllIsWellOrWhyNothingIsKnown) {
    const auto well = silenceWith(40, 20);
    ASSERT_TRUE(well);
    EXPECT_TRUE(well->contains(QStringLiteral("kg DM/m³"))) << well->toStdString();
    const auto early = silenceWith(40, 2);
    ASSERT_TRUE(early);
    EXPECT_TRUE(early->contains(QStringLiteral("Too few loads")));
}

TEST(Silence, LeavesAChangeThatIsWeighedToTheVoice) {
    EXPECT_FALSE(silenceWith(14, 20, 20)) << "the one that stands by would reach the target";
}

}  // namespace
}  // namespace treadwell::fill
