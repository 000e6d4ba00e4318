#pragma once

#include "core/plan/inputs.h"
#include "core/season/season.h"

#include <set>
#include <string>
#include <vector>

namespace treadwell::plan_page {

/// A plan that is being thought about: what stands to choice, and what of it is left out.
struct Scenario {
    plan::Inputs all;
    std::set<std::string> idleTractors;
    std::set<std::string> idleFields;
    std::set<std::string> idleSilos;

    /// Without what is left out.
    [[nodiscard]] plan::Inputs chosen() const;
    friend bool operator==(const Scenario&, const Scenario&) = default;
};

/// Ways to begin another scenario from one.
enum class Variation : std::uint8_t { copy, oneTruckFewer, twoTrucksMore, withoutTheLightest };

/// `name` is what it is called; one truck and one tractor stay in any case.
[[nodiscard]] Scenario variationOf(const Scenario& scenario, Variation variation, std::string name);

/// What to begin with: the plan that the season has adopted or else one from its farm.
[[nodiscard]] Scenario firstOf(const season::Season& season, LocalDay today);

/// `name`, or with the first number behind it that makes it one of its own.
[[nodiscard]] std::string freeName(const std::vector<Scenario>& scenarios, const std::string& name);

}  // namespace treadwell::plan_page
