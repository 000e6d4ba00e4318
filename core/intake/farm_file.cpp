#include "core/intake/farm_file.h"

#include "core/base/codes.h"
#include "core/entries/codes.h"
#include "core/entries/known_fields.h"
#include "core/intake/codes.h"

#include <algorithm>

namespace treadwell::intake {

namespace {

using entries::PayloadReader;
using entries::PayloadValue;
using Kind = PayloadValue::Kind;

Error inField(Error error, const std::string& place) {
    error.field = place + error.field;
    return error;
}

Result<void> onlyKnown(const PayloadValue& object, std::span<const std::string_view> known) {
    for (const PayloadValue& member : object) {
        if (std::find(known.begin(), known.end(), member.key) == known.end()) {
            return fail(code::fieldUnknown, std::string{member.key});
        }
    }
    return {};
}

template <class Thing>
Result<Thing> thingFrom(const PayloadValue& value, const std::string& place) {
    if (value.kind != Kind::object)
        return Unexpected{Error{{code::payloadFieldWrong, {}}, place.substr(0, place.size() - 1), {}}};
    Thing thing;
    entries::KnownFields fields{value};
    Thing::fields(fields, thing);
    if (auto known = fields.result(); !known) return Unexpected{inField(std::move(known.error()), place)};
    PayloadReader reader{value};
    Thing::fields(reader, thing);
    if (auto read = reader.result(); !read) return Unexpected{inField(std::move(read.error()), place)};
    if (auto valid = farm::validate(thing); !valid)
        return Unexpected{inField(std::move(valid.error()), place)};
    return thing;
}

class FarmReader {
  public:
    FarmReader(const PayloadValue& file, const Context& context) : m_file(file), m_context(context) {}

    Result<Intake> read() {
        return header()
            .and_then([&] { return list<farm::Silo, entries::SiloDefined>("silos"); })
            .and_then([&] { return list<farm::Tractor, entries::TractorDefined>("tractors"); })
            .and_then([&] { return list<farm::Truck, entries::TruckDefined>("trucks"); })
            .and_then([&] { return list<farm::Field, entries::FieldDefined>("fields"); })
            .and_then([&] { return rules(); })
            .map([&] { return std::move(m_intake); });
    }

  private:
    Result<void> header() {
        constexpr std::array<std::string_view, 10> kKnown{"format", "version",  "begins", "farm",   "zone",
                                                          "silos",  "tractors", "trucks", "fields", "rules"};
        if (auto known = onlyKnown(m_file, kKnown); !known) return known;
        std::string format;
        std::string begins;
        int version = 0;
        entries::SeasonStarted started;
        PayloadReader reader{m_file};
        reader("format", format);
        reader("version", version);
        reader("begins", begins);
        reader("farm", started.farm);
        reader("zone", started.zone);
        if (auto read = reader.result(); !read) return read;
        if (format != "treadwell farm") return fail(code::payloadFieldWrong, "format");
        if (version != 1) return fail(code::farmFileVersion, "version", std::int64_t{version});
        const auto instant = instantFromIso8601(begins);
        if (!instant) return fail(code::timeUnreadable, "begins", begins);
        m_begins = *instant;
        if (auto valid = entries::validate(started); !valid) return valid;
        propose(std::move(started));
        return {};
    }

    template <class Thing, class Defined>
    Result<void> list(const std::string& key) {
        const PayloadValue* value = m_file.find(key);
        if (value == nullptr) return {};
        if (value->kind != Kind::array) return fail(code::payloadFieldWrong, key);
        std::size_t index = 0;
        for (const PayloadValue& item : *value) {
            const std::string place = key + '[' + std::to_string(index++) + "].";
            auto thing = thingFrom<Thing>(item, place);
            if (!thing) return Unexpected{thing.error()};
            propose(Defined{*std::move(thing)});
        }
        return {};
    }

    Result<void> rules() {
        const PayloadValue* value = m_file.find("rules");
        if (value == nullptr) return {};
        auto rules = thingFrom<farm::SiteRules>(*value, "rules.");
        if (!rules) return Unexpected{rules.error()};
        propose(entries::RulesSet{*rules});
        return {};
    }

    void propose(entries::Body body) {
        ++m_intake.rows;
        if (m_context.known.contains(factHash(body, m_begins))) {
            ++m_intake.alreadyImported;
            return;
        }
        ++m_intake.used;
        m_intake.proposals.push_back({std::move(body), m_begins, {}, 0, {}});
    }

    const PayloadValue& m_file;
    const Context& m_context;
    Instant m_begins;
    Intake m_intake;
};

}  // namespace

Result<Intake> readFarm(std::string_view bytes, const Context& context) {
    entries::PayloadDocument document;
    const auto file = document.read(bytes);
    if (!file) return Unexpected{file.error()};
    return FarmReader{**file, context}.read();
}

}  // namespace treadwell::intake
