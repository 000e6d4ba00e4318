#include "app/cli/calibration.h"
#include "app/cli/field.h"
#include "app/cli/layers.h"
#include "app/cli/samples_output.h"
#include "app/cli/season_file.h"
#include "app/cli/state.h"
#include "app/words/document.h"
#include "core/review/day_sheet.h"

#include <array>
#include <ostream>

namespace treadwell::cli {

namespace {

/// A silo of a season at a moment, and how to speak of it: on the farm's clock.
struct View {
    season::Season season;
    farm::Silo silo;
    Instant at;
    Answer answer;
};

tl::expected<View, Failure> viewOf(const SeasonOptions& options, const Answer& answer) {
    const auto at = momentFrom(options.at, answer.style);
    if (!at) return tl::unexpected{at.error()};
    auto season = readSeason(options.file, answer);
    if (!season) return tl::unexpected{season.error()};
    const auto silo = siloFrom(season->farm(), options.silo);
    if (!silo) return tl::unexpected{silo.error()};
    Answer local = answer;
    local.style.zone = season->zone();
    return View{*std::move(season), *silo, *at, local};
}

ListForm formOf(const SeasonOptions& options, const Answer& answer) {
    if (answer.json) return ListForm::json;
    return options.csv ? ListForm::csv : ListForm::text;
}

}  // namespace

Outcome state(const SeasonOptions& options, const Answer& answer) {
    const auto view = viewOf(options, answer);
    if (!view) return tl::unexpected{view.error()};
    printState(view->season, view->silo, view->at, options.working, view->answer);
    return {};
}

Outcome advise(const SeasonOptions& options, const Answer& answer) {
    const auto view = viewOf(options, answer);
    if (!view) return tl::unexpected{view.error()};
    return printAdvice(view->season, view->silo, view->at, view->answer);
}

Outcome layers(const SeasonOptions& options, const Answer& answer) {
    const auto view = viewOf(options, answer);
    if (!view) return tl::unexpected{view.error()};
    return printLayers(view->season, view->silo, view->at, formOf(options, answer), view->answer);
}

Outcome field(const SeasonOptions& options, const Answer& answer) {
    FieldQuestion question;
    if (options.asItLies) question.filled = density::Filled::asItLies;
    const auto read = [&](const std::optional<std::string>& text, const char* option,
                          std::optional<Length>& length) -> Outcome {
        if (!text) return {};
        const auto value = quantityFromText<Length>(*text, option);
        if (!value) return misused(value.error(), option, answer.style);
        length = *value;
        return {};
    };
    const std::array places = {read(options.along, "--along", question.along),
                               read(options.up, "--up", question.up),
                               read(options.across, "--across", question.across)};
    for (const Outcome& outcome : places) {
        if (!outcome) return outcome;
    }
    const auto view = viewOf(options, answer);
    if (!view) return tl::unexpected{view.error()};
    return printField(view->season, view->silo, view->at, question, formOf(options, answer), view->answer);
}

Outcome calibration(const SeasonOptions& options, const Answer& answer) {
    const auto at = momentFrom(options.at, answer.style);
    if (!at) return tl::unexpected{at.error()};
    const auto season = readSeason(options.file, answer);
    if (!season) return tl::unexpected{season.error()};
    Answer local = answer;
    local.style.zone = season->zone();
    printCalibration(*season, *at, formOf(options, answer), local);
    return {};
}

Outcome samples(const SeasonOptions& options, const Answer& answer) {
    const auto season = readSeason(options.file, answer);
    if (!season) return tl::unexpected{season.error()};
    const auto found = dayFrom(*season, options.date);
    if (!found) return tl::unexpected{found.error()};
    Answer local = answer;
    local.style.zone = season->zone();
    printSamples(*season, **found, SystemClock{}.now(), local);
    return {};
}

Outcome day(const SeasonOptions& options, const Answer& answer) {
    const auto season = readSeason(options.file, answer);
    if (!season) return tl::unexpected{season.error()};
    const auto found = dayFrom(*season, options.date);
    if (!found) return tl::unexpected{found.error()};
    Answer local = answer;
    local.style.zone = season->zone();
    const auto sheet = review::daySheet(*season, (*found)->date, SystemClock{}.now());
    if (!sheet) return failed(sheet.error(), local.style);
    if (answer.json) {
        JsonWriter json{2};
        words::writeJson(json, *sheet, local.style);
        answer.out << json.text() << '\n';
    } else {
        answer.out << words::plainText(*sheet, local.style);
    }
    return {};
}

}  // namespace treadwell::cli
