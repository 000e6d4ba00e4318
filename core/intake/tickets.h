#pragma once

#include "core/intake/intake.h"

namespace treadwell::intake {

/// Reads what a scale has exported: a ticket a row, with a time (and date), a net weight or gross and tare,
/// and as far as there are such columns ticket number, truck, field, silo, unit and a status.
///
/// A net weight that is not gross less tare within one scale interval, a name that the farm does not know, a
/// ticket number that stands twice on one day with different figures: such rows go to quarantine. Gross and
/// tare in each other's column are put right, with a note, where the net weight bears it out. A status such
/// as `void` takes back the ticket with that number on that day: one of the same file adds nothing, one
/// recorded before gets a void entry. Rows recorded before, exact copies and sums at the foot add nothing and
/// are counted.
///
/// Errors speak of the file as a whole: those of formats::readCsv, columnMissing, columnTwice,
/// dateOrderAmbiguous, massUnitMissing, massUnitUnknown.
[[nodiscard]] Result<Intake> readTickets(std::string_view bytes, const Context& context);

}  // namespace treadwell::intake
