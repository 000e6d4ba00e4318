#include "core/session/people.h"

#include "core/farm/codes.h"
#include "core/journal/journal.h"
#include "core/session/codes.h"

namespace treadwell::session {

using entries::PersonId;

Result<std::map<PersonId, std::string>> People::all() const {
    return m_journal.people().all();
}

Result<PersonId> People::add(const std::string& name) {
    const PersonId id{m_ids.next(m_clock.now())};
    return set(id, name).map([&] { return id; });
}

Result<void> People::rename(PersonId id, const std::string& name) {
    return set(id, name);
}

Result<void> People::erase(PersonId id) {
    return m_journal.people().erase(id);
}

Result<void> People::set(PersonId id, const std::string& name) {
    if (name.empty()) return fail(code::nameEmpty, "person");
    const auto known = all();
    if (!known) return Unexpected{known.error()};
    for (const auto& [other, taken] : *known) {
        if (taken == name && other != id) return fail(code::personNamedTwice, "person", name);
    }
    return m_journal.people().name(id, name);
}

}  // namespace treadwell::session
