#pragma once

#include "core/practice/progress.h"
#include "core/review/document.h"

#include <span>

namespace treadwell::review {

/// What a trainee has practised, for paper: the best run of each lesson, and first of all that this is no
/// licence. Titles of lessons are in `language`; a lesson that is not among `lessons` stands by its id.
[[nodiscard]] Document certificateOf(const practice::Trainee& trainee,
                                     std::span<const practice::Lesson> lessons, std::string_view language,
                                     Instant now);

}  // namespace treadwell::review
