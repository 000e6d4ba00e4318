#pragma once

#include "app/desktop/fill/say.h"
#include "core/density/readings.h"

namespace treadwell::fill {

/// What is told over the radio or in a message: who packs and spreads, the density of the layer with its
/// band, the target and the chance; in words what is not known yet.
[[nodiscard]] QString radioText(const season::Season& season, const density::Readings& readings,
                                const Speech& speech);

}  // namespace treadwell::fill
