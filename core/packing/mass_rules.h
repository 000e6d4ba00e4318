#pragma once

#include "core/base/source.h"
#include "core/quantity/relations.h"

#include <cstdint>
#include <optional>
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
};

[[nodiscard]] std::span<const MassRuleFacts> massRules() noexcept;
[[nodiscard]] const MassRuleFacts& factsOf(MassRule rule);
[[nodiscard]] std::string_view toText(MassRule rule);
[[nodiscard]] std::optional<MassRule> massRuleFromText(std::string_view name) noexcept;
[[nodiscard]] std::string_view toText(Basis basis) noexcept;

/// The machine mass that `rule` asks for at a delivery of 0 or more.
[[nodiscard]] MachineMass requiredMass(const MassRuleFacts& rule, AsFedRate delivery,
                                       DryMatter dryMatter) noexcept;

}  // namespace treadwell::packing
