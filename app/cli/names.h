#pragma once

#include "core/season/farm_book.h"

#include <optional>

namespace treadwell::cli {

/// What the farm calls it; an id that the farm does not know stands for itself.
template <class Things, class Id>
[[nodiscard]] std::string nameIn(const Things& things, const Id& id) {
    const auto known = things.find(id);
    return known == things.end() ? id.value.text() : known->second.name;
}

/// Nothing where there is no id.
template <class Things, class Id>
[[nodiscard]] std::string nameIn(const Things& things, const std::optional<Id>& id) {
    return id ? nameIn(things, *id) : std::string{};
}

}  // namespace treadwell::cli
