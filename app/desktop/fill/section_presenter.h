#pragma once

#include "app/desktop/fill/say.h"
#include "app/desktop/widgets/section_view.h"
#include "core/density/readings.h"

namespace treadwell::fill {

/// The section of the silo of these readings as it lies.
[[nodiscard]] widgets::Section sectionAt(const season::Season& season, const density::Readings& readings,
                                         const Speech& speech);

/// `15 Sep 10:20–11:05`, on the farm's wall clock and in the language of the screen.
[[nodiscard]] QString spanText(const FarmZone& zone, Instant begin, Instant end, const QLocale& locale);

}  // namespace treadwell::fill
