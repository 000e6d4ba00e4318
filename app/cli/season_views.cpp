#include "app/cli/calibration.h"
#include "app/cli/field.h"
#include "app/cli/layers.h"
#include "app/cli/samples_output.h"
#include "app/cli/season_view.h"
#include "app/cli/state.h"

#include <array>
#include <ostream>

namespace treadwell::cli {

namespace {

tl::expected<Told, Failure> toldOf(const SeasonOptions& options, const Answer& answer) {
    auto season = readSeason(options.file, answer);
    if (!season) return tl::unexpected{season.error()};
    Answer local = answer;
    local.style.zone = season->zone();
    return Told{*std::move(season), local};
}

ListForm formOf(const SeasonOptions& options, const Answer& answer) {
    if (answer.json) return ListForm::json;
    return options.csv ? ListForm::csv : ListForm::text;
}

}  // namespace

tl::expected<View, Failure> viewOf(const SeasonOptions& options, const Answer& answer) {
    const auto at = momentFrom(options.at, answer.style);
    if (!at) return tl::unexpected{at.error()};
    auto told = toldOf(options, answer);
    if (!told) return tl::unexpected{told.error()};
    const auto silo = siloFrom(told->season.farm(), options.silo);
    if (!silo) return tl::unexpected{silo.error()};
    return View{*std::move(told), *silo, *at};
}

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
    const auto told = toldOf(options, answer);
    if (!told) return tl::unexpected{told.error()};
    printCalibration(told->season, *at, formOf(options, answer), told->answer);
    return {};
}

Outcome samples(const SeasonOptions& options, const Answer& answer) {
    const auto told = toldOf(options, answer);
    if (!told) return tl::unexpected{told.error()};
    const auto found = dayFrom(told->season, options.date);
    if (!found) return tl::unexpected{found.error()};
    printSamples(told->season, **found, SystemClock{}.now(), told->answer);
    return {};
}

}  // namespace treadwell::cli
