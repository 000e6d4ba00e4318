#pragma once

#include "app/desktop/fill/say.h"
#include "app/desktop/widgets/caution_panel.h"
#include "core/density/readings.h"

namespace treadwell::fill {

/// What the estimates shown have to be doubted for, each said once.
[[nodiscard]] std::vector<widgets::CautionView> cautionsAt(const density::Readings& readings,
                                                           const Speech& speech);

}  // namespace treadwell::fill
