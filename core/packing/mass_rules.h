#pragma once

#include "core/base/code.h"
#include "core/base/source.h"
#include "core/quantity/relations.h"

#include <array>
#include <cstdint>
#include <span>
#include <string_view>

namespace treadwell::packing {

/// The rules of thumb for the mass of the packing machines together. They differ threefold, so a rule is
/// never shown without its basis.
enum class MassRule : std::uint8_t { northAmerica, thirdOfHourlyMass, quarterOfHourlyMass, france, brittany };

/// What the hourly mass is counted in.
enum class Basis : std::uint8_t { asFed, dryMatter };

struct MassRuleFacts {
    MassRule rule;
    std::string_view name;  ///< stable name, as in `--json` and entries
    double kg_per_t_per_h;  ///< machine mass for each tonne an hour, on the rule's basis
    Basis basis;
    Source source;
    Code words;  ///< names the rule with its basis
};

[[nodiscard]] std::span<const MassRuleFacts> massRules() noexcept;
[[nodiscard]] const MassRuleFacts& factsOf(MassRule rule);
[[nodiscard]] std::array<std::string_view, 5> enumTexts(MassRule rule) noexcept;
constexpr std::array<std::string_view, 2> enumTexts(Basis /*basis*/) noexcept {
    return {"asFed", "dryMatter"};
}

/// The machine mass that `rule` asks for at a delivery of 0 or more.
[[nodiscard]] MachineMass requiredMass(const MassRuleFacts& rule, AsFedRate delivery,
                                       DryMatter dryMatter) noexcept;

}  // namespace treadwell::packing
