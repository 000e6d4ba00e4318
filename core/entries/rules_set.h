#pragma once

#include "core/base/error.h"
#include "core/farm/site_rules.h"

#include <string>
#include <string_view>

namespace treadwell::entries {

/// The site's goals and limits from now on.
struct RulesSet {
    static constexpr std::string_view kKind = "rules_set";
    static constexpr int kVersion = 1;

    farm::SiteRules rules;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("rules", self.rules);
    }
    friend bool operator==(const RulesSet&, const RulesSet&) = default;
};

[[nodiscard]] inline Result<void> validate(const RulesSet& entry) {
    return farm::validate(entry.rules);
}

}  // namespace treadwell::entries
