#pragma once

#include "app/desktop/fill/say.h"
#include "app/desktop/widgets/attention_panel.h"
#include "core/attention/cautions.h"
#include "core/density/readings.h"

namespace treadwell::fill {

/// What belongs to the silo of these readings now; nothing where the farm has not defined it.
[[nodiscard]] std::vector<attention::CautionNow> cautionsAt(const season::Season& season,
                                                            const density::Readings& readings);

/// The cautions, what the estimates shown have to be doubted for, each said once, and the standing text.
[[nodiscard]] std::vector<widgets::Notice> cautionNotices(const std::vector<attention::CautionNow>& cautions,
                                                          const density::Readings& readings,
                                                          const Speech& speech);

/// Those of the cautions that are not yet recorded as shown on the day of `now`.
[[nodiscard]] std::vector<entries::CautionShown> unrecorded(
    const std::vector<attention::CautionNow>& cautions, const season::Season& season, Instant now);

}  // namespace treadwell::fill
