#pragma once

#include "core/practice/lesson.h"

namespace treadwell::practice {

/// The lessons that come with the program (resources/lessons), in their order.
[[nodiscard]] const std::vector<Lesson>& shippedLessons();

}  // namespace treadwell::practice
