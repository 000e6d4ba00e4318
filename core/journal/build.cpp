#include "core/journal/build.h"

#include "core/journal/backup.h"
#include "core/journal/chain.h"
#include "core/journal/codes.h"
#include "core/journal/open.h"
#include "core/journal/row.h"
#include "core/journal/schema.h"

#include <SQLiteCpp/Transaction.h>

namespace treadwell::journal {

using entries::StoredEntry;

Result<void> build(const std::filesystem::path& path,
                   const std::function<Result<People>(const Take&)>& source) {
    return makeWhole(path, [&](const std::filesystem::path& beside) -> Result<void> {
        const Medium medium = mediumOf(beside);
        SQLite::Database database = openForWriting(beside, medium);
        prepareToWrite(database, medium);
        makeTables(database);
        SQLite::Transaction transaction(database);
        SQLite::Statement insert(database, kInsertRow);
        Heads heads;
        const auto people = source([&](StoredEntry&& entry) -> Result<void> {
            if (faultOf(heads, entry)) {
                return fail(code::entryOutOfOrder, "entry", entry.header.device.value.text(),
                            entry.header.deviceSequence);
            }
            bindRow(insert, entry);
            insert.exec();
            insert.reset();
            return {};
        });
        if (!people) return tl::unexpected(people.error());
        transaction.commit();
        PeopleTable table{database, path, true};
        for (const auto& [id, name] : *people) {
            if (auto named = table.name(id, name); !named) return named;
        }
        keepTidy(database);
        return {};
    });
}

}  // namespace treadwell::journal
