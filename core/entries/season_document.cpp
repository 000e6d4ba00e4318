#include "core/entries/season_document.h"

#include "core/base/hex.h"
#include "core/base/json_writer.h"
#include "core/entries/codes.h"

#include <simdjson.h>

#include <array>
#include <bitset>
#include <limits>

namespace treadwell::entries {

namespace {

namespace ondemand = simdjson::ondemand;

/// Set where a value is of the wrong sort; what the parser itself complains of comes as an exception.
struct WrongSort {};

std::string textOf(ondemand::value& value) {
    return std::string{std::string_view{value.get_string()}};
}

template <class Read>
auto required(Read read) {
    if (!read) throw WrongSort{};
    return *read;
}

Uuid uuidOf(ondemand::value& value) {
    return required(Uuid::fromText(textOf(value)));
}

Instant instantOf(ondemand::value& value) {
    return required(instantFromIso8601(textOf(value)));
}

Hash hashOf(ondemand::value& value) {
    Hash hash{};
    if (!fromHex(textOf(value), hash)) throw WrongSort{};
    return hash;
}

int smallIntegerOf(ondemand::value& value) {
    const std::int64_t number = value.get_int64();
    if (!std::in_range<int>(number)) throw WrongSort{};
    return static_cast<int>(number);
}

/// The payload's own text without the blanks that another program may have set between its parts.
std::string payloadOf(ondemand::value& value) {
    ondemand::object object = value.get_object();
    const std::string_view raw = object.raw_json();
    std::string plain(raw.size() + simdjson::SIMDJSON_PADDING, '\0');
    std::size_t size = 0;
    if (simdjson::minify(raw.data(), raw.size(), plain.data(), size) != simdjson::SUCCESS) throw WrongSort{};
    plain.resize(size);
    return plain;
}

struct EntryMember {
    std::string_view key;
    void (*read)(ondemand::value&, StoredEntry&);
};

constexpr std::array<EntryMember, 13> kEntryMembers{{
    {"id", [](auto& value, auto& entry) { entry.header.id.value = uuidOf(value); }},
    {"device", [](auto& value, auto& entry) { entry.header.device.value = uuidOf(value); }},
    {"device_sequence", [](auto& value, auto& entry) { entry.header.deviceSequence = value.get_int64(); }},
    {"lamport", [](auto& value, auto& entry) { entry.header.lamport = value.get_int64(); }},
    {"author", [](auto& value, auto& entry) { entry.header.author.value = uuidOf(value); }},
    {"kind", [](auto& value, auto& entry) { entry.header.kind = textOf(value); }},
    {"kind_version", [](auto& value, auto& entry) { entry.header.kindVersion = smallIntegerOf(value); }},
    {"happened", [](auto& value, auto& entry) { entry.header.happened = instantOf(value); }},
    {"recorded", [](auto& value, auto& entry) { entry.header.recorded = instantOf(value); }},
    {"utc_offset_min",
     [](auto& value, auto& entry) { entry.header.utcOffsetMinutes = smallIntegerOf(value); }},
    {"payload", [](auto& value, auto& entry) { entry.payload = payloadOf(value); }},
    {"hash", [](auto& value, auto& entry) { entry.hash = hashOf(value); }},
    {"target", [](auto& value, auto& entry) { entry.header.target.emplace().value = uuidOf(value); }},
}};
constexpr std::size_t kRequiredMembers = kEntryMembers.size() - 1;

/// Reads a document from front to back and remembers in which field it is.
class DocumentReader {
  public:
    using Take = std::function<Result<void>(StoredEntry&&)>;

    explicit DocumentReader(const Take& take) : m_take(take) {}

    Result<DocumentFrame> read(std::string_view json) {
        try {
            const simdjson::padded_string padded(json);
            ondemand::parser parser;
            ondemand::document document = parser.iterate(padded);
            return readDocument(document);
        } catch (const simdjson::simdjson_error& error) {
            return wrong(error.error());
        } catch (const WrongSort&) {
            return fail(code::payloadFieldWrong, m_field);
        }
    }

  private:
    [[nodiscard]] Unexpected wrong(simdjson::error_code code) const {
        const bool sort = code == simdjson::INCORRECT_TYPE || code == simdjson::NUMBER_OUT_OF_RANGE ||
                          code == simdjson::NUMBER_ERROR;
        if (sort && !m_field.empty()) return fail(code::payloadFieldWrong, m_field);
        return fail(code::documentUnreadable, m_field, std::string{simdjson::error_message(code)});
    }

    Result<DocumentFrame> readDocument(ondemand::document& document) {
        bool hasHead = false;
        bool hasEntries = false;
        for (auto field : document.get_object()) {
            m_field = std::string{std::string_view{field.unescaped_key()}};
            ondemand::value value = field.value();
            if (auto known = hold(m_field, value); !known) return Unexpected{known.error()};
            hasHead |= m_field == "head";
            if (m_field != "entries") continue;
            if (hasEntries) return fail(code::payloadFieldWrong, m_field);
            hasEntries = true;
            if (auto taken = readEntries(value); !taken) return Unexpected{taken.error()};
        }
        m_field.clear();
        // Only at its end has a document no further location.
        if (const char* rest = nullptr; document.current_location().get(rest) == simdjson::SUCCESS) {
            return fail(code::documentUnreadable, "", std::string{"something follows its end"});
        }
        if (!m_isVersion) return fail(code::documentForeign, "format");
        if (!hasHead) return fail(code::payloadFieldMissing, "head");
        if (!hasEntries) return fail(code::payloadFieldMissing, "entries");
        return std::move(m_frame);
    }

    /// One member of the document itself.
    Result<void> hold(const std::string& key, ondemand::value& value) {
        if (key == "format") {
            if (textOf(value) != kDocumentFormat) return fail(code::documentForeign, key);
            m_isFormat = true;
            return {};
        }
        if (!m_isFormat) return fail(code::documentForeign, key);
        if (key == "version") {
            const std::int64_t version = value.get_int64();
            if (version > kDocumentVersion) return fail(code::documentNewer, key, version, kDocumentVersion);
            if (version != kDocumentVersion) throw WrongSort{};
            m_isVersion = true;
            return {};
        }
        if (!m_isVersion) return fail(code::payloadFieldMissing, "version");
        if (key == "head") {
            m_frame.head = hashOf(value);
        } else if (key == "people") {
            return readPeople(value);
        } else if (key != "entries") {
            return fail(code::fieldUnknown, key);
        }
        return {};
    }

    Result<void> readPeople(ondemand::value& value) {
        for (auto item : value.get_array()) {
            std::optional<PersonId> id;
            std::optional<std::string> name;
            for (auto field : item.get_object()) {
                const std::string key{std::string_view{field.unescaped_key()}};
                ondemand::value member = field.value();
                if (key == "id") {
                    id = PersonId{uuidOf(member)};
                } else if (key == "name") {
                    name = textOf(member);
                } else {
                    return fail(code::fieldUnknown, "people." + key);
                }
            }
            if (!id || !name || !m_frame.people.emplace(*id, *name).second) throw WrongSort{};
        }
        return {};
    }

    Result<void> readEntries(ondemand::value& value) {
        std::size_t index = 0;
        for (auto item : value.get_array()) {
            const std::string place = "entries[" + std::to_string(index++) + "]";
            m_field = place;
            StoredEntry entry;
            std::bitset<kEntryMembers.size()> seen;
            for (auto field : item.get_object()) {
                const std::string_view key = field.unescaped_key();
                m_field = place + '.' + std::string{key};
                const auto member = std::find_if(kEntryMembers.begin(), kEntryMembers.end(),
                                                 [&](const EntryMember& each) { return each.key == key; });
                if (member == kEntryMembers.end()) return fail(code::fieldUnknown, m_field);
                const auto number = static_cast<std::size_t>(member - kEntryMembers.begin());
                if (seen[number]) throw WrongSort{};
                seen.set(number);
                ondemand::value content = field.value();
                member->read(content, entry);
            }
            for (std::size_t i = 0; i < kRequiredMembers; ++i) {
                if (seen[i]) continue;
                return fail(code::payloadFieldMissing, place + '.' + std::string{kEntryMembers[i].key});
            }
            if (auto taken = m_take(std::move(entry)); !taken) return taken;
        }
        return {};
    }

    const Take& m_take;
    DocumentFrame m_frame;
    std::string m_field;
    bool m_isFormat = false;
    bool m_isVersion = false;
};

}  // namespace

DocumentWriter::DocumentWriter() {
    JsonWriter json;
    json.beginObject().member("format", kDocumentFormat).member("version", kDocumentVersion);
    json.key("entries").beginArray();
    m_text = json.take();
}

void DocumentWriter::add(const StoredEntry& entry) {
    const Header& header = entry.header;
    JsonWriter json;
    json.beginObject().member("id", header.id.value.text()).member("device", header.device.value.text());
    json.member("device_sequence", header.deviceSequence).member("lamport", header.lamport);
    json.member("author", header.author.value.text());
    json.member("kind", header.kind).member("kind_version", header.kindVersion);
    json.member("happened", toIso8601(header.happened)).member("recorded", toIso8601(header.recorded));
    json.member("utc_offset_min", header.utcOffsetMinutes);
    if (header.target) json.member("target", header.target->value.text());
    json.member("hash", toHex(entry.hash)).key("payload").json(entry.payload).endObject();
    m_text += m_begun ? ",\n" : "\n";
    m_text += json.text();
    m_begun = true;
}

std::string DocumentWriter::finish(const DocumentFrame& frame) {
    JsonWriter json;
    json.beginObject().member("head", toHex(frame.head));
    if (!frame.people.empty()) {
        json.key("people").beginArray();
        for (const auto& [id, name] : frame.people) {
            json.beginObject().member("id", id.value.text()).member("name", name).endObject();
        }
        json.endArray();
    }
    json.endObject();
    // What the object says goes on in the one that the constructor has begun.
    m_text += "\n]," + json.text().substr(1) + '\n';
    return std::move(m_text);
}

Result<DocumentFrame> readDocument(std::string_view json,
                                   const std::function<Result<void>(StoredEntry&&)>& take) {
    return DocumentReader{take}.read(json);
}

}  // namespace treadwell::entries
