#pragma once

#include "core/intake/intake.h"

namespace treadwell::intake {

// Each reads one kind of list, with a header row and a `time` column (and a `date` column, where they are
// apart). Errors speak of the file as a whole: those of formats::readCsv, columnMissing, columnTwice,
// dateOrderAmbiguous. A row that cannot be used goes to quarantine.

/// `time, tractor, activity, share [percent], silo`: what each tractor does from then on (packing, spreading,
/// away). Without a share a packing tractor packs all its time.
[[nodiscard]] Result<Intake> readTractorLog(std::string_view bytes, const Context& context);

/// `time, field, wet, dry, dry_matter_percent, method`: dishes, weighed wet and dry in one unit, or the dry
/// matter as a meter shows it. Methods: oven, microwave, meter, estimate.
[[nodiscard]] Result<Intake> readSamples(std::string_view bytes, const Context& context);

/// `time, silo, along, across, height`: the rows of one time and silo are one survey.
[[nodiscard]] Result<Intake> readHeights(std::string_view bytes, const Context& context);

/// `time, silo, thickness, method`: layers as they were seen to be spread. Methods: measured, loadsPerCover.
[[nodiscard]] Result<Intake> readLayers(std::string_view bytes, const Context& context);

/// `time, silo, along, across, depth or height, origin, dry_matter_percent, mass, diameter, length, volume,
/// density`: cores of an opened silo. Weights in grams and volumes in m3 where the header says nothing else,
/// density in kg DM/m3. Origins: loaderRemoved, blockCut, machineCorer (where the row says none),
/// faceBalance.
[[nodiscard]] Result<Intake> readCores(std::string_view bytes, const Context& context);

}  // namespace treadwell::intake
