#include "app/words/document.h"
#include "core/quantity/unit_table.h"

namespace treadwell::words {

namespace {

void write(JsonWriter& json, Amount amount) {
    const Unit& unit = unitOf(amount.dimension, UnitSystem::metric);
    json.beginObject().member("value", unit.fromSi(amount.si)).member("unit", unit.key).endObject();
}

void write(JsonWriter& json, const Message& message, const Style& style) {
    json.beginObject()
        .member("code", toText(message.code))
        .member("text", inWords(message, style))
        .endObject();
}

struct CellWriter {
    JsonWriter& json;
    const Style& style;

    void operator()(std::monostate /*nothing*/) const { json.null(); }
    void operator()(Amount amount) const { write(json, amount); }
    void operator()(std::int64_t count) const { json.value(count); }
    void operator()(double number) const { json.value(number); }
    void operator()(const std::string& text) const { json.value(text); }
    void operator()(Instant at) const { json.value(toIso8601(at)); }
    void operator()(const Message& message) const { write(json, message, style); }
    void operator()(review::Word word) const { json.value(word.name); }
};

struct BlockWriter {
    JsonWriter& json;
    const Style& style;

    void operator()(const Message& message) const { write(json, message, style); }

    void operator()(const review::Table& table) const {
        json.beginObject().member("table", table.key).key("rows").beginArray();
        for (const auto& row : table.rows) {
            json.beginObject();
            for (std::size_t i = 0; i < row.size(); ++i) {
                json.key(table.columns[i].key);
                std::visit(CellWriter{json, style}, row[i]);
            }
            json.endObject();
        }
        json.endArray().endObject();
    }

    void operator()(const review::Series& series) const {
        const Unit& unit = unitOf(series.dimension, UnitSystem::metric);
        json.beginObject().member("series", series.key).member("unit", unit.key).key("points").beginArray();
        for (const auto& [at, si] : series.points) {
            json.beginObject().member("at", toIso8601(at)).member("value", unit.fromSi(si)).endObject();
        }
        json.endArray().endObject();
    }
};

}  // namespace

void writeJson(JsonWriter& json, const review::Document& document, const Style& style) {
    json.beginObject().member("document", document.key).key("title");
    write(json, document.title, style);
    json.key("sections").beginArray();
    for (const review::Section& section : document.sections) {
        json.beginObject()
            .member("section", section.key)
            .member("title", inWords(Message{section.title, {}}, style))
            .key("blocks")
            .beginArray();
        for (const review::Block& block : section.blocks) std::visit(BlockWriter{json, style}, block);
        json.endArray().endObject();
    }
    json.endArray().endObject();
}

}  // namespace treadwell::words
