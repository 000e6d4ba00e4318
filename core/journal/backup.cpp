#include "core/journal/backup.h"

#include "core/base/atomic_file.h"
#include "core/base/codes.h"
#include "core/base/descriptor.h"
#include "core/journal/chain.h"
#include "core/journal/codes.h"
#include "core/journal/open.h"

#include <SQLiteCpp/Backup.h>
#include <fcntl.h>

#include <cerrno>
#include <system_error>

namespace treadwell::journal {

namespace {

Result<void> makeEmpty(const std::filesystem::path& path) {
    const Descriptor file{::open(path.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, 0600)};
    if (!file.isOpen()) {
        return fail(code::fileUnwritable, "file", path.string(), std::generic_category().message(errno));
    }
    return {};
}

void removeWithCompanions(const std::filesystem::path& path) {
    for (const char* suffix : {"", "-wal", "-shm", "-journal"}) {
        std::error_code absent;
        std::filesystem::remove(path.string() + suffix, absent);
    }
}

}  // namespace

Result<void> makeWhole(const std::filesystem::path& path,
                       const std::function<Result<void>(const std::filesystem::path&)>& fill) {
    if (auto free = nothingAt(path); !free) return free;
    const std::filesystem::path beside = path.string() + ".new";
    removeWithCompanions(beside);  // what an interrupted attempt has left
    auto made = makeEmpty(beside);
    if (!made) return made;
    try {
        made = fill(beside);
    } catch (const SQLite::Exception& exception) {
        made = fail(code::fileUnwritable, "file", path.string(), std::string{exception.what()});
    }
    if (made) made = publishFile(beside, path);
    if (!made) removeWithCompanions(beside);
    return made;
}

Result<void> copyTo(SQLite::Database& database, const std::filesystem::path& copy) {
    return makeWhole(copy, [&database](const std::filesystem::path& beside) -> Result<void> {
        {
            SQLite::Database target(beside.string(), SQLite::OPEN_READWRITE);
            SQLite::Backup(target, database).executeStep();
        }
        SQLite::Database made(beside.string(), SQLite::OPEN_READWRITE);
        const std::string found = made.execAndGet("PRAGMA integrity_check(1)").getString();
        if (found != "ok") return fail(code::journalDamaged, "file", beside.string(), found);
        if (headsOf(made) != headsOf(database)) {
            return fail(code::journalDamaged, "file", beside.string(), std::string{"entries are missing"});
        }
        return {};
    });
}

}  // namespace treadwell::journal
