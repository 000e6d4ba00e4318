#include "core/entries/payload.h"

#include "core/entries/codes.h"

#include <simdjson.h>

#include <cstring>

namespace treadwell::entries {

namespace {

namespace ondemand = simdjson::ondemand;
using simdjson::error_code;
using simdjson::SUCCESS;
using ValueKind = PayloadValue::Kind;

}  // namespace

struct PayloadDocument::State {
    error_code read(std::string_view json);
    error_code members(ondemand::object object);
    error_code items(ondemand::array array);
    error_code value(std::string_view key, simdjson::simdjson_result<ondemand::value> found);
    error_code number(PayloadValue& target, ondemand::value& found);
    void close(std::size_t owner) {
        values[owner].extent = static_cast<std::uint32_t>(values.size() - owner);
    }

    ondemand::parser parser;
    std::vector<char> buffer;  // the JSON and the padding behind it that the parser may look at
    std::vector<PayloadValue> values;
};

error_code PayloadDocument::State::number(PayloadValue& target, ondemand::value& found) {
    ondemand::number number;
    if (const auto code = found.get_number().get(number)) return code;
    target.kind = number.is_int64() ? ValueKind::integer : ValueKind::number;
    if (number.is_int64()) target.integer = number.get_int64();
    // An integer beyond int64 is a number: no field of ours holds it as an integer.
    target.number = number.as_double();
    return SUCCESS;
}

error_code PayloadDocument::State::value(std::string_view key,
                                         simdjson::simdjson_result<ondemand::value> found) {
    ondemand::value element;
    ondemand::json_type type{};
    if (const auto code = found.get(element)) return code;
    if (const auto code = element.type().get(type)) return code;
    const std::size_t place = values.size();
    PayloadValue& target = values.emplace_back();
    target.key = key;
    switch (type) {
        case ondemand::json_type::null: {
            bool isNull = false;
            if (const auto code = element.is_null().get(isNull)) return code;
            return isNull ? SUCCESS : simdjson::N_ATOM_ERROR;
        }
        case ondemand::json_type::boolean:
            target.kind = ValueKind::truth;
            return element.get_bool().get(target.truth);
        case ondemand::json_type::string:
            target.kind = ValueKind::text;
            return element.get_string().get(target.text);
        case ondemand::json_type::number:
            return number(target, element);
        case ondemand::json_type::object: {
            target.kind = ValueKind::object;
            ondemand::object object;
            if (const auto code = element.get_object().get(object)) return code;
            if (const auto code = members(object)) return code;
            break;
        }
        case ondemand::json_type::array: {
            target.kind = ValueKind::array;
            ondemand::array array;
            if (const auto code = element.get_array().get(array)) return code;
            if (const auto code = items(array)) return code;
            break;
        }
    }
    close(place);
    return SUCCESS;
}

error_code PayloadDocument::State::members(ondemand::object object) {
    for (auto member : object) {
        std::string_view key;
        if (const auto code = member.unescaped_key().get(key)) return code;
        if (const auto code = value(key, member.value())) return code;
    }
    return SUCCESS;
}

error_code PayloadDocument::State::items(ondemand::array array) {
    for (auto item : array) {
        if (const auto code = value({}, item)) return code;
    }
    return SUCCESS;
}

error_code PayloadDocument::State::read(std::string_view json) {
    const std::size_t needed = json.size() + simdjson::SIMDJSON_PADDING;
    if (buffer.size() < needed) buffer.resize(needed);
    std::memcpy(buffer.data(), json.data(), json.size());
    values.clear();
    ondemand::document document;
    ondemand::object object;
    if (const auto code = parser.iterate(buffer.data(), json.size(), buffer.size()).get(document))
        return code;
    if (const auto code = document.get_object().get(object)) return code;
    values.emplace_back().kind = ValueKind::object;
    if (const auto code = members(object)) return code;
    close(0);
    const bool ended = document.current_location().error() == simdjson::OUT_OF_BOUNDS;
    return ended ? SUCCESS : simdjson::TRAILING_CONTENT;
}

PayloadDocument::PayloadDocument() : m_state(std::make_unique<State>()) {}
PayloadDocument::PayloadDocument(PayloadDocument&&) noexcept = default;
PayloadDocument& PayloadDocument::operator=(PayloadDocument&&) noexcept = default;
PayloadDocument::~PayloadDocument() = default;

Result<const PayloadValue*> PayloadDocument::read(std::string_view json) {
    if (const auto code = m_state->read(json)) {
        return fail(code::payloadUnreadable, "payload", std::string{simdjson::error_message(code)});
    }
    return m_state->values.data();
}

const PayloadValue* PayloadValue::find(std::string_view wanted) const {
    for (const PayloadValue& value : *this) {
        if (value.key == wanted) return &value;
    }
    return nullptr;
}

std::string PayloadWriter::text() const {
    std::string text = "{";
    for (const auto& [key, json] : m_members) {
        if (text.size() > 1) text += ',';
        appendJsonString(text, key);
        text += ':';
        text += json;
    }
    return text + '}';
}

}  // namespace treadwell::entries
