#pragma once

#include "core/density/distribution.h"
#include "core/practice/run.h"

namespace treadwell::practice {

/// What counts, and for how much of 100.
enum class ScorePart : std::uint8_t { density, coverage, evenness, minutes, cautions };
constexpr std::array<std::string_view, 5> enumTexts(ScorePart /*part*/) noexcept {
    return {"density", "coverage", "evenness", "minutes", "cautions"};
}

struct Points {
    ScorePart part;
    double points;
    double most;
    Message why;  ///< what was reached and what was wanted
};

/// Something that went wrong.
struct Finding {
    Message message;                     ///< what, where and why, in plain words
    std::optional<passes::Patch> place;  ///< to be drawn
    std::optional<attention::Caution> caution;
    double weight;  ///< the larger, the sooner it is told
};

struct Debrief {
    double score = 0.0;  ///< of 100
    std::vector<Points> points;
    std::vector<Finding> findings;             ///< the weightiest first
    std::vector<attention::Caution> cautions;  ///< of the lesson and of the findings, once each
    density::Distribution density;             ///< of the pad as rolled, with its band
    passes::Coverage coverage;                 ///< mean over the layers
};

/// The result of a run at any moment, what went wrong where and why, and the cautions that belong to
/// it. Points fall evenly: density from the goal down to 80 % of it, coverage with the part that three passes
/// miss, evenness from the goal to three times it, minutes beyond seven and a half passes, cautions by
/// half for each that was not kept (all assumed).
[[nodiscard]] Debrief debriefOf(const LessonRun& run);

/// What those cautions say of the lesson's pad, and what stands under every such list.
[[nodiscard]] std::vector<Message> cautionTexts(const LessonRun& run,
                                                const std::vector<attention::Caution>& cautions);

}  // namespace treadwell::practice
