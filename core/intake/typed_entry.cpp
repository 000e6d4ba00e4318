#include "core/intake/typed_entry.h"

#include "core/base/codes.h"
#include "core/base/number_text.h"
#include "core/entries/codes.h"
#include "core/entries/field_name.h"
#include "core/entries/payload.h"
#include "core/intake/codes.h"
#include "core/quantity/unit_table.h"

#include <algorithm>
#include <functional>

namespace treadwell::intake {

namespace {

using entries::fieldName;
using entries::HasFields;
using entries::isId;
using entries::isOptional;
using entries::isVector;
using entries::UnitType;

template <class T>
inline constexpr bool isOptionalList = false;
template <class T>
inline constexpr bool isOptionalList<std::optional<std::vector<T>>> = true;

template <class Texts>
std::string listed(const Texts& texts) {
    std::string list;
    for (const auto& text : texts) list += (list.empty() ? "" : ", ") + std::string{text};
    return list;
}

/// Values of one type from their texts; the errors name the field.
class ValueReader {
  public:
    explicit ValueReader(const Context& context) : m_context(context) {}

    template <class T>
    [[nodiscard]] Result<T> read(const std::string& text, const std::string& name) const {
        if constexpr (UnitType<T>) {
            return quantityFromText<T>(text, name);
        } else if constexpr (std::is_same_v<T, Seconds>) {
            return siFromText(Dimension::duration, text, name).map([](double si) { return Seconds{si}; });
        } else if constexpr (NamedEnum<T>) {
            return found(enumFromText<T>(text), fail(code::wordUnknown, name, text, listed(enumTexts(T{}))));
        } else if constexpr (isId<T>) {
            return idNamed<T>(text, name);
        } else if constexpr (std::is_same_v<T, Hash>) {
            Hash hash{};
            if (!fromHex(text, hash)) return fail(code::payloadFieldWrong, name);
            return hash;
        } else if constexpr (std::is_same_v<T, Instant>) {
            return instant(text, name);
        } else if constexpr (std::is_same_v<T, LocalDay>) {
            return found(dayFromIso8601(text), fail(code::wallTimeUnreadable, name, text));
        } else if constexpr (std::is_same_v<T, bool>) {
            if (text == "yes" || text == "no") return text == "yes";
            return fail(code::wordUnknown, name, text, std::string{"yes, no"});
        } else if constexpr (std::is_same_v<T, std::string>) {
            return text;
        } else if constexpr (std::is_integral_v<T>) {
            const auto number = integerFromText(text);
            if (!number || !std::in_range<T>(*number)) return fail(code::textNotNumber, name, text);
            return static_cast<T>(*number);
        } else {
            static_assert(std::is_floating_point_v<T>);
            return found(numberFromText(text), fail(code::textNotNumber, name, text));
        }
    }

  private:
    template <class T>
    static Result<T> found(const std::optional<T>& value, const Unexpected& otherwise) {
        if (!value) return otherwise;
        return *value;
    }

    [[nodiscard]] Result<Instant> instant(const std::string& text, const std::string& name) const {
        auto moment = momentFromText(text, DateOrder::dayFirst, m_context.zone);
        if (!moment) {
            moment.error().field = name;
            return Unexpected{moment.error()};
        }
        return moment->at;
    }

    template <class T>
    [[nodiscard]] Result<T> idNamed(const std::string& text, const std::string& name) const {
        if (const auto uuid = Uuid::fromText(text)) return T{*uuid};
        const auto in = [&](const auto& names) { return names.find(text, name); };
        if constexpr (std::is_same_v<T, farm::SiloId>) return in(m_context.silos);
        if constexpr (std::is_same_v<T, farm::TractorId>) return in(m_context.tractors);
        if constexpr (std::is_same_v<T, farm::TruckId>) return in(m_context.trucks);
        if constexpr (std::is_same_v<T, farm::FieldId>) return in(m_context.fields);
        if constexpr (std::is_same_v<T, entries::PersonId>) return in(m_context.people);
        return fail(code::nameUnknown, name, text);
    }

    const Context& m_context;
};

/// The visitor that fills an entry's fields from what was typed.
class TypedReader {
  public:
    using NewId = std::function<Uuid()>;

    /// `newId` for an entry that is made, none for one that is changed.
    TypedReader(std::span<const TypedField> fields, const Context& context, NewId newId)
        : m_context(context), m_values(context), m_newId(std::move(newId)) {
        for (const TypedField& field : fields) {
            m_typed.push_back({field.name, field.text, false});
            std::replace(m_typed.back().name.begin(), m_typed.back().name.end(), '-', '_');
        }
    }

    template <class T>
    void operator()(std::string_view key, T& target) {
        field(m_prefix + std::string{fieldName(key)}, target);
    }

    [[nodiscard]] Result<void> result() const {
        if (m_error) return Unexpected{*m_error};
        for (const Typed& typed : m_typed) {
            if (typed.used) continue;
            const bool known = std::find(m_names.begin(), m_names.end(), typed.name) != m_names.end();
            if (known) return fail(code::typedFieldTwice, typed.name);
            return fail(code::typedFieldUnknown, typed.name, listed(m_names));
        }
        return {};
    }

  private:
    struct Typed {
        std::string name;
        std::string text;
        bool used;
    };

    template <class T>
    void field(const std::string& name, T& target) {
        if constexpr (isVector<T>) {
            items(name, target);
        } else if constexpr (isOptionalList<T>) {
            typename T::value_type list = target.value_or(typename T::value_type{});
            items(name, list);
            if (!list.empty()) target = std::move(list);
        } else if constexpr (HasFields<T>) {
            T::fields(*this, target);
        } else {
            value(name, target);
        }
    }

    template <class T>
    void items(const std::string& name, std::vector<T>& target) {
        const std::string outer = std::exchange(m_prefix, {});
        for (std::size_t i = 0; i < target.size() || isTyped(name, i); ++i) {
            if (i == target.size()) target.emplace_back();
            const std::string item = name + '.' + std::to_string(i + 1);
            m_prefix = item + '.';
            field(item, target[i]);
        }
        if (target.empty()) m_names.push_back(name + ".1");
        m_prefix = outer;
    }

    /// Whether anything was typed for this item of a list.
    [[nodiscard]] bool isTyped(const std::string& list, std::size_t index) const {
        const std::string item = list + '.' + std::to_string(index + 1);
        return std::any_of(m_typed.begin(), m_typed.end(), [&](const Typed& typed) {
            return typed.name == item || typed.name.starts_with(item + '.');
        });
    }

    template <class T>
    void value(const std::string& name, T& target) {
        m_names.push_back(name);
        const auto typed = std::find_if(m_typed.begin(), m_typed.end(),
                                        [&](const Typed& each) { return each.name == name; });
        if (typed == m_typed.end()) {
            if (m_newId) complete(name, target);
            return;
        }
        typed->used = true;
        if constexpr (isOptional<T>) {
            target.reset();
            if (!typed->text.empty()) take(m_values.read<typename T::value_type>(typed->text, name), target);
        } else {
            take(m_values.read<T>(typed->text, name), target);
        }
    }

    template <class T, class Target>
    void take(const Result<T>& read, Target& target) {
        if (read) {
            target = *read;
        } else if (!m_error) {
            m_error = read.error();
        }
    }

    /// What was not typed for a new entry: its usual value where it has one.
    template <class T>
    void complete(const std::string& name, T& target) {
        constexpr bool kMustBeGiven = UnitType<T> || isId<T> || std::is_same_v<T, Instant> ||
                                      std::is_same_v<T, LocalDay> || std::is_same_v<T, Hash>;
        if constexpr (kMustBeGiven) {
            if (target != T{}) return;
            if constexpr (isId<T>) {
                if (name == "id") {
                    target.value = m_newId();
                    return;
                }
            }
            if constexpr (std::is_same_v<T, farm::SiloId>) {
                if (m_context.silo) {
                    target = *m_context.silo;
                    return;
                }
            }
            if (!m_error) m_error = Error{{code::valueMissing, {}}, name, {}};
        }
    }

    const Context& m_context;
    ValueReader m_values;
    NewId m_newId;
    std::vector<Typed> m_typed;
    std::vector<std::string> m_names;
    std::string m_prefix;
    std::optional<Error> m_error;
};

Result<entries::Body> filled(entries::Body body, TypedReader reader) {
    const auto read = std::visit(
        [&](auto& kind) -> Result<void> {
            if constexpr (!std::is_same_v<std::decay_t<decltype(kind)>, std::monostate>) {
                std::decay_t<decltype(kind)>::fields(reader, kind);
            }
            return reader.result();
        },
        body);
    if (!read) return Unexpected{read.error()};
    return body;
}

}  // namespace

Result<entries::Body> typedEntry(entries::Body start, std::span<const TypedField> fields,
                                 const Context& context, UuidSource& ids, Instant now) {
    return filled(std::move(start), {fields, context, [&] { return ids.next(now); }});
}

Result<entries::Body> typedChange(entries::Body body, std::span<const TypedField> fields,
                                  const Context& context) {
    return filled(std::move(body), {fields, context, {}});
}

}  // namespace treadwell::intake
