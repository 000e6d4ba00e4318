#pragma once

#include "core/base/farm_zone.h"

#include <optional>

class QDateEdit;

namespace treadwell::widgets {

/// A field for a day that may be left open: it begins so, and shows a dash.
[[nodiscard]] QDateEdit* makeDateField(const char* name);

/// None where it is open.
[[nodiscard]] std::optional<LocalDay> dayOf(const QDateEdit& field);

void leaveOpen(QDateEdit& field);

}  // namespace treadwell::widgets
