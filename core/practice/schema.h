#pragma once

#include <string>

namespace treadwell::practice {

/// The JSON Schemas (draft 2020-12) of a lesson's file and of a driver's, from their lists of fields.
/// resources/lesson.schema.json and resources/drive.schema.json are these texts.
[[nodiscard]] std::string lessonSchema();
[[nodiscard]] std::string driveSchema();

}  // namespace treadwell::practice
