#pragma once

#include "core/practice/run.h"

namespace treadwell::practice {

/// One goal of a driver: to a point of the floor, x from the back wall, y from the left wall.
struct Leg {
    std::optional<Seconds>
        at;  ///< of the lesson's clock; where none is given, once the one before is reached
    Length x;
    Length y;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("at_s", self.at);
        visit("x_m", self.x);
        visit("y_m", self.y);
    }
};

/// What a driver does with the first tractor, goal after goal; from the first again after the last if that is
/// asked for.
struct Drive {
    bool again = false;
    std::vector<Leg> legs;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("again", self.again);
        visit("legs", self.legs);
    }
};

inline constexpr std::string_view kDriveFormat = "treadwell drive";
inline constexpr int kDriveVersion = 1;

/// A driver's file: JSON with `format` "treadwell drive" and `version`, and the fields above in SI. Errors:
/// those of PayloadDocument and PayloadReader, fieldUnknown, lessonVersion, lessonOrderWrong where there is
/// no leg or one starts before the leg that it follows.
[[nodiscard]] Result<Drive> driveFromJson(std::string_view json);

/// Runs a lesson to its end with the first tractor driven so, the others by the plan. Errors: those of
/// validate() and of LessonRun.
[[nodiscard]] Result<LessonRun> runDriven(Lesson lesson, const Plan& plan, const Drive& drive,
                                          unsigned threads = 1);

}  // namespace treadwell::practice
