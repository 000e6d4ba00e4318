#pragma once

#include <array>
#include <string_view>

namespace treadwell::entries {

/// What a field is called where its value carries its own unit: `mass_kg` is `mass`.
[[nodiscard]] constexpr std::string_view fieldName(std::string_view key) noexcept {
    constexpr std::array<std::string_view, 12> kUnits{
        "_kg_dm_m3", "_run_per_rise", "_kg_per_s", "_m_per_s", "_per_s", "_m3",
        "_kg",       "_us",           "_deg",      "_m",       "_s",     "_k"};
    for (const std::string_view unit : kUnits) {
        if (key.ends_with(unit)) return key.substr(0, key.size() - unit.size());
    }
    return key;
}

}  // namespace treadwell::entries
