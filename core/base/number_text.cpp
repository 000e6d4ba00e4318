#include "core/base/number_text.h"

#include <array>
#include <charconv>
#include <cmath>
#include <stdexcept>
#include <system_error>

namespace treadwell {

namespace {

template <class Number>
std::optional<Number> wholeText(std::string_view text) {
    if (!text.empty() && text.front() == '+') {
        text.remove_prefix(1);
        if (!text.empty() && text.front() == '-') return std::nullopt;
    }
    Number value{};
    const char* end = text.data() + text.size();
    const auto [stop, code] = std::from_chars(text.data(), end, value);
    if (code != std::errc{} || stop != end) return std::nullopt;
    return value;
}

}  // namespace

std::string shortestText(double value) {
    if (!std::isfinite(value)) throw std::invalid_argument("a number that is not finite has no text");
    std::array<char, 32> text{};
    const auto [end, code] = std::to_chars(text.data(), text.data() + text.size(), value);
    return {text.data(), end};
}

std::string fixedText(double value, int decimals) {
    if (!std::isfinite(value)) throw std::invalid_argument("a number that is not finite has no text");
    std::array<char, 400> text{};
    const auto [end, code] =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed, decimals);
    std::string result(text.data(), end);
    if (result.front() == '-' && result.find_first_not_of("-0.") == std::string::npos) result.erase(0, 1);
    return result;
}

std::optional<double> numberFromText(std::string_view text) {
    const auto value = wholeText<double>(text);
    if (!value || !std::isfinite(*value)) return std::nullopt;
    return value;
}

std::optional<std::int64_t> integerFromText(std::string_view text) {
    return wholeText<std::int64_t>(text);
}

}  // namespace treadwell
