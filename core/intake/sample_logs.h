#pragma once

#include "core/intake/intake.h"

namespace treadwell::intake {

// As the lists of logs.h: a row is an entry, errors speak of the file, a row that cannot be used goes to
// quarantine.

/// `time, field, sieves [mm], masses [g] or parts [percent], before [g], top length [mm], wet sample`: one
/// test a row. Sieves are openings from the top down, `19/8/4`, or a stack's name; masses and parts stand in
/// the same order, the pan last, `6/70.2/31/11`.
[[nodiscard]] Result<Intake> readSieveTests(std::string_view bytes, const Context& context);

/// `time, field, material, kernels, whole [g], coarse [g], whole starch [percent], coarse starch [percent]`:
/// a count in a cup, a score, or both. Materials: fresh, fermented; fresh where the cell is empty.
[[nodiscard]] Result<Intake> readKernelTests(std::string_view bytes, const Context& context);

/// `date, low, high`, in C or F as the headers say: one entry for the file.
[[nodiscard]] Result<Intake> readTemperatures(std::string_view bytes, const Context& context);

/// `time, field, planted, silked, hybrid, hybrid days, milk line [percent], dry matter [percent]`: visits to
/// standing fields.
[[nodiscard]] Result<Intake> readFieldVisits(std::string_view bytes, const Context& context);

/// `time, cut [mm], roll gap [mm], cutting height [cm], processor`: how the harvester is set from then on.
[[nodiscard]] Result<Intake> readChopSettings(std::string_view bytes, const Context& context);

/// `time, silo, mass [t], dry matter [percent], face [m from the back wall]`: what was fed from an opened
/// silo. A mass needs its unit in the header.
[[nodiscard]] Result<Intake> readRemovals(std::string_view bytes, const Context& context);

/// `time, silo, behind face, core, across [m], height [m]`: temperatures in C or F as the headers say.
[[nodiscard]] Result<Intake> readFaceTemperatures(std::string_view bytes, const Context& context);

}  // namespace treadwell::intake
