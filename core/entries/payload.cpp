#include "core/entries/payload.h"

#include <simdjson.h>

namespace treadwell::entries {

namespace {

namespace dom = simdjson::dom;
using Value = PayloadObject::Value;

PayloadObject objectOf(const dom::object& object);

Value valueOf(const dom::element& element) {
    Value value;
    switch (element.type()) {
        case dom::element_type::NULL_VALUE:
            break;
        case dom::element_type::BOOL:
            value.kind = Value::Kind::truth;
            value.truth = element.get_bool().value_unsafe();
            break;
        case dom::element_type::STRING:
            value.kind = Value::Kind::text;
            value.text = std::string{element.get_string().value_unsafe()};
            break;
        case dom::element_type::INT64:
            value.kind = Value::Kind::integer;
            value.integer = element.get_int64().value_unsafe();
            value.number = static_cast<double>(value.integer);
            break;
        case dom::element_type::UINT64:  // beyond int64: no field of ours holds it as an integer
            value.kind = Value::Kind::number;
            value.number = static_cast<double>(element.get_uint64().value_unsafe());
            break;
        case dom::element_type::DOUBLE:
            value.kind = Value::Kind::number;
            value.number = element.get_double().value_unsafe();
            break;
        case dom::element_type::OBJECT:
            value.kind = Value::Kind::object;
            value.objects.push_back(objectOf(element.get_object().value_unsafe()));
            break;
        case dom::element_type::ARRAY: {
            value.kind = Value::Kind::array;
            const dom::array items = element.get_array().value_unsafe();
            for (const dom::element item : items) {
                PayloadObject wrapped;
                wrapped.members.push_back({"", valueOf(item)});
                value.objects.push_back(std::move(wrapped));
            }
            break;
        }
    }
    return value;
}

PayloadObject objectOf(const dom::object& object) {
    PayloadObject result;
    for (const auto& [key, element] : object) result.members.push_back({std::string{key}, valueOf(element)});
    return result;
}

}  // namespace

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

Result<PayloadObject> PayloadObject::parse(std::string_view json) {
    thread_local dom::parser parser;
    const simdjson::padded_string padded(json);
    dom::object object;
    if (const auto code = parser.parse(padded).get(object); code != simdjson::SUCCESS) {
        return fail(Code::payloadUnreadable, "payload", std::string{simdjson::error_message(code)});
    }
    return objectOf(object);
}

const PayloadObject::Value* PayloadObject::find(std::string_view key) const {
    for (const auto& [name, value] : members) {
        if (name == key) return &value;
    }
    return nullptr;
}

}  // namespace treadwell::entries
