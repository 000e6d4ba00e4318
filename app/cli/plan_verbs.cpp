#include "app/cli/verbs.h"

namespace treadwell::cli {

namespace {

void addSealingVerb(CLI::App& app, Request& request) {
    SealingOptions& options = request.sealing;
    CLI::App* command = addVerb(
        app, request, "sealing", "The silos' sealing step by step: what is done and what is next",
        options.file,
        [](const Request& asked, const Answer& answer) { return cli::sealing(asked.sealing, answer); });
    addText(*command, "--plan", options.plan, "PLAN", "A file of inputs; the season's plan without it");
    addText(*command, "--done", options.done, "STEP", "Record that a step is done");
    addText(*command, "--silo", options.silo, "NAME", "In this silo; else the first where it is not done");
    addText(*command, "--from", options.from, "LENGTH", "From here on, from the back wall");
    addText(*command, "--to", options.to, "LENGTH", "Up to here, from the back wall");
    addText(*command, "--product", options.product, "NAME", "Of the treatment");
    addText(*command, "--author", options.author, "NAME", "Who has done it");
    addText(*command, "--at", options.at, "TIME", "When it was done; now without it");
}

}  // namespace

void addPlanVerb(CLI::App& app, Request& request) {
    PlanOptions& options = request.plan;
    CLI::App* command = app.add_subcommand("plan", "Does the harvest fit, does it flow, does it pay");
    command->add_option("PLAN", options.file, "A file of inputs")->option_text(" ");
    command->add_option("WHAT", options.what, "fits, flows, pays, seals, feeds or all")->option_text(" ");
    addText(*command, "--against", options.against, "FILE", "Another plan beside it; once for each");
    command->add_flag("--example", options.example, "Print such a file to begin with");
    addText(*command, "--adopt", options.adopt, "SEASON", "Make it the plan of this season's file");
    addText(*command, "--author", options.author, "NAME", "Who adopts it");
    addText(*command, "--at", options.at, "TIME", "When it was adopted; now without it");
    addText(*command, "--adopted", options.adopted, "SEASON", "Print the inputs of a season's plan");
    addText(*command, "--of", options.of, "SEASON", "Print inputs to begin with, from a season's farm");
    addAnswerOptions(*command, request.answer);
    command->callback([&request] {
        request.run = [&request](const Answer& answer) { return cli::plan(request.plan, answer); };
    });
    addSealingVerb(app, request);
}

}  // namespace treadwell::cli
