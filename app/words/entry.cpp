#include "app/words/entry.h"

#include "core/base/number_text.h"
#include "core/entries/field_name.h"
#include "core/entries/payload.h"

#include <algorithm>
#include <set>

namespace treadwell::words {

namespace {

using entries::HasFields;
using entries::isId;
using entries::isOptional;
using entries::isVector;
using entries::UnitType;

/// `packing_share` and `nearMiss` as words.
std::string spaced(std::string_view name) {
    std::string words;
    for (const char c : name) {
        if (c >= 'A' && c <= 'Z') {
            words += ' ';
            words += static_cast<char>(c - 'A' + 'a');
        } else {
            words += c == '_' ? ' ' : c;
        }
    }
    return words;
}

std::string term(const char* context, std::string_view name, const Style& style) {
    const std::string english = spaced(name);
    return style.translate ? style.translate(context, english.c_str()) : english;
}

/// The visitor that lists an entry's fields with their values.
class FieldTeller {
  public:
    FieldTeller(const NameOf& nameOf, const Style& style) : m_nameOf(nameOf), m_style(style) {}

    template <class T>
    void operator()(std::string_view key, const T& value) {
        if constexpr (isOptional<T>) {
            if (value) (*this)(key, *value);
        } else if constexpr (HasFields<T>) {
            T::fields(*this, value);
        } else if constexpr (isVector<T>) {
            for (std::size_t i = 0; i < value.size(); ++i) item(key, i, value[i]);
            m_separator = m_text.empty() ? "" : "; ";
        } else if constexpr (std::is_same_v<T, double>) {
            add(key, key.ends_with("_deg") ? degrees(value) : said(value));
        } else {
            add(key, said(value));
        }
    }

    [[nodiscard]] std::string take() { return std::move(m_text); }

  private:
    template <class T>
    void item(std::string_view key, std::size_t index, const T& value) {
        m_text += (m_text.empty() ? "" : "; ") + term(kFieldContext, entries::fieldName(key), m_style) + ' ' +
                  std::to_string(index + 1) + ": ";
        m_separator = "";
        if constexpr (HasFields<T>) {
            T::fields(*this, value);
        } else {
            m_text += said(value);
        }
    }

    void add(std::string_view key, const std::string& value) {
        if (value.empty()) return;
        m_text += m_separator + term(kFieldContext, entries::fieldName(key), m_style) + ' ' + value;
        m_separator = ", ";
    }

    /// A place on Earth, to the last digit: the seventh decimal is a centimetre.
    [[nodiscard]] std::string degrees(double value) const {
        std::string text = shortestText(value);
        std::replace(text.begin(), text.end(), '.', m_style.decimalSign);
        return text + "\u00B0";
    }

    template <class T>
    [[nodiscard]] std::string said(const T& value) const {
        if constexpr (UnitType<T>) {
            return inWords(value.amount(), m_style);
        } else if constexpr (std::is_same_v<T, Seconds>) {
            return inWords(Amount{Dimension::duration, value.count()}, m_style);
        } else if constexpr (NamedEnum<T>) {
            return term(kWordContext, enumText(value), m_style);
        } else if constexpr (isId<T>) {
            const std::string name = m_nameOf(value.value);
            return name.empty() ? value.value.text() : name;
        } else if constexpr (std::is_same_v<T, Hash>) {
            return toHex(value);
        } else if constexpr (std::is_same_v<T, Instant>) {
            return inWords(value, m_style);
        } else if constexpr (std::is_same_v<T, LocalDay>) {
            return toIso8601(value);
        } else if constexpr (std::is_same_v<T, bool>) {
            return term(kWordContext, value ? "yes" : "no", m_style);
        } else if constexpr (std::is_same_v<T, std::string>) {
            // A plan's inputs: a JSON object is for programs.
            return value.starts_with('{') ? "{...}" : value;
        } else if constexpr (std::is_integral_v<T>) {
            return std::to_string(value);
        } else {
            return inWords(value, m_style);
        }
    }

    const NameOf& m_nameOf;
    const Style& m_style;
    std::string m_text;
    const char* m_separator = "";
};

/// Collects what FieldTeller may say.
class TermCollector {
  public:
    template <class T>
    void operator()(std::string_view key, const T& /*value*/) {
        note<T>(key);
    }

    std::set<std::string> fields;
    std::set<std::string> words{"no", "yes"};

  private:
    template <class T>
    void note(std::string_view key) {
        if constexpr (isOptional<T> || isVector<T>) {
            if constexpr (isVector<T>) fields.insert(spaced(entries::fieldName(key)));
            note<typename T::value_type>(key);
        } else if constexpr (HasFields<T>) {
            const T empty{};
            T::fields(*this, empty);
        } else {
            fields.insert(spaced(entries::fieldName(key)));
            if constexpr (NamedEnum<T>) {
                for (const std::string_view text : enumTexts(T{})) words.insert(spaced(text));
            }
        }
    }
};

}  // namespace

std::string kindInWords(std::string_view kind, const Style& style) {
    return term(kFieldContext, kind, style);
}

std::string wordInWords(std::string_view name, const Style& style) {
    return term(kWordContext, name, style);
}

std::string inWords(const entries::Body& body, const NameOf& nameOf, const Style& style) {
    FieldTeller teller{nameOf, style};
    std::visit(
        [&](const auto& kind) {
            using Kind = std::decay_t<decltype(kind)>;
            if constexpr (!std::is_same_v<Kind, std::monostate>) Kind::fields(teller, kind);
        },
        body);
    return teller.take();
}

std::vector<EntryTerm> entryTerms() {
    TermCollector collector;
    for (const std::string_view name : entries::kindNames()) {
        collector.fields.insert(spaced(name));
        std::visit(
            [&](const auto& kind) {
                using Kind = std::decay_t<decltype(kind)>;
                if constexpr (!std::is_same_v<Kind, std::monostate>) Kind::fields(collector, kind);
            },
            *entries::emptyBody(name));
    }
    std::vector<EntryTerm> terms;
    for (const std::string& english : collector.fields) terms.push_back({kFieldContext, english});
    for (const std::string& english : collector.words) terms.push_back({kWordContext, english});
    return terms;
}

}  // namespace treadwell::words
