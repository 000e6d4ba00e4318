#include "core/packing/mass_rules.h"

#include <gtest/gtest.h>

namespace treadwell::packing {
namespace {

TEST(MassRules, EveryRuleIsReadBackFromItsNameAndNamesItsSource) {
    for (const MassRuleFacts& facts : massRules()) {
        EXPECT_EQ(enumText(facts.rule), facts.name);
        EXPECT_EQ(enumFromText<MassRule>(facts.name), facts.rule);
        EXPECT_FALSE(facts.source.citation.empty());
    }
    EXPECT_FALSE(enumFromText<MassRule>("england"));
}

TEST(MassRules, OnlyTheDryBasisDependsOnDryMatter) {
    const AsFedRate delivery = AsFedRate::fromTonnesPerHour(60);
    for (const MassRuleFacts& facts : massRules()) {
        const bool same = requiredMass(facts, delivery, DryMatter::fromPercent(30)) ==
                          requiredMass(facts, delivery, DryMatter::fromPercent(35));
        EXPECT_EQ(same, facts.basis == Basis::asFed) << facts.name;
        EXPECT_EQ(requiredMass(facts, AsFedRate{}, DryMatter::fromPercent(30)), MachineMass{});
    }
    EXPECT_EQ(enumText(Basis::asFed), "asFed");
    EXPECT_EQ(enumText(Basis::dryMatter), "dryMatter");
}

}  // namespace
}  // namespace treadwell::packing
