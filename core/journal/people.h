#pragma once

#include "core/base/error.h"
#include "core/entries/entry.h"

#include <SQLiteCpp/Database.h>

#include <filesystem>
#include <functional>
#include <map>
#include <string>

namespace treadwell::journal {

/// Who the ids in the entries are. The only names of people in a season's file, so that one can be erased
/// while the entries stand.
using People = std::map<entries::PersonId, std::string>;

/// Their table in an open journal; not for longer than that is open.
class PeopleTable {
  public:
    PeopleTable(SQLite::Database& database, const std::filesystem::path& path, bool writable)
        : m_database(database), m_path(path), m_writable(writable) {}

    /// Error: journalDamaged.
    [[nodiscard]] Result<People> all() const;
    /// Adds a person, or gives one another name; the old one leaves no trace. Errors: journalReadOnly,
    /// journalWriteFailed.
    [[nodiscard]] Result<void> name(entries::PersonId id, const std::string& name);
    /// Leaves no trace of the name in the file or beside it. Errors: journalReadOnly, journalWriteFailed.
    [[nodiscard]] Result<void> erase(entries::PersonId id);

  private:
    [[nodiscard]] Result<void> overwrite(const std::function<void()>& change);

    SQLite::Database& m_database;
    const std::filesystem::path& m_path;
    bool m_writable;
};

}  // namespace treadwell::journal
