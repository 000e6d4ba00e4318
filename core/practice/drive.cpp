#include "core/practice/drive.h"

#include "core/practice/file.h"

namespace treadwell::practice {

Result<Drive> driveFromJson(std::string_view json) {
    auto drive = fileFromJson<Drive>(json, kDriveFormat, kDriveVersion);
    if (!drive) return drive;
    if (drive->legs.empty()) return fail(code::lessonOrderWrong, "legs");
    Seconds before{0};
    for (std::size_t i = 0; i < drive->legs.size(); ++i) {
        const auto at = drive->legs[i].at;
        if (at && *at < before) return fail(code::lessonOrderWrong, "legs[" + std::to_string(i) + "].at_s");
        before = at.value_or(before);
    }
    return drive;
}

Result<LessonRun> runDriven(Lesson lesson, const Plan& plan, const Drive& drive, unsigned threads) {
    if (auto valid = validate(plan, lesson); !valid) return Unexpected{valid.error()};
    auto run = LessonRun::start(std::move(lesson), plan, threads);
    if (!run) return run;
    run->halt();
    std::size_t next = 0;
    while (!run->isOver()) {
        if (next == drive.legs.size() && drive.again) next = 0;
        if (next < drive.legs.size()) {
            const Leg& leg = drive.legs[next];
            if (leg.at ? *leg.at <= run->facts().elapsed : run->hand()->stands()) {
                run->steerTo({leg.x.si(), leg.y.si()});
                ++next;
            }
        }
        if (auto advanced = run->advance(std::chrono::seconds{1}); !advanced)
            return Unexpected{advanced.error()};
    }
    return run;
}

}  // namespace treadwell::practice
