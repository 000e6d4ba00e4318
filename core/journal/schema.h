#pragma once

#include <SQLiteCpp/Database.h>

#include <cstdint>

namespace treadwell::journal {

/// Stands in the header of the file, so that a season is known by its bytes.
constexpr std::int64_t kApplicationId = 0x54524457;

/// Of the file's layout. A program that finds a greater one reads the entries if their columns are these.
constexpr std::int64_t kLayoutVersion = 2;

void makeTables(SQLite::Database& database);

[[nodiscard]] std::int64_t layoutVersionIn(SQLite::Database& database);

/// Brings the tables from an older layout to this one, a version at a time, all of it or nothing.
void migrate(SQLite::Database& database);

/// Whether the entries' columns are those of this version; further ones do not matter.
[[nodiscard]] bool hasOurColumns(SQLite::Database& database);

}  // namespace treadwell::journal
