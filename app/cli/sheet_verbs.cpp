#include "app/cli/verbs.h"

namespace treadwell::cli {

namespace {

constexpr const char* kMoment = "2026-09-15T14:25:30+02:00";

void addDay(CLI::App& app, Request& request) {
    DayOptions& options = request.day;
    CLI::App* sheet = addVerb(app, request, "day", "The sheet of a day", options.file,
                              [](const Request& r, const Answer& answer) { return cli::day(r.day, answer); });
    addText(*sheet, "--date", options.date, "2026-09-15", "The day; the last one where not given");
    addText(*sheet, "--at", options.at, kMoment, "As seen then; now where not given");
    CLI::Option* message = sheet->add_flag("--message", options.message, "Print its sum alone, to be sent");
    message->excludes(addCsv(*sheet, options.csv))->excludes(sheet->get_option("--json"));
}

void addClose(CLI::App& app, Request& request) {
    DayOptions& options = request.day;
    CLI::App* closing =
        addVerb(app, request, "close", "Tell what a day still misses, and close it", options.file,
                [](const Request& r, const Answer& answer) { return cli::close(r.day, answer); });
    addText(*closing, "--date", options.date, "2026-09-15", "The day; the last one where not given");
    addText(*closing, "--at", options.at, kMoment, "When it is closed; now where not given");
    addText(*closing, "--author", options.author, "NAME", "Who closes it; see `people`");
    closing->add_flag("--anyway", options.anyway, "Close it with what is missing");
}

void addFace(CLI::App& app, Request& request) {
    SeasonOptions& options = request.season;
    CLI::App* opened =
        addVerb(app, request, "face", "Cores beside what was predicted, and the map of a face", options.file,
                [](const Request& r, const Answer& answer) { return cli::face(r.season, answer); });
    addText(*opened, "--along", options.along, "42m", "The face; that of the newest core where not given");
    addText(*opened, "--at", options.at, kMoment, "The moment; now where not given");
    addText(*opened, "--silo", options.silo, "NAME", "Needed where there are several");
    addCsv(*opened, options.csv);
}

void addFeedOut(CLI::App& app, Request& request) {
    FeedOptions& options = request.feed;
    CLI::App* fed =
        addVerb(app, request, "feed-out", "Until when a silo feeds, and what the coming faces cut",
                options.file, [](const Request& r, const Answer& answer) { return feedOut(r.feed, answer); });
    addText(*fed, "--from", options.from, "2027-01-10",
            "The first day of feeding; that after the last recorded if not given");
    addText(*fed, "--per-day", options.perDay, "12t",
            "What is fed each day, as fed; the mean of what is recorded if not given");
    addText(*fed, "--dry-matter", options.dryMatter, "33%",
            "Of what is fed; the mean of what is recorded if not given");
    addText(*fed, "--loss", options.loss, "8%", "Of dry matter until it is fed; by its density if not given");
    addText(*fed, "--week", options.week, "2027-02-01",
            "Show the week from this day; the first if not given");
    addText(*fed, "--face", options.face, "42m",
            "Where the face stands, from the back wall; as last recorded if not given");
    addText(*fed, "--at", options.at, kMoment, "The moment; now where not given");
    addText(*fed, "--silo", options.silo, "NAME", "Needed where there are several");
    addCsv(*fed, options.csv);
}

void addReview(CLI::App& app, Request& request) {
    SeasonOptions& options = request.season;
    CLI::App* back =
        addVerb(app, request, "review", "A season looked back upon: days, silos, evenings, weak places",
                options.file, [](const Request& r, const Answer& a) { return review(r.season, a); });
    addText(*back, "--at", options.at, kMoment, "Up to this moment; now where not given");
    addCsv(*back, options.csv);
    CLI::App* many = app.add_subcommand("batch", "Many seasons in one CSV, a row a silo");
    many->add_option("FILES", request.batch.files, "The seasons' files")->required()->option_text(" ");
    addText(*many, "--at", request.batch.at, kMoment, "The moment; now where not given");
    many->callback([&request] {
        request.run = [&request](const Answer& answer) { return batch(request.batch, answer); };
    });
}

}  // namespace

void addSheets(CLI::App& app, Request& request) {
    addDay(app, request);
    addClose(app, request);
    addReview(app, request);
    addFace(app, request);
    addFeedOut(app, request);
}

}  // namespace treadwell::cli
