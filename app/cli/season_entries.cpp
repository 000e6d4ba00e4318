#include "app/cli/season_entries.h"

#include "app/cli/open_season.h"
#include "app/cli/season_file.h"
#include "core/density/sample_change.h"
#include "core/intake/from_season.h"
#include "core/intake/typed_entry.h"

#include <algorithm>
#include <ostream>

namespace treadwell::cli {

namespace {

/// A season that is being written, with what typed words mean in it.
struct Desk {
    session::Session session;
    intake::Context context;
    PeopleNames people;
    entries::PersonId author;
    Answer answer;  ///< on the farm's clock
};

/// A field that was typed wrongly: `mass: ...`.
tl::unexpected<Failure> misusedField(const Error& error, const words::Style& style) {
    return misusedLine(words::inWords(error, style));
}

tl::expected<Desk, Failure> deskOf(const EntryOptions& options, const Answer& answer) {
    auto session = openSeason(options.file, Purpose::writing, answer);
    if (!session) return tl::unexpected{session.error()};
    auto people = session->people().all();
    if (!people) return failed(people.error(), answer.style);
    const auto season = session->snapshot();
    intake::Context context = intake::contextOf(*season);
    for (const auto& [id, name] : *people) context.people.add(name, id);
    Answer local = answer;
    local.style.zone = season->zone();
    const auto author = authorFrom(context, options.file, options.author);
    if (!author) return tl::unexpected{author.error()};
    return Desk{*std::move(session), std::move(context), *std::move(people), *author, local};
}

/// Now where no time is given, unless the clock is in question: an entry of another time would stand out of
/// its order.
tl::expected<Instant, Failure> happenedFrom(const std::optional<std::string>& at, const Desk& desk) {
    if (!at) return timeOfEntry(desk.session, at, desk.answer.style);
    const auto moment = intake::momentFromText(*at, intake::DateOrder::dayFirst, desk.context.zone);
    if (!moment) return misused(moment.error(), "--at", desk.answer.style);
    if (moment->ambiguous) {
        return misusedLine(
            "--at: the clocks changed then: write the offset too, like 2026-10-25T02:30:00+01:00");
    }
    return moment->at;
}

tl::expected<std::vector<intake::TypedField>, Failure> fieldsFrom(const std::vector<std::string>& typed) {
    std::vector<intake::TypedField> fields;
    for (const std::string& text : typed) {
        const std::size_t sign = text.find('=');
        if (sign == std::string::npos || sign == 0) {
            return misusedLine("\"" + text + "\" is not a field: write it like mass=12.3t");
        }
        fields.push_back({text.substr(0, sign), text.substr(sign + 1)});
    }
    return fields;
}

template <class Defined, class Things>
std::optional<entries::Body> definitionIn(const Things& things, const std::string& name) {
    for (const auto& [id, thing] : things) {
        if (thing.name == name) return Defined{thing};
    }
    return std::nullopt;
}

/// A thing that is defined anew is what it was, but for what is typed.
entries::Body startOf(entries::Body empty, const std::vector<intake::TypedField>& fields,
                      const season::FarmBook& farm) {
    const auto typed =
        std::find_if(fields.begin(), fields.end(), [](const auto& field) { return field.name == "name"; });
    const std::string name = typed == fields.end() ? std::string{} : typed->text;
    std::optional<entries::Body> known;
    if (std::holds_alternative<entries::SiloDefined>(empty)) {
        known = definitionIn<entries::SiloDefined>(farm.silos, name);
    } else if (std::holds_alternative<entries::TractorDefined>(empty)) {
        known = definitionIn<entries::TractorDefined>(farm.tractors, name);
    } else if (std::holds_alternative<entries::TruckDefined>(empty)) {
        known = definitionIn<entries::TruckDefined>(farm.trucks, name);
    } else if (std::holds_alternative<entries::FieldDefined>(empty)) {
        known = definitionIn<entries::FieldDefined>(farm.fields, name);
    } else if (std::holds_alternative<entries::RulesSet>(empty)) {
        known = entries::RulesSet{farm.rules};
    }
    return known.value_or(std::move(empty));
}

/// What an entry changed since `before` where it states, corrects or takes back a dry-matter sample; nothing
/// of other kinds.
std::vector<Message> changedBy(entries::EntryId entry, const season::Season& before, const Desk& desk) {
    const auto after = desk.session.snapshot();
    const season::FactPointer fact = after->fact(entry);
    const auto* sample = std::get_if<entries::DryMatterSample>(&fact->body());
    if (sample == nullptr) return {};
    const auto change = density::changeBySample(before, *after, sample->field, fact->happened());
    return density::messagesOf(change, after->farm().rules);
}

Outcome tell(const Desk& desk, const Result<entries::Header>& recorded, const entries::Body& body,
             const season::Season& before) {
    if (!recorded) {
        // What was refused is a value on the command line; what could not be written is the file's.
        const bool isTyped = !recorded.error().field.empty() && recorded.error().field != "file" &&
                             recorded.error().field != "entry";
        if (isTyped) return misusedField(recorded.error(), desk.answer.style);
        return failed(recorded.error(), desk.answer.style);
    }
    const std::string text =
        inWords(body, namesOf(desk.session.snapshot()->farm(), desk.people), desk.answer.style);
    const std::vector<Message> changed = changedBy(recorded->id, before, desk);
    if (desk.answer.json) {
        JsonWriter json{2};
        json.beginObject().member("entry", recorded->id.value.text()).member("kind", recorded->kind);
        json.member("happened", toIso8601(recorded->happened)).member("text", text);
        writeMessages(json, "changed", changed, desk.answer.style);
        json.endObject();
        desk.answer.out << json.text() << '\n';
    } else {
        desk.answer.out << words::inWords(recorded->happened, desk.answer.style) << ", "
                        << words::kindInWords(recorded->kind, desk.answer.style) << ": " << text << '\n'
                        << recorded->id.value.text() << '\n';
        for (const Message& message : changed)
            desk.answer.out << words::inWords(message, desk.answer.style) << '\n';
    }
    return {};
}

}  // namespace

tl::expected<entries::PersonId, Failure> authorFrom(const intake::Context& context, const std::string& file,
                                                    const std::optional<std::string>& name) {
    if (!name) return kNobody;
    const auto found = context.people.find(*name, "author");
    if (found) return *found;
    return misusedLine("--author: nobody is called \"" + *name + "\" in this season: add them with `people " +
                       file + " --add \"" + *name + "\"`");
}

tl::expected<entries::PersonId, Failure> authorIn(session::Session& session, const std::string& file,
                                                  const std::optional<std::string>& name,
                                                  const words::Style& style) {
    const auto people = session.people().all();
    if (!people) return failed(people.error(), style);
    intake::Context context = intake::contextOf(*session.snapshot());
    for (const auto& [id, called] : *people) context.people.add(called, id);
    return authorFrom(context, file, name);
}

Outcome add(const EntryOptions& options, const Answer& answer) {
    auto desk = deskOf(options, answer);
    if (!desk) return tl::unexpected{desk.error()};
    const auto empty = emptyBodyOf(options.kind, answer.style);
    if (!empty) return tl::unexpected{empty.error()};
    const auto at = happenedFrom(options.at, *desk);
    if (!at) return tl::unexpected{at.error()};
    const auto fields = fieldsFrom(options.fields);
    if (!fields) return tl::unexpected{fields.error()};
    UuidSource ids;
    const auto body = intake::typedEntry(startOf(*empty, *fields, desk->session.snapshot()->farm()), *fields,
                                         desk->context, ids, machineClock().now());
    if (!body) return misusedField(body.error(), answer.style);
    const auto before = desk->session.snapshot();
    return tell(*desk, desk->session.propose(*body, *at, desk->author), *body, *before);
}

Outcome correct(const EntryOptions& options, const Answer& answer) {
    auto desk = deskOf(options, answer);
    if (!desk) return tl::unexpected{desk.error()};
    const auto season = desk->session.snapshot();
    const auto entry = entryFrom(*season, options.entry);
    if (!entry) return tl::unexpected{entry.error()};
    const season::FactPointer fact = season->fact((*entry)->header.id);
    const auto fields = fieldsFrom(options.fields);
    if (!fields) return tl::unexpected{fields.error()};
    auto at = options.at ? happenedFrom(options.at, *desk) : fact->happened();
    if (!at) return tl::unexpected{at.error()};
    if (fields->empty() && !options.at) {
        return misusedLine("nothing to correct: give fields, like mass=12.3t, or --at");
    }
    const auto body = intake::typedChange(fact->body(), *fields, desk->context);
    if (!body) return misusedField(body.error(), answer.style);
    return tell(*desk, desk->session.propose(*body, *at, desk->author, fact->id()), *body, *season);
}

Outcome takeBack(const EntryOptions& options, const Answer& answer) {
    auto desk = deskOf(options, answer);
    if (!desk) return tl::unexpected{desk.error()};
    const auto before = desk->session.snapshot();
    const auto entry = entryFrom(*before, options.entry);
    if (!entry) return tl::unexpected{entry.error()};
    const auto at = happenedFrom(options.at, *desk);
    if (!at) return tl::unexpected{at.error()};
    auto undo = session::undoing(*before, (*entry)->header.id, options.reason.value_or(std::string{}), *at);
    if (!undo) return failed(undo.error(), answer.style);
    const auto recorded =
        desk->session.propose(std::move(undo->body), undo->happened, desk->author, undo->target);
    const season::EntryPointer made =
        recorded ? *entryFrom(*desk->session.snapshot(), recorded->id.value.text()) : season::EntryPointer{};
    return tell(*desk, recorded, made ? made->body : entries::Body{}, *before);
}

}  // namespace treadwell::cli
