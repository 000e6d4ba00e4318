#pragma once

#include "app/cli/season_file.h"
#include "core/practice/run.h"

namespace treadwell::cli {

/// The options of lessons beside those of a season's view, as typed.
struct PracticeOptions {
    std::string lesson;  ///< of one that comes with the program, or a file
    std::string layer = "15cm";
    std::string pattern = "wholeWidth";
    std::string speed = "4km/h";
    std::string nearWall = "20cm";
    std::string ramp = "3:1";
    std::optional<std::string> call;
    std::optional<std::string> drive;  ///< a driver's file
    std::string threads = "1";
    bool noAgreement = false;
    bool rollBesidePeople = false;
    bool noLights = false;
    std::optional<std::string> trainee;
    std::optional<std::string> forget;
    std::string title;
    std::string story;
    std::string goal;
    std::string id;
    std::optional<std::string> output;
};

/// The lessons that come with the program.
[[nodiscard]] Outcome lessons(const Answer& answer);

/// One lesson run to its end by a plan or a driver's file: the result, and what went wrong where and why.
[[nodiscard]] Outcome lesson(const PracticeOptions& options, const Answer& answer);

/// Member "place" in metres from the back wall and from the left wall.
void writePlace(JsonWriter& json, const passes::Patch& place);

/// Notes a run for a trainee of this machine.
[[nodiscard]] Outcome noteRun(const std::string& trainee, const practice::LessonRun& run, double score,
                              const words::Style& style);

/// How the trainees of this machine do; forgets one.
[[nodiscard]] Outcome trainees(const PracticeOptions& options, const Answer& answer);

/// A trainee's certificate of practice, which is no licence.
[[nodiscard]] Outcome certificate(const PracticeOptions& options, const Answer& answer);

/// A lesson's file made from what was delivered to a silo on a day.
[[nodiscard]] Outcome lessonOfDay(const SeasonOptions& season, const PracticeOptions& options,
                                  const Answer& answer);

}  // namespace treadwell::cli
