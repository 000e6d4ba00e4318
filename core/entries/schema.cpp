#include "core/entries/schema.h"

#include "core/entries/body.h"
#include "core/entries/member_schemas.h"
#include "core/entries/season_document.h"

namespace treadwell::entries {

namespace {

std::string payloadSchema(const Body& body) {
    return std::visit(
        [](const auto& kind) -> std::string {
            MemberSchemas members;
            using Kind = std::decay_t<decltype(kind)>;
            if constexpr (!std::is_same_v<Kind, std::monostate>) Kind::fields(members, kind);
            return members.object();
        },
        body);
}

std::string pattern(std::string_view expression) {
    return JsonWriter{}
        .beginObject()
        .member("type", "string")
        .member("pattern", expression)
        .endObject()
        .take();
}

void writeDefinitions(JsonWriter& json) {
    json.key("$defs").beginObject();
    json.key("id").json(pattern("^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$"));
    json.key("hash").json(pattern("^[0-9a-f]{64}$"));
    json.key("day").json(pattern("^[0-9]{4}-[0-9]{2}-[0-9]{2}$"));
    json.key("instant").json(pattern("^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9:]{8}(\\.[0-9]{1,6})?Z$"));
    for (const std::string_view name : kindNames()) {
        json.key(name).json(payloadSchema(*emptyBody(name)));
    }
    json.endObject();
}

void writeReference(JsonWriter& json, std::string_view key, std::string_view name) {
    json.key(key).beginObject().member("$ref", "#/$defs/" + std::string{name}).endObject();
}

/// Where the kind is this one, in a version that is known, the payload has its shape.
void writeCondition(JsonWriter& json, const KindVersion& known) {
    json.beginObject().key("if").beginObject().key("properties").beginObject();
    json.key("kind").beginObject().member("const", known.kind).endObject();
    json.key("kind_version").beginObject().member("maximum", known.version).endObject();
    json.endObject().endObject();
    json.key("then").beginObject().key("properties").beginObject();
    writeReference(json, "payload", known.kind);
    json.endObject().endObject().endObject();
}

void writeEntry(JsonWriter& json) {
    const auto positive = [&json](std::string_view key) {
        json.key(key).beginObject().member("type", "integer").member("minimum", 1).endObject();
    };
    json.beginObject().member("type", "object").key("properties").beginObject();
    for (const char* id : {"id", "device", "author", "target"}) writeReference(json, id, "id");
    for (const char* number : {"device_sequence", "lamport", "kind_version"}) positive(number);
    for (const char* at : {"happened", "recorded"}) writeReference(json, at, "instant");
    json.key("kind").beginObject().member("type", "string").member("minLength", 1).endObject();
    json.key("utc_offset_min").beginObject().member("type", "integer").endObject();
    json.key("payload").beginObject().member("type", "object").endObject();
    writeReference(json, "hash", "hash");
    json.endObject().key("required").beginArray();
    for (const char* key : {"id", "device", "device_sequence", "lamport", "author", "kind", "kind_version",
                            "happened", "recorded", "utc_offset_min", "payload", "hash"}) {
        json.value(key);
    }
    json.endArray().member("additionalProperties", false).key("allOf").beginArray();
    for (const std::string_view name : kindNames()) writeCondition(json, kindOf(*emptyBody(name)));
    json.endArray().endObject();
}

}  // namespace

std::string documentSchema() {
    JsonWriter json{1};
    json.beginObject().member("$schema", "https://json-schema.org/draft/2020-12/schema");
    json.member("title", "A season of Treadwell");
    json.member(
        "description",
        "Entries in the order of arrival. Numbers are SI, with the unit in the key; a key that ends in "
        "_us counts microseconds since 1970 in UTC. Each device's entries are one chain of hashes.");
    json.member("type", "object").key("properties").beginObject();
    json.key("format").beginObject().member("const", kDocumentFormat).endObject();
    json.key("version").beginObject().member("const", kDocumentVersion).endObject();
    json.key("entries").beginObject().member("type", "array").key("items");
    writeEntry(json);
    json.endObject();
    writeReference(json, "head", "hash");
    json.key("people").beginObject().member("type", "array").key("items").beginObject();
    json.member("type", "object").key("properties").beginObject();
    writeReference(json, "id", "id");
    json.key("name").beginObject().member("type", "string").endObject();
    json.endObject().key("required").beginArray().value("id").value("name").endArray();
    json.member("additionalProperties", false).endObject().endObject();
    json.endObject().key("required").beginArray();
    for (const char* key : {"format", "version", "entries", "head"}) json.value(key);
    json.endArray().member("additionalProperties", false);
    writeDefinitions(json);
    return json.endObject().take() + '\n';
}

}  // namespace treadwell::entries
