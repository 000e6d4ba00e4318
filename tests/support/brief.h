#pragma once

#include "core/base/instant.h"
#include "core/quantity/fraction.h"
#include "core/quantity/geometry.h"

namespace treadwell::testing_support {

[[nodiscard]] inline DryMatter percent(double value) {
    return DryMatter::fromPercent(value);
}
[[nodiscard]] inline Length mm(double value) {
    return Length::fromMillimetres(value);
}
[[nodiscard]] inline LocalDay on(const char* day) {
    return dayFromIso8601(day).value();
}

}  // namespace treadwell::testing_support
