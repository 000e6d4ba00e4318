#include "app/cli/verbs.h"

namespace treadwell::cli {

namespace {

void addReplay(CLI::App& app, Request& request) {
    SeasonOptions& season = request.season;
    CLI::App* command =
        addVerb(app, request, "replay", "What the simulation of every wheel pass makes of what was recorded",
                season.file,
                [](const Request& r, const Answer& answer) { return replay(r.season, r.replay, answer); });
    addText(*command, "--at", season.at, "2026-09-15T14:25:30+02:00", "The moment; now where not given");
    addText(*command, "--silo", season.silo, "NAME", "Needed where there are several");
    addText(*command, "--pattern", request.replay.pattern, "wholeWidth|middle|anywhere",
            "How the tracks were laid, which nobody recorded");
    addText(*command, "--seed", request.replay.seed, "1", "Draws the tracks; the same gives the same answer");
    command->add_flag("--as-it-lies", season.asItLies, "As it lies now, not when full");
    addCsv(*command, season);
}

}  // namespace

void addPassesVerbs(CLI::App& app, Request& request) {
    addReplay(app, request);
}

}  // namespace treadwell::cli
