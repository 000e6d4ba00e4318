#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace treadwell {

// Numbers as text, the same in every locale: '.' is the decimal sign and there is no grouping.

/// The shortest text that reads back to the same double. Not for NaN or infinity (std::invalid_argument).
[[nodiscard]] std::string shortestText(double value);

/// Fixed notation with `decimals` digits; "-0" is written "0".
[[nodiscard]] std::string fixedText(double value, int decimals);

/// Reads the whole of `text` as a finite number; a leading '+' is taken, blanks and anything left over are
/// not.
[[nodiscard]] std::optional<double> numberFromText(std::string_view text);

[[nodiscard]] std::optional<std::int64_t> integerFromText(std::string_view text);

/// One of 0 to 9, in no locale.
[[nodiscard]] constexpr bool isDigit(char c) noexcept {
    return c >= '0' && c <= '9';
}

}  // namespace treadwell
