#pragma once

#include "app/desktop/settings/theme.h"

#include <qcustomplot.h>

namespace treadwell::plots {

/// Puts the legend into a row of its own above the curves.
void legendAbove(QCustomPlot& plot);

/// Grounds, axes and fixed margins of a small plot: a longer label must not make it jump.
void styleAxes(QCustomPlot& plot, const settings::Theme& theme, const QFont& font);

}  // namespace treadwell::plots
