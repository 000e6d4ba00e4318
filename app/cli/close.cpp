// The closing of a day: first what is missing, then the entry.
#include "app/cli/day.h"
#include "app/cli/open_season.h"
#include "app/cli/season_entries.h"
#include "core/review/closing.h"

#include <ostream>

namespace treadwell::cli {

namespace {

void tell(const review::Closing& closing, bool closed, const Answer& answer) {
    std::vector<Message> missing;
    for (const review::OpenPoint& point : closing.missing) missing.push_back(point.question);
    if (answer.json) {
        JsonWriter json{2};
        json.beginObject().member("day", toIso8601(closing.entry.day)).member("closed", closed);
        writeMessages(json, "missing", missing, answer.style);
        json.endObject();
        answer.out << json.text() << '\n';
        return;
    }
    for (const Message& message : missing) answer.out << words::inWords(message, answer.style) << '\n';
    if (closed) {
        answer.out << toIso8601(closing.entry.day) << " is closed at "
                   << words::inWords(closing.happened, answer.style) << '\n';
    }
}

}  // namespace

Outcome close(const DayOptions& options, const Answer& answer) {
    auto opened = openSeason(options.file, Purpose::writing, answer);
    if (!opened) return tl::unexpected{opened.error()};
    const auto at = timeOfEntry(*opened, options.at, answer.style);
    if (!at) return tl::unexpected{at.error()};
    const std::size_t told = opened->standing().cautions.size();  // at opening
    const auto season = opened->snapshot();
    const auto found = dayFrom(*season, options.date);
    if (!found) return tl::unexpected{found.error()};
    const auto author = authorIn(*opened, options.file, options.author, answer.style);
    if (!author) return tl::unexpected{author.error()};
    Answer local = answer;
    local.style.zone = season->zone();
    const auto closing = review::closingOf(*season, (*found)->date, *at);
    if (!closing) return failed(closing.error(), local.style);
    if (!closing->missing.empty() && !options.anyway) {
        tell(*closing, false, local);
        return tl::unexpected{Failure{Status::failed,
                                      "the day is not closed: see to what is missing, or close "
                                      "it with --anyway"}};
    }
    if (const auto made = opened->propose(closing->entry, closing->happened, *author); !made) {
        return failed(made.error(), local.style);
    }
    tell(*closing, true, local);
    const std::vector<Message> cautions = opened->standing().cautions;
    for (std::size_t i = told; i < cautions.size(); ++i) {
        local.notes << words::inWords(cautions[i], local.style) << '\n';
    }
    return {};
}

}  // namespace treadwell::cli
