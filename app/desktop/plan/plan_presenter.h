#pragma once

#include "app/desktop/fill/say.h"
#include "app/desktop/plan/plan_work.h"
#include "app/desktop/samples/lines_panel.h"

#include <array>

namespace treadwell::plan_page {

// From a plan and its answers to what the page shows. All are pure.

using samples_page::Line;
using samples_page::Lines;

/// The five questions of a plan, in their order.
enum class Question : std::uint8_t { fits, flows, pays, seals, feeds };
inline constexpr std::size_t kQuestions = 5;

/// A question with its answer in a few words.
struct Headline {
    QString question;
    QString answer;
    bool caution = false;
};

struct PlanView {
    std::array<Headline, kQuestions> headlines;
    std::array<Lines, kQuestions> lines;
};

/// Where a part could not be reckoned, its lines say why.
[[nodiscard]] PlanView viewOf(const Answers& answers, const fill::Speech& speech);

[[nodiscard]] QString questionName(Question question);
[[nodiscard]] QString linkName(plan::Link link);

/// `11.8 (10.9–12.6)`
[[nodiscard]] QString bandText(const plan::Band& band, int decimals, const settings::DisplayUnits& units);
/// `1.4 km`
[[nodiscard]] QString roadText(Length distance, const settings::DisplayUnits& units);
[[nodiscard]] QString moneyText(double money, const settings::DisplayUnits& units);
/// The median and, in brackets, its 80 % band.
[[nodiscard]] QString densityText(DryDensity median, DryDensity low80, DryDensity high80,
                                  const settings::DisplayUnits& units);

// Each question's lines; `answers` holds a result for it.
[[nodiscard]] Lines fitLines(const Answers& answers, const fill::Speech& speech);
[[nodiscard]] Lines flowLines(const Answers& answers, const fill::Speech& speech);
[[nodiscard]] Lines payLines(const Answers& answers, const fill::Speech& speech);
[[nodiscard]] Lines sealLines(const Answers& answers, const fill::Speech& speech);
[[nodiscard]] Lines feedLines(const Answers& answers, const fill::Speech& speech);

}  // namespace treadwell::plan_page
