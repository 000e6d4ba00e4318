#pragma once

#include "core/entries/payload.h"

namespace treadwell::entries {

/// The visitor that lists a record's members as JSON Schemas, sorted by key. Ids, hashes and days refer to
/// `#/$defs/id`, `#/$defs/hash` and `#/$defs/day`, which the document must define.
class MemberSchemas {
  public:
    template <class T>
    void operator()(std::string_view key, const T& value) {
        if constexpr (isOptional<T>) {
            m_members[std::string{key}] = schemaOf<typename T::value_type>();
        } else {
            m_members[std::string{key}] = schemaOf<T>();
            m_required.emplace_back(key);
        }
        static_cast<void>(value);
    }

    /// A member that is this text or number.
    template <class T>
    void constant(const std::string& key, const T& value) {
        m_members[key] = JsonWriter{}.beginObject().member("const", value).endObject().take();
        m_required.push_back(key);
    }

    [[nodiscard]] std::string object() const {
        JsonWriter json;
        json.beginObject();
        write(json);
        return json.endObject().take();
    }

    /// Into the object that is open.
    void write(JsonWriter& json) const {
        json.member("type", "object").key("properties").beginObject();
        for (const auto& [key, schema] : m_members) json.key(key).json(schema);
        json.endObject().key("required").beginArray();
        for (const std::string& key : m_required) json.value(key);
        json.endArray().member("additionalProperties", false);
    }

  private:
    template <class T>
    static std::string schemaOf() {
        JsonWriter json;
        json.beginObject();
        if constexpr (UnitType<T> || std::is_same_v<T, Seconds> || std::is_floating_point_v<T>) {
            json.member("type", "number");
        } else if constexpr (NamedEnum<T>) {
            json.key("enum").beginArray();
            for (const std::string_view text : enumTexts(T{})) json.value(text);
            json.endArray();
        } else if constexpr (isId<T>) {
            json.member("$ref", "#/$defs/id");
        } else if constexpr (std::is_same_v<T, Hash>) {
            json.member("$ref", "#/$defs/hash");
        } else if constexpr (std::is_same_v<T, bool>) {
            json.member("type", "boolean");
        } else if constexpr (std::is_same_v<T, Instant> || std::is_integral_v<T>) {
            json.member("type", "integer");
        } else if constexpr (std::is_same_v<T, LocalDay>) {
            json.member("$ref", "#/$defs/day");
        } else if constexpr (std::is_same_v<T, std::string>) {
            json.member("type", "string");
        } else if constexpr (isVector<T>) {
            json.member("type", "array").key("items").json(schemaOf<typename T::value_type>());
        } else {
            static_assert(HasFields<T>);
            MemberSchemas nested;
            const T empty{};
            T::fields(nested, empty);
            return nested.object();
        }
        return json.endObject().take();
    }

    std::map<std::string, std::string> m_members;
    std::vector<std::string> m_required;
};

}  // namespace treadwell::entries
