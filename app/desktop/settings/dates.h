#pragma once

#include "core/base/farm_zone.h"

#include <QDate>
#include <QLocale>

namespace treadwell::settings {

// Qt's own ways from and to std::chrono need a newer standard library than Debian 12's.

[[nodiscard]] inline QDate dateOf(LocalDay day) {
    return {static_cast<int>(day.year()), static_cast<int>(static_cast<unsigned>(day.month())),
            static_cast<int>(static_cast<unsigned>(day.day()))};
}

[[nodiscard]] inline LocalDay localDayOf(const QDate& date) {
    return {std::chrono::year{date.year()}, std::chrono::month{static_cast<unsigned>(date.month())},
            std::chrono::day{static_cast<unsigned>(date.day())}};
}

/// The day as the locale writes it shortly.
[[nodiscard]] inline QString dayText(LocalDay day, const QLocale& locale) {
    return locale.toString(dateOf(day), QLocale::ShortFormat);
}

}  // namespace treadwell::settings
