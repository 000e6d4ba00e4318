#pragma once

#include "app/cli/layers.h"

namespace treadwell::cli {

/// What the season's cores and heights say of the farm at a moment: the evidence, what it did to the bands,
/// and how well each silo would have been foretold from the others.
void printCalibration(const season::Season& season, Instant at, ListForm form, const Answer& answer);

}  // namespace treadwell::cli
