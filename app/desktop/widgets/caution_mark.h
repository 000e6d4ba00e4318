#pragma once

#include "app/desktop/settings/theme.h"

#include <QIcon>

namespace treadwell::widgets {

/// A triangle with an exclamation mark: told by its shape, whatever the colour.
[[nodiscard]] QIcon cautionMark(const settings::Theme& theme);

}  // namespace treadwell::widgets
