#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/formats/csv_record.h"

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace treadwell::formats {

enum class DecimalSign : std::uint8_t { point, comma };

constexpr std::array<std::string_view, 2> enumTexts(DecimalSign /*sign*/) noexcept {
    return {"point", "comma"};
}

/// Decides the decimal sign for a whole file, never for a cell: 1.234 is 1234 to one reader and 1.234 to
/// another. Numbers without any sign decide nothing; a file of only such numbers is read with a point.
/// Errors: decimalAmbiguous (every number that has a sign can be read either way), decimalMixed.
[[nodiscard]] Result<DecimalSign> decimalSignOf(std::span<const CsvRecord> records);

/// Reads a whole cell. The other sign, blanks and apostrophes are taken as grouping, but only before groups
/// of three.
[[nodiscard]] std::optional<double> numberFromCell(std::string_view cell, DecimalSign sign);

}  // namespace treadwell::formats
