#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/base/farm_zone.h"
#include "core/formats/csv_record.h"

#include <array>
#include <optional>
#include <span>
#include <string_view>

namespace treadwell::intake {

/// How dates like 04/05/2026 are meant; with points the day always stands first.
enum class DateOrder : std::uint8_t { dayFirst, monthFirst };

constexpr std::array<std::string_view, 2> enumTexts(DateOrder /*order*/) noexcept {
    return {"dayFirst", "monthFirst"};
}

/// Decides the order for a whole file from the cells of its date column. Errors: dateOrderAmbiguous, with the
/// line.
[[nodiscard]] Result<DateOrder> dateOrderOf(std::span<const formats::CsvRecord> records, std::size_t column);

/// `2026-09-15`, `15.09.2026`, `15/09/26`; a year of two digits is one of this century.
[[nodiscard]] std::optional<LocalDay> dayFromText(std::string_view text, DateOrder order);

/// Time since midnight from `14:25`, `14:25:30` or `2:25 pm`.
[[nodiscard]] std::optional<std::chrono::seconds> timeOfDayFromText(std::string_view text);

/// Reads date and time of the farm's wall clock, or an instant with its offset (ISO 8601). A time that the
/// clock showed twice or never is `ambiguous`. Errors: wallTimeUnreadable.
[[nodiscard]] Result<FarmZone::WallInstant> momentFromText(std::string_view text, DateOrder order,
                                                           const FarmZone& zone);

}  // namespace treadwell::intake
