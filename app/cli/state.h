#pragma once

#include "app/cli/command.h"
#include "core/density/readings.h"

namespace treadwell::cli {

/// A silo at one moment: what came in, who packs, and the three readings of its density.
void printState(const season::Season& season, const farm::Silo& silo, Instant at, bool working,
                const Answer& answer);

/// What to change now, and everything it was weighed against.
[[nodiscard]] Outcome printAdvice(const season::Season& season, const farm::Silo& silo, Instant at,
                                  const Answer& answer);

}  // namespace treadwell::cli
