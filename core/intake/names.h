#pragma once

#include "core/base/error.h"
#include "core/intake/codes.h"

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace treadwell::intake {

/// A name as it is compared: composed and lower-case Latin letters, outer blanks gone and inner ones single.
[[nodiscard]] std::string foldedName(std::string_view name);

/// The words of a column's header or of a flag: lower-case, without accents, signs as blanks, `%` as
/// `percent`.
[[nodiscard]] std::string plainWords(std::string_view text);

/// Finds the id of what the farm calls by a name.
template <class Id>
class Names {
  public:
    void add(std::string_view name, Id id) {
        const auto [place, isNew] = m_ids.try_emplace(foldedName(name), id);
        if (!isNew && place->second != id) place->second.reset();
    }

    /// Errors: nameUnknown, nameShared.
    [[nodiscard]] Result<Id> find(std::string_view name, std::string field) const {
        const auto found = m_ids.find(foldedName(name));
        if (found == m_ids.end()) return fail(code::nameUnknown, std::move(field), std::string{name});
        if (!found->second) return fail(code::nameShared, std::move(field), std::string{name});
        return *found->second;
    }

  private:
    std::map<std::string, std::optional<Id>> m_ids;  // none where several things share the name
};

}  // namespace treadwell::intake
