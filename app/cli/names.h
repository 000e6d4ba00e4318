#pragma once

#include "app/cli/command.h"
#include "core/season/farm_book.h"

#include <algorithm>
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

/// All names, to choose from.
template <class Things>
[[nodiscard]] std::string namesOf(const Things& things) {
    std::string names;
    for (const auto& [id, thing] : things) names += (names.empty() ? "" : ", ") + thing.name;
    return names;
}

/// Where the thing of that name stands; `option` is what named it.
template <class Things>
[[nodiscard]] tl::expected<typename Things::const_iterator, Failure> thingCalled(const Things& things,
                                                                                 const std::string& name,
                                                                                 const std::string& option) {
    const auto found = std::find_if(things.begin(), things.end(),
                                    [&](const auto& thing) { return thing.second.name == name; });
    if (found != things.end()) return found;
    return tl::unexpected{Failure{
        Status::misused, option + ": none is called \"" + name + "\": give one of " + namesOf(things)}};
}

}  // namespace treadwell::cli
