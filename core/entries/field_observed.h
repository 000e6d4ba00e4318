#pragma once

#include "core/base/error.h"
#include "core/farm/field.h"
#include "core/quantity/range.h"
#include "core/quantity/relations.h"

#include <optional>
#include <string>
#include <string_view>

namespace treadwell::entries {

/// What is known of a standing field: when it was planted and silked, its hybrid, and on a visit its milk
/// line and the dry matter of whole plants. A later observation of the same thing replaces the earlier.
struct FieldObserved {
    static constexpr std::string_view kKind = "field_observed";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    farm::FieldId field;
    std::optional<LocalDay> planted;
    std::optional<LocalDay> silked;
    std::optional<std::string> hybrid;
    std::optional<std::int64_t> hybridDays;  ///< of maturity, as the seller rates it
    std::optional<Share> milkLine;           ///< how far the starch has come from the crown
    std::optional<DryMatter> dryMatter;      ///< of whole plants

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("dry_matter", self.dryMatter);
        visit("field", self.field);
        visit("hybrid", self.hybrid);
        visit("hybrid_days", self.hybridDays);
        visit("milk_line", self.milkLine);
        visit("planted", self.planted);
        visit("silked", self.silked);
    }
    friend bool operator==(const FieldObserved&, const FieldObserved&) = default;
};

/// Silked after planted; maturity of 60-140 days, milk line 0-100 %, dry matter 10-90 %; at least one of all.
[[nodiscard]] Result<void> validate(const FieldObserved& entry);

}  // namespace treadwell::entries
