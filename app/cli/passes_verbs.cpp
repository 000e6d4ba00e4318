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
    addCsv(*command, season.csv);
}

void addTracks(CLI::App& app, Request& request) {
    SeasonOptions& season = request.season;
    TrackOptions& options = request.tracks;
    CLI::App* command =
        addVerb(app, request, "tracks", "Passes over each layer by the tracks of the tractors", season.file,
                [](const Request& r, const Answer& answer) { return tracks(r.season, r.tracks, answer); });
    addText(*command, "--track", options.tracks, "FILE",
            "NMEA or GPX; once for each file. Without it the tracks that are attached");
    addText(*command, "--tractor", options.tractors, "NAME", "Whose track each is, in the same order");
    addText(*command, "--corner", options.corner, "\"43.5202,-89.5092\"",
            "Latitude and longitude of the corner of back wall and left wall, seen from the back wall. "
            "Without it the place that was recorded");
    addText(*command, "--bearing", options.bearing, "135",
            "Degrees from north of the left wall, from the back wall outward");
    addText(*command, "--map", options.map, "FILE", "A new file for the passes over every column, as CSV");
    addText(*command, "--at", season.at, "2026-09-15T14:25:30+02:00", "The moment; now where not given");
    addText(*command, "--silo", season.silo, "NAME", "Needed where there are several");
    addCsv(*command, season.csv);
}

void addAttach(CLI::App& app, Request& request) {
    TrackOptions& options = request.tracks;
    CLI::App* command = addVerb(
        app, request, "attach", "Attach the track of a tractor, which stays where it lies",
        request.season.file,
        [](const Request& r, const Answer& answer) { return attachTrack(r.season, r.tracks, answer); });
    addText(*command, "--track", options.tracks, "FILE", "NMEA or GPX")->required()->expected(1);
    addText(*command, "--tractor", options.tractors, "NAME", "Whose track it is")->required()->expected(1);
    addText(*command, "--author", options.author, "NAME", "Who attaches it");
}

}  // namespace

void addPassesVerbs(CLI::App& app, Request& request) {
    addReplay(app, request);
    addTracks(app, request);
    addAttach(app, request);
}

}  // namespace treadwell::cli
