#include "core/outcome/sealing.h"

#include <algorithm>
#include <cmath>

namespace treadwell::outcome {

Sheets sheetsOver(Length along, Length across, const SheetRule& rule) noexcept {
    const Length toCover = along + rule.edge * 2.0;
    const double count = std::ceil((toCover - rule.overlap) / (rule.width - rule.overlap) - 1e-9);
    const int sheets = std::max(1, static_cast<int>(count));
    const Length length = across + rule.edge * 2.0;
    return {.count = sheets,
            .area = rule.width * length * static_cast<double>(sheets),
            .laps = rule.overlap * length * static_cast<double>(sheets - 1)};
}

Loss waitingLoss(double days) noexcept {
    return Loss::fromPercent(11.0 * std::min(days, kLongestWait_days) / kLongestWait_days);
}

}  // namespace treadwell::outcome
