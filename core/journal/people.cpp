#include "core/journal/people.h"

#include "core/journal/row.h"

#include <functional>

namespace treadwell::journal {

namespace {

void bindId(SQLite::Statement& statement, int column, const entries::PersonId& id) {
    statement.bind(column, id.value.bytes.data(), static_cast<int>(id.value.bytes.size()));
}

/// An old name must stay neither in a freed page nor in the write-ahead log.
void overwrite(SQLite::Database& database, const std::function<void()>& change) {
    database.exec("PRAGMA secure_delete = ON");
    change();
    database.exec("PRAGMA wal_checkpoint(TRUNCATE)");
}

}  // namespace

People readPeople(SQLite::Database& database) {
    People people;
    SQLite::Statement all(database, "SELECT id, name FROM person");
    while (all.executeStep()) {
        entries::PersonId id;
        readBytes(all.getColumn(0), id.value.bytes);
        people[id] = all.getColumn(1).getString();
    }
    return people;
}

void namePerson(SQLite::Database& database, entries::PersonId id, const std::string& name) {
    overwrite(database, [&] {
        SQLite::Statement put(database,
                              "INSERT INTO person(id, name) VALUES (?,?)"
                              " ON CONFLICT(id) DO UPDATE SET name = excluded.name");
        bindId(put, 1, id);
        put.bind(2, name);
        put.exec();
    });
}

void erasePerson(SQLite::Database& database, entries::PersonId id) {
    overwrite(database, [&] {
        SQLite::Statement erase(database, "DELETE FROM person WHERE id = ?");
        bindId(erase, 1, id);
        erase.exec();
    });
}

}  // namespace treadwell::journal
