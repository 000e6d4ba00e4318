#pragma once

#include "app/desktop/report/pdf_report.h"
#include "core/session/session.h"

#include <optional>

namespace treadwell::desk {

/// What sheet is wanted, and how.
struct SheetWanted {
    std::optional<LocalDay> day;  ///< none: the season's last
    report::Paper paper = report::Paper::a4;
    words::Style style;  ///< its zone is the farm's in any case
};

/// The sheet of a day of the season in `files` as seen at the clock's time, as a PDF in a new file or in
/// place of an old one. Errors: those of session::Session::open and review::daySheet,
/// fileUnwritable.
[[nodiscard]] Result<void> writeSheet(const session::Files& files, const Clock& clock, SheetWanted wanted,
                                      const std::filesystem::path& pdf);

}  // namespace treadwell::desk
