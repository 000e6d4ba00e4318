#include "app/cli/practice.h"

#include "app/cli/density_output.h"
#include "app/cli/from_file.h"
#include "app/cli/option_reader.h"
#include "app/cli/season_copies.h"
#include "core/base/number_text.h"
#include "core/practice/debrief.h"
#include "core/practice/drive.h"
#include "core/practice/shipped.h"

#include <algorithm>
#include <filesystem>
#include <ostream>

namespace treadwell::cli {

namespace {

using practice::Debrief;
using practice::Lesson;
using practice::LessonRun;

tl::expected<Lesson, Failure> lessonCalled(const std::string& name, const words::Style& style) {
    std::string known;
    for (const Lesson& lesson : practice::shippedLessons()) {
        if (lesson.id == name) return lesson;
        known += (known.empty() ? "" : ", ") + lesson.id;
    }
    if (std::filesystem::exists(name)) return fromFile(name, practice::lessonFromJson, style);
    return misusedLine("\"" + name + "\" is no lesson and no file: use one of " + known +
                       " or the name of a file");
}

tl::expected<practice::Plan, Failure> planFrom(const PracticeOptions& options, const Lesson& lesson,
                                               const words::Style& style) {
    OptionReader reader{style};
    practice::Plan plan;
    plan.layer = reader.readAs<Length>(Dimension::layerThickness, options.layer, "--layer");
    plan.pattern = reader.readName<passes::Pattern>(options.pattern, "--pattern");
    plan.speed = reader.read<Speed>(options.speed, "--speed");
    plan.nearWall = reader.read<Length>(options.nearWall, "--near-wall");
    plan.ramp = reader.read<Slope>(options.ramp, "--ramp");
    if (options.call) {
        plan.callTractors =
            Seconds{reader.take(siFromText(Dimension::duration, *options.call, "--call"), "--call")};
    }
    plan.oneWay = !options.noAgreement;
    plan.stopForPeople = !options.rollBesidePeople;
    plan.lights = !options.noLights;
    if (reader.failure()) return tl::unexpected{*reader.failure()};
    if (const auto valid = validate(plan, lesson); !valid) {
        std::string option = "--" + valid.error().field;
        std::replace(option.begin(), option.end(), '_', '-');
        return misused(valid.error(), option == "--call-tractors" ? "--call" : option, style);
    }
    return plan;
}

void writeLesson(JsonWriter& json, const Lesson& lesson) {
    json.member("id", lesson.id).member("title", lesson.text("en").title);
    json.member("goal", lesson.text("en").goal);
    writeAmount(json, "duration", durationAmount(lesson.duration));
    json.member("loads", static_cast<std::int64_t>(lesson.deliveries.size()));
    json.member("tractors", static_cast<std::int64_t>(lesson.tractors.size()));
}

}  // namespace

void writePlace(JsonWriter& json, const passes::Patch& place) {
    json.key("place").beginObject().member("x0_m", place.x0_m).member("x1_m", place.x1_m);
    json.member("y0_m", place.y0_m).member("y1_m", place.y1_m).endObject();
}

namespace {

void writeRun(const LessonRun& run, const Debrief& debrief, const Answer& answer) {
    JsonWriter json{2};
    json.beginObject();
    writeLesson(json, run.lesson());
    json.member("tipped_t", run.facts().tipped.tonnes());
    writeAmount(json, "rolled", durationAmount(run.facts().rolled));
    writeDensity(json, "density", debrief.density);
    json.member("passes", debrief.coverage.meanPasses)
        .member("unrolled_share", debrief.coverage.unrolled.fraction())
        .member("three_passes_share", debrief.coverage.threeOrMore.fraction())
        .member("density_variation", debrief.coverage.variation)
        .member("score", debrief.score);
    json.key("points").beginArray();
    for (const practice::Points& points : debrief.points) {
        json.beginObject().member("part", enumText(points.part)).member("points", points.points);
        json.member("most", points.most).member("code", toText(points.why.code));
        json.member("text", words::inWords(points.why, answer.style)).endObject();
    }
    json.endArray().key("findings").beginArray();
    for (const practice::Finding& finding : debrief.findings) {
        json.beginObject().member("code", toText(finding.message.code));
        json.member("text", words::inWords(finding.message, answer.style));
        if (finding.place) writePlace(json, *finding.place);
        if (finding.caution) json.member("caution", enumText(*finding.caution));
        json.endObject();
    }
    json.endArray();
    writeMessages(json, "cautions", practice::cautionTexts(run, debrief.cautions), answer.style);
    json.endObject();
    answer.out << json.text() << '\n';
}

void printRun(const LessonRun& run, const Debrief& debrief, const Answer& answer) {
    const auto rounded = [](double points) { return fixedText(points, 0); };
    answer.out << run.lesson().text("en").title << ": " << rounded(debrief.score) << " of 100\n";
    printLine(answer.out, "density", bandInWords(debrief.density, answer.style));
    for (const practice::Points& points : debrief.points) {
        printLine(answer.out, enumText(points.part),
                  rounded(points.points) + " of " + rounded(points.most) + ": " +
                      words::inWords(points.why, answer.style));
    }
    if (!debrief.findings.empty()) answer.out << "\nWhat went wrong\n";
    for (const practice::Finding& finding : debrief.findings)
        answer.out << "- " << words::inWords(finding.message, answer.style) << '\n';
    answer.out << "\nCautions\n";
    for (const Message& caution : practice::cautionTexts(run, debrief.cautions))
        answer.out << "- " << words::inWords(caution, answer.style) << '\n';
}

}  // namespace

Outcome lessons(const Answer& answer) {
    if (answer.json) {
        JsonWriter json{2};
        json.beginObject().key("lessons").beginArray();
        for (const Lesson& lesson : practice::shippedLessons()) {
            json.beginObject();
            writeLesson(json, lesson);
            json.endObject();
        }
        json.endArray().endObject();
        answer.out << json.text() << '\n';
        return {};
    }
    for (const Lesson& lesson : practice::shippedLessons())
        printLine(answer.out, lesson.id, lesson.text("en").title + ": " + lesson.text("en").goal);
    return {};
}

Outcome lesson(const PracticeOptions& options, const Answer& answer) {
    auto chosen = lessonCalled(options.lesson, answer.style);
    if (!chosen) return tl::unexpected{chosen.error()};
    const auto plan = planFrom(options, *chosen, answer.style);
    if (!plan) return tl::unexpected{plan.error()};
    const auto threads = integerFromText(options.threads);
    if (!threads || *threads < 1 || *threads > 64) {
        return misusedLine("--threads: \"" + options.threads + "\" is no whole number of 1 to 64");
    }
    Result<LessonRun> run = Unexpected{Error{}};
    if (options.drive) {
        const auto drive = fromFile(*options.drive, practice::driveFromJson, answer.style);
        if (!drive) return tl::unexpected{drive.error()};
        run = practice::runDriven(*std::move(chosen), *plan, *drive, static_cast<unsigned>(*threads));
    } else {
        run = practice::runLesson(*std::move(chosen), *plan, static_cast<unsigned>(*threads));
    }
    if (!run) return failed(run.error(), answer.style);
    const Debrief debrief = practice::debriefOf(*run);
    if (options.trainee) {
        if (const Outcome noted = noteRun(*options.trainee, *run, debrief.score, answer.style); !noted)
            return noted;
    }
    answer.json ? writeRun(*run, debrief, answer) : printRun(*run, debrief, answer);
    return {};
}

Outcome lessonOfDay(const SeasonOptions& options, const PracticeOptions& given, const Answer& answer) {
    const auto season = readSeason(options.file, answer);
    if (!season) return tl::unexpected{season.error()};
    const auto silo = siloFrom(season->farm(), options.silo);
    if (!silo) return tl::unexpected{silo.error()};
    const auto day = dayFrom(*season, options.date);
    if (!day) return tl::unexpected{day.error()};
    auto lesson =
        practice::lessonFromDay(*season, **day, *silo, {"en", given.title, given.story, given.goal});
    if (!lesson) return failed(lesson.error(), answer.style);
    if (!given.id.empty()) lesson->id = given.id;
    return deliver(practice::toJson(*lesson) + '\n', given.output, answer);
}

}  // namespace treadwell::cli
