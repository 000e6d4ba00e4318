#pragma once

#include "core/practice/lesson.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace treadwell::practice {

/// Those that come with the program, in their order.
[[nodiscard]] inline std::vector<Lesson> everyLesson() {
    std::vector<Lesson> lessons;
    for (const auto& file : std::filesystem::directory_iterator{TREADWELL_SOURCE "/resources/lessons"}) {
        const std::ifstream in{file.path()};
        std::stringstream text;
        text << in.rdbuf();
        auto lesson = lessonFromJson(text.str());
        EXPECT_TRUE(lesson) << file.path() << ": " << lesson.error().field;
        if (lesson) lessons.push_back(*std::move(lesson));
    }
    std::sort(lessons.begin(), lessons.end(),
              [](const Lesson& a, const Lesson& b) { return a.order < b.order; });
    return lessons;
}

}  // namespace treadwell::practice
