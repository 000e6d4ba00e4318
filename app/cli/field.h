#pragma once

#include "app/cli/command.h"
#include "app/cli/list_form.h"
#include "core/density/stack.h"
#include "core/season/season.h"

#include <optional>

namespace treadwell::cli {

/// Which places of a silo are asked for; what is not given runs over the silo, across stays in the middle.
struct FieldQuestion {
    density::Filled filled = density::Filled::whenFull;
    std::optional<Length> along;
    std::optional<Length> up;
    std::optional<Length> across;
};

/// The density over a silo: its mean, that of each section along it, the weakest places and why, and place by
/// place.
[[nodiscard]] Outcome printField(const season::Season& season, const farm::Silo& silo, Instant at,
                                 const FieldQuestion& question, ListForm form, const Answer& answer);

}  // namespace treadwell::cli
