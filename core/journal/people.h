#pragma once

#include "core/base/error.h"
#include "core/entries/entry.h"

#include <SQLiteCpp/Database.h>

#include <map>
#include <string>

namespace treadwell::journal {

/// Who the ids in the entries are. The only names of people in a season's file, so that one can be erased
/// while the entries stand.
using People = std::map<entries::PersonId, std::string>;

/// SQLite::Exception where the table cannot be read.
[[nodiscard]] People readPeople(SQLite::Database& database);

/// Adds a person, or gives one another name; the old one leaves no trace. SQLite::Exception where it cannot
/// be written.
void namePerson(SQLite::Database& database, entries::PersonId id, const std::string& name);

/// Leaves no trace of the name in the file or beside it. SQLite::Exception where it cannot be written.
void erasePerson(SQLite::Database& database, entries::PersonId id);

}  // namespace treadwell::journal
