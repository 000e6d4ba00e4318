#pragma once

#include "app/cli/table.h"
#include "core/base/enum_text.h"
#include "core/season/season.h"

#include <array>

namespace treadwell::cli {

/// What other programs may take from a season, a table each; layers have a verb of their own.
enum class Export : std::uint8_t { loads, samples, tractorHours };

constexpr std::array<std::string_view, 3> enumTexts(Export /*what*/) noexcept {
    return {"loads", "samples", "tractorHours"};
}

/// All of the season as known at `now`, in order of time: a row a load that stands, a dry-matter sample, or a
/// tractor's day.
[[nodiscard]] Table exportOf(const season::Season& season, Export what, Instant now);

}  // namespace treadwell::cli
