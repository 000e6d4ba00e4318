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
/// columnNotThere, dateOrderAmbiguous, massUnitMissing, massUnitUnknown.
///
/// A ticket that weighs a load of the season without one corrects that load: see matchLoads(). The correction
/// keeps the time at which the load was tipped, but not a guess at it.
[[nodiscard]] Result<Intake> readTickets(std::string_view bytes, const Context& context);

/// What a ticket's row can tell.
inline constexpr std::array kTicketColumns{Column::ticket, Column::date, Column::time,   Column::truck,
                                           Column::field,  Column::silo, Column::gross,  Column::tare,
                                           Column::net,    Column::unit, Column::status, Column::scale};

/// All that must be answered before a table can be read as tickets: columnMissing, massUnitMissing,
/// massUnitUnknown, dateOrderAmbiguous.
[[nodiscard]] std::vector<Error> openTicketQuestions(const Columns& columns, const formats::CsvTable& table,
                                                     const Context& context);

}  // namespace treadwell::intake
