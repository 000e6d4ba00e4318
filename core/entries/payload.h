#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/base/hash.h"
#include "core/base/hex.h"
#include "core/base/instant.h"
#include "core/base/json_writer.h"
#include "core/base/uuid.h"
#include "core/entries/codes.h"

#include <concepts>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

namespace treadwell::entries {

// A kind of entry lists its fields once, in `fields(visit, self)`; writing and reading are two visitors.
// Every number is SI with the unit in the key.

template <class T>
concept UnitType = requires(T value) {
    T::kDimension;
    { value.si() } -> std::convertible_to<double>;
};

template <class T>
inline constexpr bool isOptional = false;
template <class T>
inline constexpr bool isOptional<std::optional<T>> = true;
template <class T>
inline constexpr bool isVector = false;
template <class T>
inline constexpr bool isVector<std::vector<T>> = true;
template <class T>
inline constexpr bool isId = false;
template <class Tag>
inline constexpr bool isId<Id<Tag>> = true;

/// A record that lists its fields for a visitor.
class PayloadWriter;
template <class T>
concept HasFields = requires(PayloadWriter& writer, const T& value) {
    T::fields(writer, value);
};

/// Collects the fields and writes them as JSON with sorted keys.
class PayloadWriter {
  public:
    template <class T>
    void operator()(std::string_view key, const T& value) {
        if constexpr (isOptional<T>) {
            if (value) (*this)(key, *value);
        } else {
            m_members[std::string{key}] = json(value);
        }
    }

    [[nodiscard]] std::string text() const;

  private:
    template <class T>
    static std::string json(const T& value) {
        if constexpr (UnitType<T>) {
            return JsonWriter{}.value(value.si()).take();
        } else if constexpr (NamedEnum<T>) {
            return JsonWriter{}.value(enumText(value)).take();
        } else if constexpr (isId<T>) {
            return JsonWriter{}.value(value.value.text()).take();
        } else if constexpr (std::is_same_v<T, Hash>) {
            return JsonWriter{}.value(toHex(value)).take();
        } else if constexpr (std::is_same_v<T, Instant>) {
            return JsonWriter{}.value(toMicroseconds(value)).take();
        } else if constexpr (std::is_same_v<T, LocalDay>) {
            return JsonWriter{}.value(toIso8601(value)).take();
        } else if constexpr (std::is_same_v<T, Seconds>) {
            return JsonWriter{}.value(value.count()).take();
        } else if constexpr (isVector<T>) {
            std::string text = "[";
            for (const auto& item : value) text += (text.size() > 1 ? "," : "") + json(item);
            return text + "]";
        } else if constexpr (HasFields<T>) {
            PayloadWriter nested;
            T::fields(nested, value);
            return nested.text();
        } else {
            return JsonWriter{}.value(value).take();
        }
    }

    std::map<std::string, std::string> m_members;
};

/// One value of a PayloadDocument. The values within an object or an array follow their owner in memory, each
/// with all that it holds.
struct PayloadValue {
    enum class Kind : std::uint8_t { null, number, integer, text, truth, object, array } kind = Kind::null;
    bool truth = false;
    std::uint32_t extent = 1;  ///< itself and all within it
    std::string_view key;      ///< of a member of an object
    std::string_view text;
    std::int64_t integer = 0;
    double number = 0;

    class Iterator {
      public:
        explicit Iterator(const PayloadValue* at) : m_at(at) {}
        const PayloadValue& operator*() const { return *m_at; }
        Iterator& operator++() {
            m_at += m_at->extent;
            return *this;
        }
        friend bool operator==(Iterator, Iterator) = default;

      private:
        const PayloadValue* m_at;
    };
    /// The members of an object, the items of an array.
    [[nodiscard]] Iterator begin() const { return Iterator{this + 1}; }
    [[nodiscard]] Iterator end() const { return Iterator{this + extent}; }

    /// The first member of this name; null where there is none.
    [[nodiscard]] const PayloadValue* find(std::string_view wanted) const;
};

/// Reads JSON objects one after another into memory that it keeps. Not thread-safe.
class PayloadDocument {
  public:
    PayloadDocument();
    PayloadDocument(PayloadDocument&&) noexcept;
    PayloadDocument& operator=(PayloadDocument&&) noexcept;
    ~PayloadDocument();

    /// The object that `json` is; it lasts until the next is read. Error: payloadUnreadable.
    [[nodiscard]] Result<const PayloadValue*> read(std::string_view json);

  private:
    struct State;
    std::unique_ptr<State> m_state;  // hides the parser
};

/// Fills fields from an object; remembers the first field that is missing or wrong.
class PayloadReader {
  public:
    explicit PayloadReader(const PayloadValue& object) : m_object(object), m_next(object.begin()) {}

    template <class T>
    void operator()(std::string_view key, T& target) {
        if (m_error) return;
        const PayloadValue* value = find(key);
        const bool absent = value == nullptr || value->kind == Kind::null;
        if constexpr (isOptional<T>) {
            target.reset();
            if (absent) return;
            typename T::value_type content{};
            (*this)(key, content);
            if (!m_error) target = std::move(content);
        } else if (absent) {
            m_error = Error{{code::payloadFieldMissing, {}}, std::string{key}, {}};
        } else if (!read(*value, target)) {
            if (!m_error) m_error = Error{{code::payloadFieldWrong, {}}, std::string{key}, {}};
        }
    }

    [[nodiscard]] Result<void> result() const {
        if (m_error) return Unexpected{*m_error};
        return {};
    }

  private:
    using Kind = PayloadValue::Kind;

    /// Most often the one after the last: fields are listed as their keys are sorted.
    const PayloadValue* find(std::string_view key) {
        const bool follows = m_next != m_object.end() && (*m_next).key == key;
        const PayloadValue* found = follows ? &*m_next : m_object.find(key);
        if (found != nullptr) m_next = ++PayloadValue::Iterator{found};
        return found;
    }

    template <class T>
    bool read(const PayloadValue& value, T& target) {
        const bool isNumber = value.kind == Kind::number || value.kind == Kind::integer;
        const bool isText = value.kind == Kind::text;
        if constexpr (UnitType<T>) {
            target = T::fromSi(value.number);
            return isNumber;
        } else if constexpr (NamedEnum<T>) {
            const auto named = isText ? enumFromText<T>(value.text) : std::nullopt;
            if (named) target = *named;
            return named.has_value();
        } else if constexpr (isId<T>) {
            const auto uuid = isText ? Uuid::fromText(value.text) : std::nullopt;
            if (uuid) target.value = *uuid;
            return uuid.has_value();
        } else if constexpr (std::is_same_v<T, Hash>) {
            return isText && fromHex(value.text, target);
        } else if constexpr (std::is_same_v<T, Instant>) {
            target = instantFromMicroseconds(value.integer);
            return value.kind == Kind::integer;
        } else if constexpr (std::is_same_v<T, LocalDay>) {
            const auto day = isText ? dayFromIso8601(value.text) : std::nullopt;
            if (day) target = *day;
            return day.has_value();
        } else if constexpr (std::is_same_v<T, Seconds>) {
            target = Seconds{value.number};
            return isNumber;
        } else if constexpr (std::is_same_v<T, bool>) {
            target = value.truth;
            return value.kind == Kind::truth;
        } else if constexpr (std::is_same_v<T, std::string>) {
            target = value.text;
            return isText;
        } else if constexpr (std::is_integral_v<T>) {
            target = static_cast<T>(value.integer);
            return value.kind == Kind::integer && std::in_range<T>(value.integer);
        } else if constexpr (std::is_floating_point_v<T>) {
            target = value.number;
            return isNumber;
        } else if constexpr (isVector<T>) {
            return readItems(value, target);
        } else {
            return value.kind == Kind::object && readFields(value, target);
        }
    }

    template <class T>
    bool readItems(const PayloadValue& value, std::vector<T>& target) {
        if (value.kind != Kind::array) return false;
        target.clear();
        for (const PayloadValue& item : value) {
            T content{};
            if (!read(item, content)) return false;
            target.push_back(std::move(content));
        }
        return true;
    }

    template <class T>
    bool readFields(const PayloadValue& object, T& target) {
        PayloadReader nested{object};
        T::fields(nested, target);
        if (nested.m_error) m_error = nested.m_error;
        return !nested.m_error;
    }

    const PayloadValue& m_object;
    PayloadValue::Iterator m_next;
    std::optional<Error> m_error;
};

}  // namespace treadwell::entries
