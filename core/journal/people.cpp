#include "core/journal/people.h"

#include "core/journal/codes.h"
#include "core/journal/open.h"
#include "core/journal/row.h"

namespace treadwell::journal {

namespace {

void bindId(SQLite::Statement& statement, int column, const entries::PersonId& id) {
    statement.bind(column, id.value.bytes.data(), static_cast<int>(id.value.bytes.size()));
}

}  // namespace

Result<People> PeopleTable::all() const {
    try {
        People people;
        SQLite::Statement all(m_database, "SELECT id, name FROM person");
        while (all.executeStep()) {
            entries::PersonId id;
            readBytes(all.getColumn(0), id.value.bytes);
            people[id] = all.getColumn(1).getString();
        }
        return people;
    } catch (const SQLite::Exception& exception) {
        return damaged(m_path, exception);
    }
}

Result<void> PeopleTable::name(entries::PersonId id, const std::string& name) {
    return overwrite([&] {
        SQLite::Statement put(m_database,
                              "INSERT INTO person(id, name) VALUES (?,?)"
                              " ON CONFLICT(id) DO UPDATE SET name = excluded.name");
        bindId(put, 1, id);
        put.bind(2, name);
        put.exec();
    });
}

Result<void> PeopleTable::erase(entries::PersonId id) {
    return overwrite([&] {
        SQLite::Statement erase(m_database, "DELETE FROM person WHERE id = ?");
        bindId(erase, 1, id);
        erase.exec();
    });
}

/// An old name must stay neither in a freed page nor in the write-ahead log.
Result<void> PeopleTable::overwrite(const std::function<void()>& change) {
    if (!m_writable) return fail(code::journalReadOnly, "file", m_path.string());
    try {
        m_database.exec("PRAGMA secure_delete = ON");
        change();
        m_database.exec("PRAGMA wal_checkpoint(TRUNCATE)");
    } catch (const SQLite::Exception& exception) {
        return fail(code::journalWriteFailed, "person", m_path.string(), std::string{exception.what()});
    }
    return {};
}

}  // namespace treadwell::journal
