#pragma once

#include <optional>
#include <string_view>
#include <type_traits>

namespace treadwell {

/// An enumeration with stable names: `enumTexts(E)` beside it gives an array of them in the order of its
/// values. Journal, JSON and command line use these names.
template <class T>
concept NamedEnum = std::is_enum_v<T> && requires(T value) {
    enumTexts(value);
};

template <NamedEnum E>
[[nodiscard]] constexpr std::string_view enumText(E value) {
    return enumTexts(value)[static_cast<std::size_t>(value)];
}

template <NamedEnum E>
[[nodiscard]] constexpr std::optional<E> enumFromText(std::string_view text) {
    const auto texts = enumTexts(E{});
    for (std::size_t i = 0; i < texts.size(); ++i) {
        if (texts[i] == text) return static_cast<E>(i);
    }
    return std::nullopt;
}

}  // namespace treadwell
