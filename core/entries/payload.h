#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/base/hash.h"
#include "core/base/hex.h"
#include "core/base/instant.h"
#include "core/base/json_writer.h"
#include "core/base/uuid.h"

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
        } else if constexpr (requires(PayloadWriter w) { T::fields(w, value); }) {
            PayloadWriter nested;
            T::fields(nested, value);
            return nested.text();
        } else {
            return JsonWriter{}.value(value).take();
        }
    }

    std::map<std::string, std::string> m_members;
};

/// One JSON object, read. Numbers, texts and truths are kept as they stood; the parser is hidden in
/// payload.cpp.
class PayloadObject {
  public:
    struct Value;
    struct Member;

    [[nodiscard]] static Result<PayloadObject> parse(std::string_view json);
    [[nodiscard]] const Value* find(std::string_view key) const;

    std::vector<Member> members;
};

struct PayloadObject::Value {
    enum class Kind : std::uint8_t { null, number, integer, text, truth, object, array } kind = Kind::null;
    double number = 0;
    std::int64_t integer = 0;
    bool truth = false;
    std::string text;
    std::vector<PayloadObject> objects;  ///< one for an object, the items of an array (each wrapped under "")
};

struct PayloadObject::Member {
    std::string key;
    Value value;
};

/// Fills fields from an object; remembers the first field that is missing or wrong.
class PayloadReader {
  public:
    explicit PayloadReader(const PayloadObject& object) : m_object(object) {}

    template <class T>
    void operator()(std::string_view key, T& target) {
        if (m_error) return;
        const PayloadObject::Value* value = m_object.find(key);
        const bool absent = value == nullptr || value->kind == PayloadObject::Value::Kind::null;
        if constexpr (isOptional<T>) {
            target.reset();
            if (absent) return;
            typename T::value_type content{};
            (*this)(key, content);
            if (!m_error) target = std::move(content);
        } else if (absent) {
            m_error = Error{{Code::payloadFieldMissing, {}}, std::string{key}, {}};
        } else if (!read(*value, target)) {
            if (!m_error) m_error = Error{{Code::payloadFieldWrong, {}}, std::string{key}, {}};
        }
    }

    [[nodiscard]] Result<void> result() const {
        if (m_error) return Unexpected{*m_error};
        return {};
    }

  private:
    using Kind = PayloadObject::Value::Kind;

    template <class T>
    bool read(const PayloadObject::Value& value, T& target) {
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
            return value.kind == Kind::object && readFields(value.objects.front(), target);
        }
    }

    template <class T>
    bool readItems(const PayloadObject::Value& value, std::vector<T>& target) {
        if (value.kind != Kind::array) return false;
        target.clear();
        for (const PayloadObject& item : value.objects) {
            T content{};
            if (!read(item.members.front().value, content)) return false;
            target.push_back(std::move(content));
        }
        return true;
    }

    template <class T>
    bool readFields(const PayloadObject& object, T& target) {
        PayloadReader nested{object};
        T::fields(nested, target);
        if (nested.m_error) m_error = nested.m_error;
        return !nested.m_error;
    }

    const PayloadObject& m_object;
    std::optional<Error> m_error;
};

}  // namespace treadwell::entries
