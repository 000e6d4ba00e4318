#pragma once

#include "app/cli/command.h"
#include "app/cli/table.h"
#include "core/density/doubts.h"
#include "core/density/readings.h"

namespace treadwell::cli {

// An estimate reads the same in whatever command it stands.

/// Member `name_kg_dm_m3`: {median, low80, high80}.
void writeDensity(JsonWriter& json, const std::string& name, const density::Distribution& density);

/// `231 kg DM/m3, 80 % band 208 kg DM/m3 to 255 kg DM/m3`
template <class D>
[[nodiscard]] std::string bandInWords(const D& distribution, const words::Style& style) {
    using words::inWords;
    return inWords(distribution.median().amount(), style) + ", 80 % band " +
           inWords(distribution.low80().amount(), style) + " to " +
           inWords(distribution.high80().amount(), style);
}

/// Three cells, empty without a density.
void addBand(std::vector<Cell>& row, const density::Distribution* density);

/// Members of the object that is open in `json`.
void writeEstimate(JsonWriter& json, const density::Estimate& estimate, bool working,
                   const words::Style& style);

/// Members "doubts" and "to_measure" of the object that is open in `json`.
void writeDoubts(JsonWriter& json, const density::Doubts& doubts, const words::Style& style);

/// The largest part of the band, or all with the working, and what would narrow it.
void printDoubts(const density::Doubts& doubts, bool working, const Answer& answer);

/// Member "surveys": each with its density and that of what came since the one before, or why there is none.
void writeSurveys(JsonWriter& json, const density::Readings& readings, const words::Style& style);

/// The newest survey and what was learnt.
void printSurveys(const density::Readings& readings, const Answer& answer);

/// Member `name`: the estimate and its doubts, or {"reason": why there is none}.
void writeReading(JsonWriter& json, std::string_view name, const density::SiloReading& reading,
                  const density::Doubts& doubts, bool working, const words::Style& style);

/// The estimate when full and how it lies now, or why there is none.
void printReading(const density::SiloReading& reading, const density::Doubts& doubts, bool working,
                  const Answer& answer);

/// `tractors` is how many there are, counted or not.
void printEstimate(const density::Estimate& estimate, std::size_t tractors, bool working,
                   const Answer& answer);

}  // namespace treadwell::cli
