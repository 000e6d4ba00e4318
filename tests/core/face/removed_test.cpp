#include "core/face/removed.h"

#include "core/density/readings.h"
#include "core/face/codes.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>

namespace treadwell::face {
namespace {

using namespace testing_support;

/// 1,400 t at 35 % in level layers, and what is fed of it.
struct Opened {
    SeasonMaker maker = filledLifts();

    void feed(double tonnes, std::optional<double> dryPercent, std::optional<double> face_m,
              const char* when) {
        entries::FeedRemoved removed{idOf<farm::SiloTag>(1), AsFedMass::fromTonnes(tonnes), {}, {}};
        if (dryPercent) removed.dryMatter = DryMatter::fromPercent(*dryPercent);
        if (face_m) removed.face = Length::fromMetres(*face_m);
        maker.add(removed, at(when));
    }
    [[nodiscard]] FedOut fed(const char* now = "2027-06-01T00:00:00Z") const {
        return fedOutOf(season::Season::fold(maker.entries), idOf<farm::SiloTag>(1), at(now));
    }
    [[nodiscard]] Result<FedBalance> balance() const {
        const auto season = season::Season::fold(maker.entries);
        const Instant now = at("2027-06-01T00:00:00Z");
        const auto readings = density::readingsAt(season, idOf<farm::SiloTag>(1), now);
        const auto field = density::fieldOf(season, *readings.layers, density::Filled::asItLies);
        return fedBalanceOf(readings.rolling.siloIn, *field, fed());
    }
};

TEST(FedOut, SumsWhatWasWrittenDown) {
    Opened opened;
    opened.feed(12, 34, 50.0, "2027-01-10T08:00:00Z");
    opened.feed(24, 31, {}, "2027-01-11T08:00:00Z");
    opened.feed(10, {}, 48.5, "2027-01-13T08:00:00Z");
    const FedOut fed = opened.fed();
    EXPECT_EQ(fed.removals.size(), 3u);
    EXPECT_NEAR(fed.mass.tonnes(), 46, 1e-9);
    EXPECT_NEAR(fed.dryMatter->percent(), (12 * 34 + 24 * 31) / 36.0, 1e-9);
    EXPECT_NEAR(fed.face->metres(), 48.5, 1e-12);
    EXPECT_NEAR(fed.perDay(FarmZone{})->tonnes(), 46.0 / 4, 1e-9) << "10 to 13 January are four days";
    EXPECT_EQ(opened.fed("2027-01-10T12:00:00Z").removals.size(), 1u) << "nothing later is seen";
    EXPECT_FALSE(Opened{}.fed().perDay(FarmZone{}));
}

// 1,400 t in, 1,326.5 t out: 5.25 % shrink. 490 t of dry matter in, 416.5 out: 15 % loss. The proportions are
// those of a published check, 100 lb at 65 % moisture losing 5.25 lb of dry matter.
TEST(FedBalance, OfAnEmptySiloNeedsNoPrediction) {
    Opened opened;
    opened.feed(1326.5, 100.0 * 416.5 / 1326.5, 0.0, "2027-05-20T08:00:00Z");
    const auto balance = opened.balance();
    ASSERT_TRUE(balance) << toText(balance.error().code());
    EXPECT_NEAR(balance->massIn.tonnes(), 1400, 1e-6);
    EXPECT_NEAR(balance->dryIn.tonnes(), 490, 1e-6);
    EXPECT_NEAR(balance->balance.shrink.percent(), 5.25, 1e-6);
    EXPECT_NEAR(balance->balance.loss.percent(), 15.0, 1e-6);
}

// Level layers of one height: a face at half the length has passed half of the crop.
TEST(FedBalance, OfAPartTakesThePartBeforeTheFace) {
    Opened opened;
    opened.feed(660, 33.5, 30.0, "2027-03-01T08:00:00Z");
    const auto balance = opened.balance();
    ASSERT_TRUE(balance) << toText(balance.error().code());
    EXPECT_NEAR(balance->massIn.tonnes(), 700, 1e-3);
    EXPECT_NEAR(balance->balance.shrink.percent(), 100.0 * 40 / 700, 1e-3);
    EXPECT_NEAR(balance->balance.loss.percent(), 100.0 * (245 - 660 * 0.335) / 245, 1e-3);
}

TEST(FedBalance, SaysWhatIsMissing) {
    Opened nowhere;
    nowhere.feed(12, 34, {}, "2027-01-10T08:00:00Z");
    EXPECT_EQ(nowhere.balance().error().code(), code::faceNotSeen);
    Opened unsampled;
    unsampled.feed(12, {}, 50.0, "2027-01-10T08:00:00Z");
    EXPECT_EQ(unsampled.balance().error().code(), code::feedNotSampled);
    Opened more;
    more.feed(900, 34, 30.0, "2027-01-10T08:00:00Z");
    EXPECT_EQ(more.balance().error().field, "massOut") << "more than was laid there";
}

// From the face on, what lies before it is gone.
TEST(FeedOut, GoesOnFromWhereTheFaceStands) {
    const Opened opened;
    const auto season = season::Season::fold(opened.maker.entries);
    const auto readings = density::readingsAt(season, idOf<farm::SiloTag>(1), at("2027-01-01T00:00:00Z"));
    const auto field = density::fieldOf(season, *readings.layers, density::Filled::asItLies);
    const LocalDay from{std::chrono::year{2027}, std::chrono::March, std::chrono::day{1}};
    const Loss loss = Loss::fromPercent(10);
    const FeedPlan plan{from, AsFedMass::fromTonnes(30), DryMatter::fromPercent(35), loss, loss,
                        loss, Length::fromMetres(30)};
    const auto out = feedOutOf(season, *readings.layers, *field, plan, from);
    ASSERT_TRUE(out);
    EXPECT_NEAR(out->placed.tonnes(), 245, 1e-3);
    EXPECT_NEAR(out->days, 245 * 0.9 / 10.5, 1e-3);
    EXPECT_NEAR(out->coming.front().from.metres(), 30, 1e-6);
}

}  // namespace
}  // namespace treadwell::face
