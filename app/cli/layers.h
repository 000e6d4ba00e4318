#pragma once

#include "app/cli/command.h"
#include "app/cli/list_form.h"
#include "core/season/season.h"

namespace treadwell::cli {

/// The layers of a silo at one moment, bottom up: what lies in each, who packed it and how long, and how
/// dense it is when full and as it lies now.
[[nodiscard]] Outcome printLayers(const season::Season& season, const farm::Silo& silo, Instant at,
                                  ListForm form, const Answer& answer);

}  // namespace treadwell::cli
