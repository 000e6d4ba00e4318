#pragma once

#include "core/base/error.h"
#include "core/farm/field.h"

#include <string>
#include <string_view>

namespace treadwell::entries {

/// A field as it is from now on; the same id again is a change.
struct FieldDefined {
    static constexpr std::string_view kKind = "field_defined";
    static constexpr int kVersion = 1;

    farm::Field field;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("field", self.field);
    }
    friend bool operator==(const FieldDefined&, const FieldDefined&) = default;
};

[[nodiscard]] inline Result<void> validate(const FieldDefined& entry) {
    return farm::validate(entry.field);
}

}  // namespace treadwell::entries
