#pragma once

#include "app/desktop/practice/practice_presenter.h"
#include "app/desktop/settings/theme.h"

#include <functional>

class QPainter;
class QRectF;

namespace treadwell::practice_page {

/// The places that a debrief speaks of, by their numbers, on a pad that is drawn in plan.
void paintMarks(QPainter& painter, const settings::Theme& theme, std::span<const PadMark> marks,
                const std::function<QRectF(const passes::Patch&)>& placeOf);

}  // namespace treadwell::practice_page
