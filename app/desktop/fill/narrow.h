#pragma once

#include "app/desktop/settings/appearance.h"

#include <QWidget>

namespace treadwell::fill {

/// What stands at the foot of the page is too narrow for all its columns.
[[nodiscard]] inline bool isNarrow(const QWidget& form, const settings::Appearance& appearance) {
    return form.width() < appearance.pixels(150.0);
}

}  // namespace treadwell::fill
