#pragma once

#include "app/cli/command.h"
#include "core/season/sampled.h"

namespace treadwell::cli {

/// What the samples of a day and the observations of the fields say, up to `now`.
void printSamples(const season::Season& season, const season::Day& day, Instant now, const Answer& answer);

}  // namespace treadwell::cli
