#include "core/review/certificate.h"

#include "core/attention/cautions.h"
#include "core/practice/codes.h"
#include "core/review/codes.h"

#include <algorithm>

namespace treadwell::review {

namespace {

constexpr std::size_t kDay = 10;  // letters of 2026-09-15, of UTC

std::string titleOf(const std::string& id, std::span<const practice::Lesson> lessons,
                    std::string_view language) {
    const auto found = std::find_if(lessons.begin(), lessons.end(),
                                    [&](const practice::Lesson& lesson) { return lesson.id == id; });
    return found == lessons.end() ? id : found->text(language).title;
}

}  // namespace

Document certificateOf(const practice::Trainee& trainee, std::span<const practice::Lesson> lessons,
                       std::string_view language, Instant now) {
    const auto runs = std::count_if(lessons.begin(), lessons.end(), [&](const practice::Lesson& lesson) {
        return trainee.of(lesson.id) != nullptr;
    });
    Section summary{"summary", code::reviewSummary, {}};
    summary.blocks.emplace_back(Message{code::certificateNoLicence, {}});
    summary.blocks.emplace_back(
        Message{code::certificateRuns, {trainee.name, runs, static_cast<std::int64_t>(lessons.size()), now}});
    Section done{"lessons", code::certificateLessons, {}};
    Table table{"lessons",
                {{"lesson", code::columnLesson},
                 {"best", code::columnBest},
                 {"runs", code::columnRuns},
                 {"driven", code::columnDriven},
                 {"day", code::columnDay}},
                {}};
    for (const practice::LessonDone& each : trainee.done) {
        table.rows.push_back({titleOf(each.lesson, lessons, language), each.best,
                              static_cast<std::int64_t>(each.runs),
                              Message{each.byHand ? code::drivenByHand : code::drivenByPlan, {}},
                              toIso8601(each.at).substr(0, kDay)});
    }
    if (table.rows.empty()) {
        done.blocks.emplace_back(Message{code::reviewNothing, {}});
    } else {
        done.blocks.emplace_back(std::move(table));
        done.blocks.emplace_back(Message{code::certificateScore, {}});
    }
    Section cautions{"cautions", code::reviewCautions, {attention::standingText()}};
    return {"certificate",
            {code::certificateTitle, {trainee.name}},
            {std::move(summary), std::move(done), std::move(cautions)}};
}

}  // namespace treadwell::review
