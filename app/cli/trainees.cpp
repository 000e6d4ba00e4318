// How the trainees of this machine do, and what they take home on paper.
#include "app/cli/day.h"
#include "app/cli/open_season.h"
#include "app/cli/practice.h"
#include "core/base/number_text.h"
#include "core/practice/progress.h"
#include "core/practice/shipped.h"
#include "core/review/certificate.h"
#include "core/session/state_folder.h"

#include <ostream>

namespace treadwell::cli {

namespace {

struct Kept {
    std::filesystem::path file;
    practice::Progress progress;
};

tl::expected<Kept, Failure> readKept(const words::Style& style) {
    const auto folder = session::stateFolder();
    if (!folder) return failed(folder.error(), style);
    Kept kept{*folder / practice::kProgressFile, {}};
    auto progress = practice::readProgress(kept.file);
    if (!progress) return failed(progress.error(), style);
    kept.progress = *std::move(progress);
    return kept;
}

Outcome write(const Kept& kept, const words::Style& style) {
    if (const auto written = practice::writeProgress(kept.file, kept.progress); !written)
        return failed(written.error(), style);
    return {};
}

tl::unexpected<Failure> nobodyCalled(const std::string& name, const practice::Progress& progress) {
    std::string known;
    for (const practice::Trainee& trainee : progress.trainees)
        known += (known.empty() ? "" : ", ") + trainee.name;
    return misusedLine("nobody who practises here is called \"" + name + "\"" +
                       (known.empty() ? ": nobody is known yet" : ": give one of " + known));
}

void writeTrainee(JsonWriter& json, const practice::Trainee& trainee) {
    json.beginObject().member("name", trainee.name).key("lessons").beginArray();
    for (const practice::LessonDone& done : trainee.done) {
        json.beginObject().member("lesson", done.lesson).member("best", done.best);
        json.member("runs", done.runs).member("by_hand", done.byHand).member("at", toIso8601(done.at));
        json.endObject();
    }
    json.endArray().endObject();
}

}  // namespace

Outcome noteRun(const std::string& trainee, const practice::LessonRun& run, double score,
                const words::Style& style) {
    auto kept = readKept(style);
    if (!kept) return tl::unexpected{kept.error()};
    kept->progress.note(trainee, run.lesson().id, score, run.hand() != nullptr, machineClock().now());
    return write(*kept, style);
}

Outcome trainees(const PracticeOptions& options, const Answer& answer) {
    auto kept = readKept(answer.style);
    if (!kept) return tl::unexpected{kept.error()};
    if (options.forget) {
        if (kept->progress.called(*options.forget) == nullptr)
            return nobodyCalled(*options.forget, kept->progress);
        kept->progress.remove(*options.forget);
        if (const Outcome written = write(*kept, answer.style); !written) return written;
    }
    if (answer.json) {
        JsonWriter json{2};
        json.beginObject().key("trainees").beginArray();
        for (const practice::Trainee& trainee : kept->progress.trainees) writeTrainee(json, trainee);
        json.endArray().endObject();
        answer.out << json.text() << '\n';
        return {};
    }
    if (kept->progress.trainees.empty()) answer.out << "Nobody has practised on this machine.\n";
    for (const practice::Trainee& trainee : kept->progress.trainees) {
        answer.out << trainee.name << '\n';
        for (const practice::LessonDone& done : trainee.done) {
            printLine(answer.out, "  " + done.lesson,
                      fixedText(done.best, 0) + " of 100, best of " + std::to_string(done.runs));
        }
    }
    return {};
}

Outcome certificate(const PracticeOptions& options, const Answer& answer) {
    const auto kept = readKept(answer.style);
    if (!kept) return tl::unexpected{kept.error()};
    const practice::Trainee* trainee = kept->progress.called(options.trainee.value_or(""));
    if (trainee == nullptr) return nobodyCalled(options.trainee.value_or(""), kept->progress);
    printDocument(review::certificateOf(*trainee, practice::shippedLessons(), "en", machineClock().now()),
                  answer.json ? DocumentForm::json : DocumentForm::text, answer);
    return {};
}

}  // namespace treadwell::cli
