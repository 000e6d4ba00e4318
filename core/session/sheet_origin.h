#pragma once

#include "core/review/day_sheet.h"
#include "core/session/session.h"

namespace treadwell::session {

/// The head of the file, and who closed the day, while the name is not erased.
[[nodiscard]] review::SheetOrigin originOf(const season::Season& season, const season::Day& day,
                                           const std::map<entries::PersonId, std::string>& people,
                                           const Hash& head);

/// The same of an open file. Error: journalDamaged.
[[nodiscard]] Result<review::SheetOrigin> sheetOrigin(Session& session, const season::Day& day);

}  // namespace treadwell::session
