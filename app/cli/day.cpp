#include "app/cli/day.h"

#include "app/cli/open_season.h"
#include "app/cli/season_file.h"
#include "app/words/document.h"
#include "core/session/sheet_origin.h"

#include <ostream>

namespace treadwell::cli {

void printDocument(const review::Document& document, DocumentForm form, const Answer& answer) {
    switch (form) {
        case DocumentForm::json: {
            JsonWriter json{2};
            words::writeJson(json, document, answer.style);
            answer.out << json.text() << '\n';
            return;
        }
        case DocumentForm::csv:
            answer.out << words::csvText(document, answer.style);
            return;
        case DocumentForm::message:
            answer.out << words::messageText(document, answer.style);
            return;
        case DocumentForm::text:
            answer.out << words::plainText(document, answer.style);
    }
}

Outcome day(const DayOptions& options, const Answer& answer) {
    const auto at = momentFrom(options.at, answer.style);
    if (!at) return tl::unexpected{at.error()};
    auto opened = openSeason(options.file, Purpose::reading, answer);
    if (!opened) return tl::unexpected{opened.error()};
    const auto season = opened->snapshot();
    const auto found = dayFrom(*season, options.date);
    if (!found) return tl::unexpected{found.error()};
    Answer local = answer;
    local.style.zone = season->zone();
    const auto origin = session::sheetOrigin(*opened, **found);
    if (!origin) return failed(origin.error(), answer.style);
    const auto sheet = review::daySheet(*season, (*found)->date, *at, *origin);
    if (!sheet) return failed(sheet.error(), answer.style);
    const DocumentForm form = answer.json       ? DocumentForm::json
                              : options.csv     ? DocumentForm::csv
                              : options.message ? DocumentForm::message
                                                : DocumentForm::text;
    printDocument(*sheet, form, local);
    return {};
}

}  // namespace treadwell::cli
