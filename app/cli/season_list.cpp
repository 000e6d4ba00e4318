#include "app/cli/names.h"
#include "app/cli/open_season.h"
#include "app/cli/season_entries.h"
#include "app/cli/season_file.h"
#include "app/cli/table.h"
#include "core/entries/payload.h"
#include "core/session/history.h"

#include <algorithm>
#include <ostream>

namespace treadwell::cli {

namespace {

/// Shown of an id, and enough to name it by: the random end of a UUID.
constexpr std::size_t kEnding = 8;
constexpr std::size_t kShortestEnding = 4;

/// A season that is looked at, with the names in it.
struct ListDesk {
    std::shared_ptr<const season::Season> season;
    PeopleNames people;
    words::NameOf names;
    Answer answer;  ///< on the farm's clock
};

tl::expected<ListDesk, Failure> listDeskOf(const std::string& file, const Answer& answer) {
    auto session = openSeason(file, Purpose::reading, answer);
    if (!session) return tl::unexpected{session.error()};
    auto people = session->people().all();
    if (!people) return failed(people.error(), answer.style);
    const auto season = session->snapshot();
    ListDesk desk{season, *std::move(people), {}, answer};
    desk.names = namesOf(desk.season->farm(), desk.people);
    desk.answer.style.zone = desk.season->zone();
    return desk;
}

/// The visitor that looks whether an entry speaks of a silo.
struct SiloSeeker {
    farm::SiloId wanted;
    bool found = false;

    template <class T>
    void operator()(std::string_view /*key*/, const T& value) {
        if constexpr (std::is_same_v<T, farm::SiloId>) {
            found |= value == wanted;
        } else if constexpr (std::is_same_v<T, std::optional<farm::SiloId>>) {
            found |= value == wanted;
        } else if constexpr (requires(SiloSeeker & seeker) { T::fields(seeker, value); }) {
            T::fields(*this, value);
        }
    }
};

bool speaksOf(const entries::Body& body, farm::SiloId silo) {
    SiloSeeker seeker{silo};
    std::visit(
        [&](const auto& kind) {
            using Kind = std::decay_t<decltype(kind)>;
            if constexpr (!std::is_same_v<Kind, std::monostate>) Kind::fields(seeker, kind);
        },
        body);
    return seeker.found;
}

std::string_view standingOf(const season::Fact& fact) {
    if (fact.isVoid()) return "voided";
    return fact.isCorrected() ? "corrected" : "stands";
}

void writeFact(JsonWriter& json, const season::Fact& fact, const ListDesk& desk) {
    const entries::Header& header = fact.stated().header;
    json.beginObject().member("entry", header.id.value.text()).member("kind", header.kind);
    json.member("happened", toIso8601(fact.happened())).member("recorded", toIso8601(header.recorded));
    json.member("author", header.author.value.text()).member("standing", standingOf(fact));
    if (fact.body().index() != 0) json.key("fields").json(entries::encode(fact.body()));
    json.member("text", inWords(fact.body(), desk.names, desk.answer.style)).endObject();
}

void print(const std::vector<season::FactPointer>& facts, const ListDesk& desk) {
    if (desk.answer.json) {
        JsonWriter json{2};
        json.beginObject().key("entries").beginArray();
        for (const season::FactPointer& fact : facts) writeFact(json, *fact, desk);
        json.endArray().endObject();
        desk.answer.out << json.text() << '\n';
        return;
    }
    Table table;
    table.columns = {
        {"entry", "Entry"}, {"at", "Time"}, {"kind", "Kind"}, {"standing", "Standing"}, {"says", "Says"}};
    for (const season::FactPointer& fact : facts) {
        const std::string id = fact->id().value.text();
        table.rows.push_back({id.substr(id.size() - kEnding), fact->happened(),
                              words::kindInWords(fact->stated().header.kind, desk.answer.style),
                              std::string{standingOf(*fact)},
                              inWords(fact->body(), desk.names, desk.answer.style)});
    }
    printTable(desk.answer.out, table, desk.answer.style);
}

/// What a line of a history did to the fact.
std::string_view roleOf(const entries::Entry& entry) {
    if (!entry.header.target) return "stated";
    return std::holds_alternative<entries::VoidEntry>(entry.body) ? "voided" : "corrected";
}

void printHistory(const std::vector<season::EntryPointer>& lines, const ListDesk& desk) {
    const auto authorOf = [&](const entries::Entry& entry) {
        const auto known = desk.people.find(entry.header.author);
        return known == desk.people.end() ? std::string{} : known->second;
    };
    if (desk.answer.json) {
        JsonWriter json{2};
        json.beginObject().key("history").beginArray();
        for (const season::EntryPointer& entry : lines) {
            const entries::Header& header = entry->header;
            json.beginObject().member("entry", header.id.value.text()).member("role", roleOf(*entry));
            json.member("recorded", toIso8601(header.recorded))
                .member("happened", toIso8601(header.happened));
            json.member("author", header.author.value.text()).member("device", header.device.value.text());
            json.member("text", inWords(entry->body, desk.names, desk.answer.style)).endObject();
        }
        json.endArray().endObject();
        desk.answer.out << json.text() << '\n';
        return;
    }
    Table table;
    table.columns = {{"entry", "Entry"}, {"recorded", "Recorded"}, {"role", "Was"},
                     {"author", "By"},   {"happened", "Time"},     {"says", "Says"}};
    for (const season::EntryPointer& entry : lines) {
        const std::string id = entry->header.id.value.text();
        const std::string author = authorOf(*entry);
        table.rows.push_back({id.substr(id.size() - kEnding), entry->header.recorded,
                              std::string{roleOf(*entry)}, author.empty() ? Cell{} : Cell{Name{author}},
                              entry->header.happened, inWords(entry->body, desk.names, desk.answer.style)});
    }
    printTable(desk.answer.out, table, desk.answer.style);
}

}  // namespace

tl::expected<season::EntryPointer, Failure> entryFrom(const season::Season& season,
                                                      const std::string& typed) {
    std::vector<season::EntryPointer> found;
    const auto look = [&](const season::EntryPointer& entry) {
        if (entry->header.id.value.text().ends_with(typed)) found.push_back(entry);
    };
    for (const auto& day : season.days()) {
        for (const season::FactPointer& fact : day->facts) {
            if (fact->id().value.text().ends_with(typed)) {
                found.push_back(std::make_shared<const entries::Entry>(fact->stated()));
            }
            for (const season::EntryPointer& change : fact->changes()) look(change);
        }
    }
    if (typed.size() >= kShortestEnding && found.size() == 1) return found.front();
    const bool many = typed.size() < kShortestEnding || !found.empty();
    return misusedLine("\"" + typed + "\" " +
                       (many ? "may be several entries: give more of the id's end"
                             : "is the id of no entry: `list` shows them"));
}

words::NameOf namesOf(const season::FarmBook& farm, const PeopleNames& people) {
    std::map<Uuid, std::string> names;
    const auto learn = [&](const auto& things) {
        for (const auto& [id, thing] : things) names[id.value] = thing.name;
    };
    learn(farm.silos);
    learn(farm.tractors);
    learn(farm.trucks);
    learn(farm.fields);
    for (const auto& [id, name] : people) names[id.value] = name;
    return [names = std::move(names)](const Uuid& id) {
        const auto known = names.find(id);
        return known == names.end() ? std::string{} : known->second;
    };
}

Outcome list(const EntryOptions& options, const Answer& answer) {
    const auto desk = listDeskOf(options.file, answer);
    if (!desk) return tl::unexpected{desk.error()};
    std::optional<farm::SiloId> silo;
    if (options.silo) {
        const auto named = siloFrom(desk->season->farm(), options.silo);
        if (!named) return tl::unexpected{named.error()};
        silo = named->id;
    }
    const season::Day* only = nullptr;
    if (options.date) {
        const auto day = dayFrom(*desk->season, options.date);
        if (!day) return tl::unexpected{day.error()};
        only = *day;
    }
    std::string kind;
    if (!options.kind.empty()) {
        const auto empty = emptyBodyOf(options.kind, answer.style);
        if (!empty) return tl::unexpected{empty.error()};
        kind = entries::kindOf(*empty).kind;
    }
    std::vector<season::FactPointer> facts;
    for (const auto& day : desk->season->days()) {
        if (only != nullptr && day.get() != only) continue;
        for (const season::FactPointer& fact : day->facts) {
            const bool kindFits = kind.empty() || fact->stated().header.kind == kind;
            if (kindFits && (!silo || speaksOf(fact->body(), *silo))) facts.push_back(fact);
        }
    }
    print(facts, *desk);
    return {};
}

Outcome history(const EntryOptions& options, const Answer& answer) {
    const auto desk = listDeskOf(options.file, answer);
    if (!desk) return tl::unexpected{desk.error()};
    const auto entry = entryFrom(*desk->season, options.entry);
    if (!entry) return tl::unexpected{entry.error()};
    printHistory(session::historyOf(*desk->season, (*entry)->header.id), *desk);
    return {};
}

}  // namespace treadwell::cli
