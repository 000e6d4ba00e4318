#include "core/density/delivery_limit.h"

#include "tests/core/density/example.h"

#include <gtest/gtest.h>

#include <cmath>

namespace treadwell::density {
namespace {

TEST(DeliveryLimit, IsTheClosedFormAtEvenChances) {
    const Situation situation = exampleSituation();
    const auto limit = deliveryLimit(situation, {});
    ASSERT_TRUE(limit);
    EXPECT_EQ(limit->outcome, DeliveryLimit::Outcome::limited);
    const Estimate result = estimate(situation).value();
    const double p =
        (result.target.density.si() / FieldEquation::meanFactor(3) - 136.156938679) / 0.170959315;
    EXPECT_NEAR(limit->required.si, p, 1e-5);
    const double strength = 19000 / std::sqrt(1.5);
    EXPECT_NEAR(limit->rate.tonnesPerHour(), 60 * 0.35 * std::pow(strength / (15 * p), 2), 1e-5);
}

TEST(DeliveryLimit, AtTheLimitTheChanceIsTheOneAskedFor) {
    for (const double wanted : {0.2, 0.5, 0.8, 0.95}) {
        Situation situation = exampleSituation();
        const auto limit = deliveryLimit(situation, {}, Chance::fromFraction(wanted));
        ASSERT_TRUE(limit);
        ASSERT_EQ(limit->outcome, DeliveryLimit::Outcome::limited) << wanted;
        situation.work = limit->rate;
        EXPECT_NEAR(estimate(situation)->chance.fraction(), wanted, 1e-9);
    }
}

TEST(DeliveryLimit, SayWhenItIsNoDelivery) {
    Situation situation = exampleSituation();
    situation.target = {.minimum = DryDensity::fromSi(100), .porosity = Porosity::fromFraction(0.9)};
    EXPECT_EQ(deliveryLimit(situation, {})->outcome, DeliveryLimit::Outcome::anyDelivery);
    situation = exampleSituation();
    situation.machines.clear();
    const auto none = deliveryLimit(situation, {});
    EXPECT_EQ(none->outcome, DeliveryLimit::Outcome::nothingPacks);
    EXPECT_EQ(none->rate, AsFedRate{});
    EXPECT_GT(none->required.si, 0.0);
}

TEST(DeliveryLimit, AVanishingNeedIsAnyDelivery) {
    Situation situation = exampleSituation();
    const double unpacked = FieldEquation::bracket(0) * FieldEquation::meanFactor(3);
    situation.target = {.minimum = DryDensity::fromSi(unpacked * 1.0001),
                        .porosity = Porosity::fromFraction(0.9)};
    const auto limit = deliveryLimit(situation, {});
    EXPECT_EQ(limit->outcome, DeliveryLimit::Outcome::anyDelivery);
    EXPECT_TRUE(std::isfinite(limit->rate.si()));
}

TEST(DeliveryLimit, NamesTheFieldThatIsWrong) {
    EXPECT_EQ(deliveryLimit(exampleSituation(), {}, Chance::fromFraction(1)).error().field, "chance");
    Situation situation = exampleSituation();
    situation.dryMatter = DryMatter{};
    EXPECT_EQ(deliveryLimit(situation, {}).error().field, "dryMatter");
}

TEST(DeliveryLimit, OutcomesHaveNames) {
    EXPECT_EQ(enumText(DeliveryLimit::Outcome::limited), "limited");
    EXPECT_EQ(enumText(DeliveryLimit::Outcome::anyDelivery), "anyDelivery");
    EXPECT_EQ(enumText(DeliveryLimit::Outcome::nothingPacks), "nothingPacks");
}

}  // namespace
}  // namespace treadwell::density
