// The commands about a silo that is opened: its faces and what is fed.
#include "app/cli/day.h"
#include "core/review/face_sheet.h"
#include "core/review/feed_sheet.h"

namespace treadwell::cli {

namespace {

template <class Q>
Outcome take(const std::optional<std::string>& text, const char* option, std::optional<Q>& quantity,
             const words::Style& style) {
    if (!text) return {};
    const auto read = quantityFromText<Q>(*text, option);
    if (!read) return misused(read.error(), option, style);
    quantity = *read;
    return {};
}

Outcome take(const std::optional<std::string>& text, const char* option, std::optional<LocalDay>& day) {
    if (!text) return {};
    day = dayFromIso8601(*text);
    if (day) return {};
    return misusedLine(std::string{option} + ": \"" + *text + "\" is not a date: write it like 2027-01-10");
}

struct Opened {
    season::Season season;
    farm::Silo silo;
    Instant at;
    Answer answer;
};

tl::expected<Opened, Failure> openedOf(const std::string& file, const std::optional<std::string>& at,
                                       const std::optional<std::string>& name, const Answer& answer) {
    const auto moment = momentFrom(at, answer.style);
    if (!moment) return tl::unexpected{moment.error()};
    auto season = readSeason(file, answer);
    if (!season) return tl::unexpected{season.error()};
    const auto silo = siloFrom(season->farm(), name);
    if (!silo) return tl::unexpected{silo.error()};
    Answer local = answer;
    local.style.zone = season->zone();
    return Opened{*std::move(season), *silo, *moment, local};
}

DocumentForm formOf(bool csv, const Answer& answer) {
    if (answer.json) return DocumentForm::json;
    return csv ? DocumentForm::csv : DocumentForm::text;
}

tl::expected<review::FeedQuestion, Failure> questionOf(const FeedOptions& options,
                                                       const words::Style& style) {
    review::FeedQuestion question;
    for (const Outcome& read :
         {take(options.from, "--from", question.from), take(options.week, "--week", question.week),
          take(options.perDay, "--per-day", question.perDay, style),
          take(options.dryMatter, "--dry-matter", question.dryMatter, style),
          take(options.loss, "--loss", question.loss, style),
          take(options.face, "--face", question.face, style)}) {
        if (!read) return tl::unexpected{read.error()};
    }
    return question;
}

}  // namespace

Outcome face(const SeasonOptions& options, const Answer& answer) {
    std::optional<Length> along;
    if (const auto read = take(options.along, "--along", along, answer.style); !read) return read;
    const auto opened = openedOf(options.file, options.at, options.silo, answer);
    if (!opened) return tl::unexpected{opened.error()};
    printDocument(review::faceSheet(opened->season, opened->silo, opened->at,
                                    face::faceOf(opened->season, opened->silo, opened->at, along)),
                  formOf(options.csv, answer), opened->answer);
    return {};
}

Outcome feedOut(const FeedOptions& options, const Answer& answer) {
    const auto question = questionOf(options, answer.style);
    if (!question) return tl::unexpected{question.error()};
    const auto opened = openedOf(options.file, options.at, options.silo, answer);
    if (!opened) return tl::unexpected{opened.error()};
    const auto sheet = review::feedSheet(opened->season, opened->silo, opened->at, *question);
    if (!sheet) return failed(sheet.error(), answer.style);
    printDocument(*sheet, formOf(options.csv, answer), opened->answer);
    return {};
}

}  // namespace treadwell::cli
