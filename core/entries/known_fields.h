#pragma once

#include "core/entries/payload.h"

#include <algorithm>

namespace treadwell::entries {

/// Holds an object's members to the fields of a struct, so that none in a file is passed over; in structs and
/// lists of structs within it as well.
class KnownFields {
  public:
    explicit KnownFields(const PayloadValue& object) : m_object(object) {}

    template <class T>
    void operator()(std::string_view key, T& field) {
        m_keys.push_back(key);
        const PayloadValue* value = m_object.find(key);
        if (value == nullptr) return;
        look(*value, field, std::string{key});
    }

    /// Error: fieldUnknown, naming the member's place.
    [[nodiscard]] Result<void> result() const {
        if (m_error) return Unexpected{*m_error};
        for (const PayloadValue& member : m_object) {
            if (std::find(m_keys.begin(), m_keys.end(), member.key) == m_keys.end())
                return fail(code::fieldUnknown, std::string{member.key});
        }
        return {};
    }

  private:
    template <class T>
    void look(const PayloadValue& value, T& field, const std::string& place) {
        if constexpr (HasFields<T>) {
            within(value, field, place);
        } else if constexpr (isOptional<T>) {
            typename T::value_type content{};
            look(value, content, place);
        } else if constexpr (isVector<T>) {
            if constexpr (HasFields<typename T::value_type>) items<typename T::value_type>(value, place);
        }
    }

    template <class T>
    void within(const PayloadValue& value, T& field, const std::string& place) {
        if (m_error || value.kind != PayloadValue::Kind::object) return;
        KnownFields nested{value};
        T::fields(nested, field);
        if (auto known = nested.result(); !known) {
            m_error = std::move(known.error());
            m_error->field = place + '.' + m_error->field;
        }
    }

    template <class T>
    void items(const PayloadValue& value, const std::string& place) {
        if (value.kind != PayloadValue::Kind::array) return;
        std::size_t index = 0;
        for (const PayloadValue& item : value) {
            T content{};
            within(item, content, place + '[' + std::to_string(index++) + ']');
        }
    }

    const PayloadValue& m_object;
    std::vector<std::string_view> m_keys;
    std::optional<Error> m_error;
};

}  // namespace treadwell::entries
