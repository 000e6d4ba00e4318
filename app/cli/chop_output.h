#pragma once

#include "app/cli/command.h"
#include "core/samples/chop.h"
#include "core/samples/particle_size.h"

namespace treadwell::cli {

/// What one sample, or several pooled, say of the chop.
struct ChopView {
    samples::SieveParts parts;
    samples::ChopRanges ranges;
    std::optional<samples::ChopSetting> setting;
    std::optional<Length> topLength;
    std::optional<Share> fibre;  ///< of the dry matter
};

/// Members of the object that is open in `json`.
void writeChop(JsonWriter& json, const ChopView& chop, const words::Style& style);

void printChop(const ChopView& chop, const Answer& answer);

}  // namespace treadwell::cli
