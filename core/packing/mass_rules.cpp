#include "core/packing/mass_rules.h"

#include "core/packing/codes.h"

#include <array>
#include <stdexcept>

namespace treadwell::packing {

namespace {

constexpr std::array kRules{
    // 800 lb for each ton an hour is 0.4 h of the delivery, so 400 kg for each tonne an hour.
    MassRuleFacts{MassRule::northAmerica,
                  "northAmerica",
                  400.0,
                  Basis::asFed,
                  {"North American extension services, 800 lb per ton/h", Evidence::published},
                  code::yardstickNorthAmerica},
    MassRuleFacts{MassRule::thirdOfHourlyMass,
                  "thirdOfHourlyMass",
                  1000.0 / 3.0,
                  Basis::asFed,
                  {"Advisers in Austria, Switzerland and the Netherlands", Evidence::published},
                  code::yardstickThirdOfHourlyMass},
    MassRuleFacts{MassRule::quarterOfHourlyMass,
                  "quarterOfHourlyMass",
                  250.0,
                  Basis::asFed,
                  {"Advisers in Germany", Evidence::fromMemory},
                  code::yardstickQuarterOfHourlyMass},
    MassRuleFacts{MassRule::france,
                  "france",
                  400.0,
                  Basis::dryMatter,
                  {"Advisers in France", Evidence::published},
                  code::yardstickFrance},
    MassRuleFacts{MassRule::brittany,
                  "brittany",
                  1000.0 / 3.0,
                  Basis::dryMatter,
                  {"Advisers in Brittany, tonnes of dry matter an hour / 3", Evidence::published},
                  code::yardstickBrittany},
};

}  // namespace

std::span<const MassRuleFacts> massRules() noexcept {
    return kRules;
}

const MassRuleFacts& factsOf(MassRule rule) {
    for (const MassRuleFacts& facts : kRules) {
        if (facts.rule == rule) return facts;
    }
    throw std::logic_error("a packing-mass rule without facts");
}

std::array<std::string_view, 5> enumTexts(MassRule /*rule*/) noexcept {
    std::array<std::string_view, kRules.size()> texts;
    for (std::size_t i = 0; i < kRules.size(); ++i) texts[i] = kRules[i].name;
    return texts;
}

MachineMass requiredMass(const MassRuleFacts& rule, AsFedRate delivery, DryMatter dryMatter) noexcept {
    const double tonnesPerHour =
        rule.basis == Basis::asFed ? delivery.tonnesPerHour() : (delivery * dryMatter).tonnesPerHour();
    return MachineMass::fromKilograms(rule.kg_per_t_per_h * tonnesPerHour);
}

}  // namespace treadwell::packing
