#pragma once

#include "core/intake/intake.h"
#include "core/season/season.h"

namespace treadwell::intake {

/// What the readers must know of a season; a farm with one silo need not name it.
[[nodiscard]] Context contextOf(const season::Season& season);

}  // namespace treadwell::intake
