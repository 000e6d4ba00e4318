#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/entries/entry.h"
#include "core/farm/field.h"
#include "core/quantity/relations.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace treadwell::entries {

enum class DryMatterMethod : std::uint8_t { oven, microwave, meter, estimate };

constexpr std::array<std::string_view, 4> enumTexts(DryMatterMethod /*method*/) noexcept {
    return {"oven", "microwave", "meter", "estimate"};
}

/// A dry-matter reading of what is being brought in.
struct DryMatterSample {
    static constexpr std::string_view kKind = "dry_matter_sample";
    static constexpr int kVersion = 1;

    DryMatter dryMatter;
    DryMatterMethod method = DryMatterMethod::oven;
    std::optional<farm::FieldId> field;  ///< speaks of this field's loads alone, if given
    std::optional<AsFedMass> wet;        ///< the dish's content before drying
    std::optional<DryMass> dry;          ///< and after
    std::optional<EntryId> load = {};    ///< that it was taken from, and speaks of before all others

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("dry_kg", self.dry);
        visit("dry_matter", self.dryMatter);
        visit("field", self.field);
        visit("load", self.load);
        visit("method", self.method);
        visit("wet_kg", self.wet);
    }
    friend bool operator==(const DryMatterSample&, const DryMatterSample&) = default;
};

/// Dry matter 10-90 %; dish weights that give another value are refused.
[[nodiscard]] Result<void> validate(const DryMatterSample& entry);

}  // namespace treadwell::entries
