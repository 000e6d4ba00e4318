#include "app/cli/verbs.h"

namespace treadwell::cli {

void addPlanVerb(CLI::App& app, Request& request) {
    PlanOptions& options = request.plan;
    CLI::App* command = app.add_subcommand("plan", "Does the harvest fit, does it flow, does it pay");
    command->add_option("PLAN", options.file, "A file of inputs")->option_text(" ");
    command->add_option("WHAT", options.what, "fits, flows, pays, seals, feeds or all")->option_text(" ");
    addText(*command, "--against", options.against, "FILE", "Another plan beside it; once for each");
    command->add_flag("--example", options.example, "Print such a file to begin with");
    addAnswerOptions(*command, request.answer);
    command->callback([&request] {
        request.run = [&request](const Answer& answer) { return cli::plan(request.plan, answer); };
    });
}

}  // namespace treadwell::cli
