#include "app/desktop/desk/sheet_file.h"

#include "core/base/atomic_file.h"
#include "core/review/codes.h"
#include "core/session/codes.h"
#include "core/session/sheet_origin.h"

namespace treadwell::desk {

Result<void> writeSheet(const session::Files& files, const Clock& clock, SheetWanted wanted,
                        const std::filesystem::path& pdf) {
    auto opened = session::Session::open(files, clock, session::Purpose::reading);
    if (!opened) return Unexpected{opened.error()};
    const auto season = opened->snapshot();
    if (season->days().empty()) return fail(code::seasonEmpty, "season", files.season.string());
    const LocalDay date = wanted.day.value_or(season->days().back()->date);
    const season::Day* day = season->day(date);
    if (day == nullptr) return fail(code::dayUnknown, "day", toIso8601(date));
    const auto origin = session::sheetOrigin(*opened, *day);
    if (!origin) return Unexpected{origin.error()};
    const auto sheet = review::daySheet(*season, date, clock.now(), *origin);
    if (!sheet) return Unexpected{sheet.error()};
    wanted.style.zone = season->zone();
    return writeFileAtomically(pdf, report::pdfOf(*sheet, wanted.style, wanted.paper).toStdString());
}

}  // namespace treadwell::desk
