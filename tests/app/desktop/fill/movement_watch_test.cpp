#include "app/desktop/fill/movement_watch.h"

#include "core/density/codes.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

namespace treadwell::fill {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

const Instant kMidday = at("2026-02-10T12:00:00Z");

SeasonMaker day() {
    SeasonMaker maker;
    maker.add(entries::SiloDefined{someSilo()}, kMidday - 4h);
    maker.add(entries::TractorDefined{someTractor(1, 14)}, kMidday - 4h);
    maker.add(someWork(1, farm::Activity::packing), kMidday - 4h);
    for (int i = 0; i < 20; ++i) maker.add(someLoad(12), kMidday + i * 6min);
    return maker;
}

MovementWatch::SeasonPointer seasonOf(const SeasonMaker& maker) {
    return std::make_shared<const season::Season>(season::Season::fold(maker.entries));
}

DryDensity medianBefore(MovementWatch& watch, Instant now) {
    return watch.before(kBunker, now).layer.estimate.value().density.median();
}

// A late entry changes the past; what was shown then is what the present is held against.
TEST(MovementWatch, RemembersWhatWasKnownHalfAnHourAgo) {
    SeasonMaker maker = day();
    const auto first = seasonOf(maker);
    maker.add(entries::LayerSeen{kBunker, Length::fromCentimetres(30), {}}, kMidday - 1h);
    const auto corrected = seasonOf(maker);
    const Instant now = kMidday + 2h;
    MovementWatch watch;
    watch.note(first, now - 40min);
    watch.note(corrected, now - 10min);
    const DryDensity then =
        density::readingsAt(*first, kBunker, now - 30min).layer.estimate->density.median();
    EXPECT_EQ(medianBefore(watch, now), then);
    EXPECT_NE(density::readingsAt(*corrected, kBunker, now - 30min).layer.estimate->density.median(), then);
    // Half an hour after the correction it is the past as well.
    watch.note(corrected, now + 21min);
    EXPECT_EQ(medianBefore(watch, now + 21min),
              density::readingsAt(*corrected, kBunker, now - 9min).layer.estimate->density.median());
}

TEST(MovementWatch, ForgetsWhatAClockThatWentBackHasNotSeen) {
    const SeasonMaker maker = day();
    const auto early = seasonOf(maker), late = seasonOf(maker);
    MovementWatch watch;
    watch.note(late, kMidday + 3h);
    watch.note(early, kMidday + 2h);
    EXPECT_EQ(medianBefore(watch, kMidday + 2h),
              density::readingsAt(*early, kBunker, kMidday + 90min).layer.estimate->density.median());
}

TEST(MovementWatch, HasNothingToCompareBeforeItHasNotedAnything) {
    MovementWatch watch;
    EXPECT_THROW(static_cast<void>(watch.before(kBunker, kMidday)), std::logic_error);
}

struct Text : testing::Test {
    [[nodiscard]] QString text(std::vector<density::Move> moves) const {
        density::Movement movement{DryDensity::fromKilogramsPerCubicMetre(212), {}, std::move(moves)};
        movement.after = movement.before;
        for (const density::Move& move : movement.moves) movement.after += move.change;
        return movementText(movement, Speech{units, FarmZone{}});
    }
    static density::Move move(double change, const Message& what) {
        return {density::MovedBy::other, DryDensity::fromKilogramsPerCubicMetre(change), what};
    }
    settings::DisplayUnits units{UnitSystem::metric, QLocale::c()};
    Message depth{code::movedDepth, {Length::fromMetres(1).amount(), Length::fromMetres(2).amount()}};
    Message rest{code::movedOther, {}};
};

TEST_F(Text, NamesTheOneCause) {
    const QString said = text({move(-6, depth), move(0.4, rest)});
    EXPECT_TRUE(said.contains(QStringLiteral("−6: mean depth"))) << said.toStdString();
}

TEST_F(Text, NamesTheSumAndTheLargestOfSeveral) {
    const QString said = text({move(-9, depth), move(3, rest)});
    EXPECT_TRUE(said.contains(QStringLiteral("−6"))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("−9: mean depth")));
}

TEST_F(Text, SaysThatNothingMoved) {
    EXPECT_EQ(text({}), text({move(0.5, rest)}));
    EXPECT_FALSE(text({}).isEmpty());
    EXPECT_EQ(movementText(std::nullopt, Speech{units, FarmZone{}}), QString{});
}

}  // namespace
}  // namespace treadwell::fill
