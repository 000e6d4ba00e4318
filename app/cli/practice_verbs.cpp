#include "app/cli/verbs.h"

namespace treadwell::cli {

namespace {

CLI::App* addPlain(CLI::App& app, Request& request, const std::string& name, const std::string& help,
                   Outcome (*run)(const Request&, const Answer&)) {
    CLI::App* command = app.add_subcommand(name, help);
    addAnswerOptions(*command, request.answer);
    command->callback([&request, run] {
        request.run = [&request, run](const Answer& answer) { return run(request, answer); };
    });
    return command;
}

void addLesson(CLI::App& app, Request& request) {
    PracticeOptions& options = request.practice;
    CLI::App* command =
        addPlain(app, request, "lesson", "Run a lesson of practice and say what went wrong where and why",
                 [](const Request& r, const Answer& answer) { return lesson(r.practice, answer); });
    command->add_option("LESSON", options.lesson, "Its name, see `lessons`, or a file")
        ->required()
        ->option_text(" ");
    addText(*command, "--layer", options.layer, "15cm", "As the blade spreads it");
    addText(*command, "--pattern", options.pattern, "wholeWidth|middle|anywhere", "How the tracks are laid");
    addText(*command, "--speed", options.speed, "4km/h", "Of the tractors");
    addText(*command, "--near-wall", options.nearWall, "20cm", "From the outer tyre to the wall");
    addText(*command, "--ramp", options.ramp, "3:1", "Run to rise");
    addText(*command, "--call", options.call, "30min", "When the tractors that wait are called");
    addText(*command, "--drive", options.drive, "FILE", "Where the first tractor goes; see `schema drive`");
    addText(*command, "--trainee", options.trainee, "NAME", "Keep the result for somebody, on this machine");
    addText(*command, "--threads", options.threads, "1", "They give the same answer, sooner");
    command->add_flag("--no-agreement", options.noAgreement, "Nobody agrees on who drives where");
    command->add_flag("--roll-beside-people", options.rollBesidePeople, "Roll on while somebody is on foot");
    command->add_flag("--no-lights", options.noLights, "Without lights in the dark");
}

void addLessonOfDay(CLI::App& app, Request& request) {
    PracticeOptions& options = request.practice;
    SeasonOptions& season = request.season;
    CLI::App* command = addVerb(
        app, request, "lesson-of-day", "Make a lesson's file from what was delivered on a day", season.file,
        [](const Request& r, const Answer& answer) { return lessonOfDay(r.season, r.practice, answer); });
    addText(*command, "--date", season.date, "2026-09-15", "The day; the last one where not given");
    addText(*command, "--silo", season.silo, "NAME", "Needed where there are several");
    addText(*command, "--title", options.title, "TEXT", "As trainees see it")->required();
    addText(*command, "--story", options.story, "TEXT", "What happens");
    addText(*command, "--goal", options.goal, "TEXT", "What to reach");
    addText(*command, "--id", options.id, "NAME", "Under which progress is kept; the date where not given");
    addText(*command, "--output", options.output, "FILE", "A new file to write to");
}

}  // namespace

void addPracticeVerbs(CLI::App& app, Request& request) {
    addPlain(app, request, "lessons", "The lessons of practice that come with the program",
             [](const Request&, const Answer& answer) { return lessons(answer); });
    addLesson(app, request);
    CLI::App* known =
        addPlain(app, request, "trainees", "How the trainees of this machine do",
                 [](const Request& r, const Answer& answer) { return trainees(r.practice, answer); });
    addText(*known, "--forget", request.practice.forget, "NAME", "Delete what is kept of somebody");
    CLI::App* paper =
        addPlain(app, request, "certificate", "What a trainee has practised; it is no licence",
                 [](const Request& r, const Answer& answer) { return certificate(r.practice, answer); });
    paper->add_option("NAME", request.practice.trainee, "The trainee")->required()->option_text(" ");
    addLessonOfDay(app, request);
}

}  // namespace treadwell::cli
