#pragma once

#include "core/review/day_sheet.h"
#include "core/session/session.h"

namespace treadwell::session {

/// The head of the file, and who closed a day of its season. Error: journalDamaged.
[[nodiscard]] Result<review::SheetOrigin> sheetOrigin(Session& session, const season::Day& day);

}  // namespace treadwell::session
