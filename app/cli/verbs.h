#pragma once

// Turns the command line into plain options. CLI11 takes seconds to compile: only the files that hold the
// arguments of verbs include this.

#include "app/cli/day.h"
#include "app/cli/estimate.h"
#include "app/cli/harvest_order.h"
#include "app/cli/import.h"
#include "app/cli/passes.h"
#include "app/cli/plan.h"
#include "app/cli/practice.h"
#include "app/cli/review.h"
#include "app/cli/season_copies.h"
#include "app/cli/season_entries.h"
#include "app/cli/season_file.h"
#include "app/cli/sieve.h"
#include "app/cli/weigh.h"

#include <CLI/CLI.hpp>

#include <functional>

namespace treadwell::cli {

struct AnswerOptions {
    bool json = false;
    std::string units = "metric";
};

/// What the command line asks for, filled in while it is parsed.
struct Request {
    AnswerOptions answer;
    EstimateOptions estimate;
    SieveOptions sieve;
    DryOptions dry;
    HarvestOrderOptions harvest;
    SeasonOptions season;
    DayOptions day;
    FeedOptions feed;
    BatchOptions batch;
    NewSeasonOptions made;
    ImportOptions import;
    WeighOptions weigh;
    EntryOptions entry;
    CopyOptions copy;
    PeopleOptions people;
    ReplayOptions replay;
    TrackOptions tracks;
    PlanOptions plan;
    PracticeOptions practice;
    SealingOptions sealing;
    std::function<Outcome(const Answer&)> run;
};

inline void addAnswerOptions(CLI::App& command, AnswerOptions& options) {
    command.add_flag("--json", options.json, "Print JSON, in SI with the unit in each key");
    command.add_option("--units", options.units, "Units of the text: metric or us")->option_text("SYSTEM");
}

/// Every option takes exactly one text that the command reads itself, so that it can say what it understands.
inline CLI::Option* addText(CLI::App& command, const std::string& name, auto& text,
                            const std::string& example, const std::string& help) {
    return command.add_option(name, text, help)->option_text(example)->allow_extra_args(false);
}

inline CLI::App* addVerb(CLI::App& app, Request& request, const std::string& name, const std::string& help,
                         std::string& file, Outcome (*run)(const Request&, const Answer&)) {
    CLI::App* command = app.add_subcommand(name, help);
    command->add_option("FILE", file, "The season's file")->required()->option_text(" ");
    addAnswerOptions(*command, request.answer);
    command->callback([&request, run] {
        request.run = [&request, run](const Answer& answer) { return run(request, answer); };
    });
    return command;
}

inline CLI::Option* addCsv(CLI::App& command, bool& csv) {
    return command.add_flag("--csv", csv, "Print CSV in metric units, times in UTC")
        ->excludes(command.get_option("--json"));
}

/// The verbs that answer with a sheet, the day and its closing, the season, the face, feeding out.
void addSheets(CLI::App& app, Request& request);

/// The verbs that plan a harvest and go through the sealing.
void addPlanVerb(CLI::App& app, Request& request);

/// The verbs of wheel passes.
void addPassesVerbs(CLI::App& app, Request& request);

/// The verbs of lessons.
void addPracticeVerbs(CLI::App& app, Request& request);

}  // namespace treadwell::cli
