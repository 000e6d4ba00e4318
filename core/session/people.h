#pragma once

#include "core/base/error.h"
#include "core/entries/entry.h"

#include <map>
#include <string>

namespace treadwell::journal {
class Journal;
}

namespace treadwell::session {

/// The names of people in a season's file; entries hold their ids alone.
class People {
  public:
    /// All must outlive this.
    People(journal::Journal& journal, UuidSource& ids, const Clock& clock)
        : m_journal(journal), m_ids(ids), m_clock(clock) {}

    /// Error: journalDamaged.
    [[nodiscard]] Result<std::map<entries::PersonId, std::string>> all() const;

    /// Errors: nameEmpty, personNamedTwice, journalReadOnly,
    /// journalWriteFailed.
    [[nodiscard]] Result<entries::PersonId> add(const std::string& name);
    [[nodiscard]] Result<void> rename(entries::PersonId id, const std::string& name);

    /// The entries stay, and their id; nobody can tell any more whose it was. Errors: journalReadOnly,
    /// journalWriteFailed.
    [[nodiscard]] Result<void> erase(entries::PersonId id);

  private:
    [[nodiscard]] Result<void> set(entries::PersonId id, const std::string& name);

    journal::Journal& m_journal;
    UuidSource& m_ids;
    const Clock& m_clock;
};

}  // namespace treadwell::session
