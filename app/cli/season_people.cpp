#include "app/cli/open_season.h"
#include "app/cli/season_copies.h"

#include <algorithm>
#include <ostream>

namespace treadwell::cli {

namespace {

using Known = std::map<entries::PersonId, std::string>;

tl::expected<entries::PersonId, Failure> personNamed(const Known& known, const std::string& name) {
    const auto found =
        std::find_if(known.begin(), known.end(), [&](const auto& person) { return person.second == name; });
    if (found != known.end()) return found->first;
    return misusedLine("nobody is called \"" + name + "\": `people FILE` shows the names");
}

Outcome change(session::People people, const Known& known, const PeopleOptions& options,
               const Answer& answer) {
    Result<void> changed;
    if (options.add) {
        changed = people.add(*options.add).map([](entries::PersonId) {});
    } else {
        const auto person = personNamed(known, options.rename ? *options.rename : *options.erase);
        if (!person) return tl::unexpected{person.error()};
        changed = options.rename ? people.rename(*person, *options.to) : people.erase(*person);
    }
    if (!changed) return failed(changed.error(), answer.style);
    return {};
}

}  // namespace

Outcome people(const PeopleOptions& options, const Answer& answer) {
    const int changes =
        int{options.add.has_value()} + int{options.erase.has_value()} + int{options.rename.has_value()};
    if (changes > 1 || options.rename.has_value() != options.to.has_value()) {
        return misusedLine("give one of --add, --erase, or --rename with --to");
    }
    auto opened = openSeason(options.file, changes > 0 ? Purpose::writing : Purpose::reading, answer);
    if (!opened) return tl::unexpected{opened.error()};
    auto known = opened->people().all();
    if (!known) return failed(known.error(), answer.style);
    if (changes > 0) {
        if (auto done = change(opened->people(), *known, options, answer); !done) return done;
        known = opened->people().all();
        if (!known) return failed(known.error(), answer.style);
    }
    JsonWriter json{2};
    json.beginObject().key("people").beginArray();
    for (const auto& [id, name] : *known) {
        json.beginObject().member("id", id.value.text()).member("name", name).endObject();
        if (!answer.json) answer.out << name << '\n';
    }
    json.endArray().endObject();
    if (answer.json) answer.out << json.text() << '\n';
    return {};
}

}  // namespace treadwell::cli
