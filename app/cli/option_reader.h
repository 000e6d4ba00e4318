#pragma once

#include "app/cli/command.h"
#include "core/base/enum_text.h"
#include "core/quantity/unit_table.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace treadwell::cli {

/// Reads options as typed and keeps the first failure, so that a list of readings needs no check after each.
class OptionReader {
  public:
    explicit OptionReader(const words::Style& style) : m_style{style} {}

    template <class Q>
    Q read(std::string_view text, std::string_view option) {
        return take(quantityFromText<Q>(text, option), option);
    }

    template <class Q>
    std::optional<Q> readIfGiven(const std::optional<std::string>& text, std::string_view option) {
        if (!text) return std::nullopt;
        return read<Q>(*text, option);
    }

    /// A quantity in the words of another dimension: `100g` for a mass as fed.
    template <class Q>
    Q readAs(Dimension dimension, std::string_view text, std::string_view option) {
        return Q::fromSi(take(siFromText(dimension, text, option), option));
    }

    template <class Q>
    std::optional<Q> readAsIfGiven(Dimension dimension, const std::optional<std::string>& text,
                                   std::string_view option) {
        if (!text) return std::nullopt;
        return readAs<Q>(dimension, *text, option);
    }

    template <NamedEnum E>
    E readName(std::string_view text, const std::string& option) {
        if (const auto found = enumFromText<E>(text)) return *found;
        std::string names;
        for (const std::string_view name : enumTexts(E{}))
            names += (names.empty() ? "" : ", ") + std::string{name};
        fail(option + ": \"" + std::string{text} + "\" is not known: use one of " + names);
        return {};
    }

    template <class T>
    T take(const Result<T>& result, std::string_view option) {
        if (result) return *result;
        if (!m_failure) m_failure = misused(result.error(), option, m_style).value();
        return {};
    }

    void fail(std::string line) {
        if (!m_failure) m_failure = Failure{Status::misused, std::move(line)};
    }

    [[nodiscard]] const std::optional<Failure>& failure() const { return m_failure; }

  private:
    const words::Style& m_style;
    std::optional<Failure> m_failure;
};

}  // namespace treadwell::cli
