// The verbs' arguments, what they lead to, and how the program ends.

#include "app/cli/verbs.h"

#include <iostream>

namespace {

using namespace treadwell;
using namespace treadwell::cli;

constexpr const char* kProgram = "treadwell-cli";

void addEstimate(CLI::App& app, Request& request) {
    CLI::App* command = app.add_subcommand("estimate", "Density, porosity and the chance of the target");
    EstimateOptions& options = request.estimate;
    addText(*command, "--rate", options.rate, "120t/h", "Delivery as fed, or 130ton/h (short tons)");
    addText(*command, "--minutes-per-tonne", options.minutesPerTonne, "0.75min/t",
            "Packing time of all tractors for each tonne, instead of --rate");
    addText(*command, "--dry-matter", options.dryMatter, "35%", "Dry matter of the crop")->required();
    addText(*command, "--layer", options.layer, "15cm",
            "Thickness as spread, or 6in; assumed where not given");
    addText(*command, "--depth", options.depth, "3m", "Mean depth of the full silo, or 10ft")->required();
    addText(*command, "--tractor", options.tractors, "14t[@0.5]",
            "A packing tractor, or 20000lb, with its share of the time packing; once for each");
    addText(*command, "--minimum", options.minimum, "\"225kg DM/m3\"", "The least density that is wanted");
    addText(*command, "--crop", options.crop, "maize", "maize, grass or lucerne");
    command->add_flag("--working", options.working, "Show how each number was found, and after whom");
    command->footer(
        "Example:\n  treadwell-cli estimate --rate 120t/h --dry-matter 35% --layer 15cm --depth 3m "
        "--tractor 14t --tractor 10t@0.5");
    addAnswerOptions(*command, request.answer);
    command->callback([&request] {
        request.run = [&request](const Answer& answer) { return estimate(request.estimate, answer); };
    });
}

void addSieve(CLI::App& app, Request& request) {
    CLI::App* command = app.add_subcommand("sieve", "Length of chop, its parts, and what the cut needs");
    SieveOptions& options = request.sieve;
    addText(*command, "--stack", options.stack, "threeTo4", "threeTo4, threeTo118 or fiveScreens");
    addText(*command, "--sieve", options.sieves, "19mm",
            "Of a stack of one's own, from the top down; once for each");
    addText(*command, "--mass", options.masses, "12.5g", "On each sieve from the top down, the pan last");
    addText(*command, "--part", options.parts, "5%", "The same in percent of the whole, instead of masses");
    addText(*command, "--before", options.before, "210g", "The sample before it was sieved");
    addText(*command, "--top-length", options.topLength, "48mm", "Mean length of what lies on the top sieve");
    addText(*command, "--fibre", options.fibre, "41%", "Fibre (NDF) of the dry matter");
    addText(*command, "--cut", options.cut, "17mm", "Length of cut that is set");
    addText(*command, "--crop", options.crop, "maize", "maize, grass or lucerne");
    addText(*command, "--processor", options.processor, "rolls", "none, rolls or longChop");
    command->add_flag("--wet", options.wet, "The sample was wet from rain or dew");
    addAnswerOptions(*command, request.answer);
    command->callback([&request] {
        request.run = [&request](const Answer& answer) { return sieve(request.sieve, answer); };
    });
}

void addDry(CLI::App& app, Request& request) {
    CLI::App* command = app.add_subcommand("dry", "The next step with a sample in the microwave");
    addText(*command, "--wet", request.dry.wet, "100g", "The sample before drying")->required();
    addText(*command, "--weighed", request.dry.weighings, "41.5g", "After each step; once for each");
    addAnswerOptions(*command, request.answer);
    command->callback(
        [&request] { request.run = [&request](const Answer& answer) { return dry(request.dry, answer); }; });
}

void addImport(CLI::App& app, Request& request) {
    ImportOptions& options = request.import;
    CLI::App* command = addVerb(
        app, request, "import", "Take over tickets and logs; rows that cannot be used are listed",
        options.file, [](const Request& r, const Answer& answer) { return import(r.import, answer); });
    addText(*command, "--tickets", options.tickets, "FILE", "Loads as the scale exports them");
    addText(*command, "--tractors", options.tractors, "FILE",
            "What each tractor did: time, tractor, activity, share");
    addText(*command, "--samples", options.samples, "FILE", "Dry matter: time, field, wet, dry, method");
    addText(*command, "--heights", options.heights, "FILE", "Heights: time, silo, along, across, height");
    addText(*command, "--layers", options.layers, "FILE", "Layers as spread: time, silo, thickness, method");
    addText(*command, "--cores", options.cores, "FILE",
            "Cores of an opened silo: time, along, across, depth, dry matter, mass, diameter, length");
    addText(*command, "--sieves", options.sieves, "FILE",
            "Sieve tests: time, field, sieves, masses or parts");
    addText(*command, "--kernels", options.kernels, "FILE", "Kernels: time, field, material, kernels");
    addText(*command, "--temperatures", options.temperatures, "FILE", "Temperatures: date, low, high");
    addText(*command, "--fields", options.fields, "FILE",
            "Standing fields: time, field, planted, silked, hybrid, milk line, dry matter");
    addText(*command, "--chop", options.chop, "FILE", "The cut: time, cut, roll gap, cutting height");
    addText(*command, "--removals", options.removals, "FILE",
            "What was fed: time, silo, mass, dry matter, face");
    addText(*command, "--face-temperatures", options.faceTemperatures, "FILE",
            "Temperatures of a face: time, silo, behind face, core, across, height");
    addText(*command, "--silo", options.silo, "NAME", "For rows that name no silo");
    addText(*command, "--encoding", options.encoding, "utf8|windows1252|latin9",
            "Where the files do not tell");
    addText(*command, "--delimiter", options.delimiter, "comma|semicolon|tab|bar",
            "Where the files do not tell");
    addText(*command, "--decimal-sign", options.decimalSign, "point|comma", "Where the files do not tell");
    addText(*command, "--date-order", options.dateOrder, "ORDER", "Where the files do not tell");
    addText(*command, "--mass-unit", options.massUnit, "kg|t|lb|ton", "Where the tickets do not tell");
    addText(*command, "--column", options.columns, "net=HEADER",
            "What a column tells, once for each; remembered for files with the same header");
    addText(*command, "--at", options.at, "TIME", "When they are taken over; now without it");
    command->add_flag("--preview", options.preview,
                      "Show how the tickets are understood and what is open; record nothing");
}

void addField(CLI::App& command, SeasonOptions& options) {
    addText(command, "--along", options.along, "12m", "From the back wall; over the silo where not given");
    addText(command, "--up", options.up, "1.5m", "From the floor; over the height where not given");
    addText(command, "--across", options.across, "0.3m", "From the left wall; the middle where not given");
    command.add_flag("--as-it-lies", options.asItLies, "As it lies now, not when full");
}

void addNew(CLI::App& app, Request& request) {
    NewSeasonOptions& options = request.made;
    CLI::App* made =
        addVerb(app, request, "new", "Make a season's file with the farm in it", options.file,
                [](const Request& r, const Answer& answer) { return newSeason(r.made, answer); });
    addText(*made, "--farm", options.farm, "FILE", "The farm: silos, tractors, trucks, fields, rules");
    addText(*made, "--carry", options.carry, "FILE", "An earlier season whose farm goes on; once for each");
    addText(*made, "--begins", options.begins, "2026-09-15T06:00:00+02:00",
            "With --carry; now where not given");
}

void addSeasonVerbs(CLI::App& app, Request& request) {
    SeasonOptions& options = request.season;
    CLI::App* now =
        addVerb(app, request, "state", "A silo at one moment: loads, tractors, density", options.file,
                [](const Request& r, const Answer& answer) { return state(r.season, answer); });
    CLI::App* advice =
        addVerb(app, request, "advise", "What to change now, and what it was weighed against", options.file,
                [](const Request& r, const Answer& answer) { return advise(r.season, answer); });
    CLI::App* laid =
        addVerb(app, request, "layers", "The layers of a silo: crop, packing, density", options.file,
                [](const Request& r, const Answer& answer) { return layers(r.season, answer); });
    CLI::App* places =
        addVerb(app, request, "field", "The density over a silo, and where it is weakest", options.file,
                [](const Request& r, const Answer& answer) { return field(r.season, answer); });
    addField(*places, options);
    CLI::App* learnt = addVerb(
        app, request, "calibration", "What cores and heights say of the farm, and what they did to the band",
        options.file, [](const Request& r, const Answer& answer) { return calibration(r.season, answer); });
    addText(*learnt, "--at", options.at, "2026-09-15T14:25:30+02:00", "The moment; now where not given");
    for (CLI::App* command : {laid, places, learnt}) addCsv(*command, options.csv);
    for (CLI::App* command : {now, advice, laid, places}) {
        addText(*command, "--at", options.at, "2026-09-15T14:25:30+02:00", "The moment; now where not given");
        addText(*command, "--silo", options.silo, "NAME", "Needed where there are several");
    }
    now->add_flag("--working", options.working, "Show how each number was found, and after whom");
    addVerb(app, request, "set-aside", "List the rows of files that could not be read", options.file,
            [](const Request& r, const Answer& answer) { return setAside(r.season.file, answer); });
    CLI::App* sampled =
        addVerb(app, request, "samples", "Dry matter, chop, kernels and fields on a day", options.file,
                [](const Request& r, const Answer& answer) { return cli::samples(r.season, answer); });
    addText(*sampled, "--date", options.date, "2026-09-15", "The day; the last one where not given");
    addVerb(app, request, "check", "Hold every entry to its chain of hashes", options.file,
            [](const Request& r, const Answer& answer) { return check(r.season.file, answer); });
}

void addHarvest(CLI::App& app, Request& request) {
    HarvestOrderOptions& options = request.harvest;
    CLI::App* command = addVerb(
        app, request, "harvest_order", "The order of fields that keeps the dry matter inside the goal",
        options.file, [](const Request& r, const Answer& answer) { return harvestOrder(r.harvest, answer); });
    addText(*command, "--field", options.fields, "NAME=800t", "To be cut, and its yield; once for each")
        ->required();
    addText(*command, "--capacity", options.capacity, "1200t", "What is cut in a day")->required();
    addText(*command, "--first", options.first, "2026-09-15", "When cutting may begin; today if not given");
    addText(*command, "--change", options.change, "0.5", "Days lost between hybrids");
    addText(*command, "--rain", options.rain, "2026-09-16", "A day without cutting; once for each");
    addText(*command, "--at", options.at, "2026-09-14T18:00:00+02:00",
            "What is known then; now if not given");
    command->add_flag("--as-given", options.asGiven, "Reckon the order in which the fields are listed");
}

void addScaleVerbs(CLI::App& app, Request& request) {
    WeighOptions& options = request.weigh;
    CLI::App* listening = app.add_subcommand("listen", "Show what a scale sends, frame by frame");
    addAnswerOptions(*listening, request.answer);
    listening->callback([&request] {
        request.run = [&request](const Answer& answer) { return listen(request.weigh, answer); };
    });
    CLI::App* weighing =
        addVerb(app, request, "weigh", "Record the load on a scale once it stands still", options.file,
                [](const Request& r, const Answer& answer) { return weigh(r.weigh, answer); });
    for (CLI::App* command : {listening, weighing}) {
        addText(*command, "--line", options.line, "/dev/ttyUSB0", "A serial device, or 127.0.0.1:4001")
            ->required();
        addText(*command, "--profile", options.profile, "commas", "How the scale talks")->required();
        addText(*command, "--baud", options.baud, "9600", "Speed of a serial line");
        addText(*command, "--characters", options.characters, "8N1|7E1", "Bits of a serial line");
        addText(*command, "--ask", options.ask, "W",
                "What to send, each second, to a scale that waits; or ENQ");
        addText(*command, "--wait", options.wait, "30", "Seconds");
    }
    addText(*weighing, "--silo", options.silo, "NAME", "Needed where there are several");
    addText(*weighing, "--truck", options.truck, "NAME", "What is on the scale");
    addText(*weighing, "--field", options.field, "NAME", "Where the crop grew");
    addText(*weighing, "--ticket", options.ticket, "NUMBER", "On the scale's own ticket");
    addText(*weighing, "--tare", options.tare, "11860kg",
            "The empty truck; 0kg where the scale shows the net weight without saying so");
    addText(*weighing, "--at", options.at, "TIME", "When it is weighed; now without it");
}

CLI::App* addEntryVerb(CLI::App& app, Request& request, const std::string& name, const std::string& help,
                       Outcome (*run)(const Request&, const Answer&)) {
    return addVerb(app, request, name, help, request.entry.file, run);
}

void addRecording(CLI::App& app, Request& request) {
    EntryOptions& options = request.entry;
    CLI::App* add = addEntryVerb(app, request, "add", "Record an entry of any kind",
                                 [](const Request& r, const Answer& a) { return cli::add(r.entry, a); });
    add->add_option("KIND", options.kind, "load, note, weather_seen...: a wrong one lists all")
        ->required()
        ->option_text(" ");
    CLI::App* correct =
        addEntryVerb(app, request, "correct", "Correct fields of an entry; its history stays",
                     [](const Request& r, const Answer& a) { return cli::correct(r.entry, a); });
    CLI::App* taken = addEntryVerb(app, request, "void", "Take an entry back; its history stays",
                                   [](const Request& r, const Answer& a) { return takeBack(r.entry, a); });
    CLI::App* history =
        addEntryVerb(app, request, "history", "An entry and all that changed it",
                     [](const Request& r, const Answer& a) { return cli::history(r.entry, a); });
    for (CLI::App* command : {correct, taken, history}) {
        command->add_option("ENTRY", options.entry, "Its id, or the end of it as `list` shows it")
            ->required()
            ->option_text(" ");
    }
    for (CLI::App* command : {add, correct}) {
        command
            ->add_option("FIELD", options.fields, "mass=12.3t silo=\"Long bunker\"...: a wrong one lists all")
            ->option_text(" ");
    }
    for (CLI::App* command : {add, correct, taken}) {
        addText(*command, "--at", options.at, "\"2026-09-15 14:25\"",
                "When it happened, by the farm's clock");
    }
    for (CLI::App* command : {add, correct, taken}) {
        addText(*command, "--author", options.author, "NAME", "Who says so; see `people`");
    }
    addText(*taken, "--reason", options.reason, "TEXT", "Why");
    CLI::App* list = addEntryVerb(app, request, "list", "Entries as they stand",
                                  [](const Request& r, const Answer& a) { return cli::list(r.entry, a); });
    addText(*list, "--kind", options.kind, "KIND", "Only this kind");
    addText(*list, "--date", options.date, "2026-09-15", "Only this day");
    addText(*list, "--silo", options.silo, "NAME", "Only what speaks of this silo");
}

void addPeople(CLI::App& app, Request& request) {
    PeopleOptions& options = request.people;
    CLI::App* people =
        addVerb(app, request, "people", "Who is known by name in a season's file", options.file,
                [](const Request& r, const Answer& a) { return cli::people(r.people, a); });
    addText(*people, "--add", options.add, "NAME", "Add somebody");
    addText(*people, "--erase", options.erase, "NAME", "Erase a name for good; what was entered stays");
    addText(*people, "--rename", options.rename, "NAME", "Give somebody another name, with --to");
    addText(*people, "--to", options.to, "NAME", "The other name");
}

void addCopies(CLI::App& app, Request& request) {
    CopyOptions& options = request.copy;
    CLI::App* backup = addVerb(app, request, "backup", "Make a checked copy of a season's file", options.file,
                               [](const Request& r, const Answer& a) { return cli::backup(r.copy, a); });
    CLI::App* restore =
        addVerb(app, request, "restore", "Make a season's file anew from a copy or an export", options.file,
                [](const Request& r, const Answer& a) { return cli::restore(r.copy, a); });
    for (CLI::App* command : {backup, restore}) {
        command->add_option("COPY", options.copy, "The copy's file")->required()->option_text(" ");
    }
    CLI::App* place = app.add_subcommand("second-place", "Where a copy goes after each day's close");
    addAnswerOptions(*place, request.answer);
    place->callback([&request] {
        request.run = [&request](const Answer& answer) { return cli::secondPlace(request.copy, answer); };
    });
    place->add_option("FOLDER", options.place, "Such as a stick; without it the place is shown")
        ->option_text(" ");
    place->add_flag("--none", options.noPlace, "Make no more such copies");
    addText(*place, "--season", options.season, "FILE", "Tell of the newest copy of this season");
    place->add_flag("--copy-now", options.copyNow, "Make a copy of that season at once");
    CLI::App* taken =
        addVerb(app, request, "export", "Write a season as JSON, or a table of it as CSV", options.file,
                [](const Request& r, const Answer& a) { return exportSeason(r.copy, a); });
    taken->add_option("WHAT", options.what, "season, loads, samples or tractorHours")->option_text(" ");
    addText(*taken, "--output", options.output, "FILE", "A new file to write to");
    taken->add_flag("--names", options.names, "With people's names, which the document then keeps");
    CLI::App* schema =
        app.add_subcommand("schema", "The JSON Schema of an exported season, a lesson or a drive");
    schema->add_option("WHAT", options.schema, "season, lesson or drive")->option_text(" ");
    schema->callback([&request] {
        request.run = [&request](const Answer& answer) { return cli::schema(request.copy.schema, answer); };
    });
}

int complain(Status status, std::string line) {
    for (char& c : line) {
        if (c == '\n') c = ' ';
    }
    std::cerr << kProgram << ": " << line << '\n';
    return static_cast<int>(status);
}

int execute(const Request& request) {
    Answer answer{.out = std::cout, .notes = std::cerr, .json = request.answer.json};
    const auto units = enumFromText<UnitSystem>(request.answer.units);
    if (!units) {
        return complain(Status::misused,
                        "--units: \"" + request.answer.units + "\" is not known: use metric or us");
    }
    answer.style.units = *units;
    if (const Outcome outcome = request.run(answer); !outcome) {
        return complain(outcome.error().status, outcome.error().line);
    }
    if (!std::cout.flush()) {
        return complain(Status::failed,
                        "The answer could not be written: check the disk or the pipe behind it");
    }
    return static_cast<int>(Status::done);
}

int parseAndExecute(int argc, char** argv) {
    CLI::App app{
        "Treadwell: how densely a bunker silo is being packed, how sure that is, and what to change"};
    app.require_subcommand(0, 1);  // `export FILE samples` names a table, no second verb
    app.name(kProgram);
    app.set_version_flag("--version", std::string{kProgram} + " " + TREADWELL_VERSION);
    Request request;
    addEstimate(app, request);
    addNew(app, request);
    addPlanVerb(app, request);
    addSieve(app, request);
    addDry(app, request);
    addImport(app, request);
    addRecording(app, request);
    addPeople(app, request);
    addSeasonVerbs(app, request);
    addHarvest(app, request);
    addSheets(app, request);
    addScaleVerbs(app, request);
    addCopies(app, request);
    addPassesVerbs(app, request);
    addPracticeVerbs(app, request);
    try {
        app.parse(argc, argv);
    } catch (const CLI::Success& wanted) {
        return app.exit(wanted, std::cout, std::cerr);
    } catch (const CLI::ParseError& error) {
        return complain(Status::misused, std::string{error.what()} + ": see --help");
    }
    if (!request.run) return complain(Status::misused, "say what to do, like estimate: see --help");
    return execute(request);
}

}  // namespace

int main(int argc, char** argv) {
    try {
        return parseAndExecute(argc, argv);
    } catch (const std::exception& error) {
        return complain(Status::failed,
                        std::string{error.what()} + ": this should not happen, please report it");
    }
}
