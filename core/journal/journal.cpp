#include "core/journal/journal.h"

#include "core/base/codes.h"
#include "core/journal/backup.h"
#include "core/journal/codes.h"
#include "core/journal/open.h"
#include "core/journal/row.h"
#include "core/journal/schema.h"

#include <SQLiteCpp/Transaction.h>
#include <sqlite3.h>

#include <system_error>

namespace treadwell::journal {

namespace {

using entries::DeviceId;
using entries::StoredEntry;

void keepEvidence(SQLite::Database& database, std::span<const entries::Evidence> evidence) {
    if (evidence.empty()) return;
    SQLite::Statement insert(database, "INSERT OR IGNORE INTO evidence(hash, content) VALUES(?, ?)");
    for (const entries::Evidence& one : evidence) {
        insert.bind(1, one.hash.data(), static_cast<int>(one.hash.size()));
        insert.bind(2, one.content.data(), static_cast<int>(one.content.size()));
        insert.exec();
        insert.reset();
    }
}

struct Rights {
    std::optional<Lease> lease;  ///< none: for reading
    std::optional<Message> readOnlyReason;
};

Message heldBy(const std::filesystem::path& path, const LeaseOwner& owner) {
    return {code::journalHeld, {path.string(), owner.pid, owner.host, owner.since, owner.user}};
}

Result<Rights> rightsTo(const std::filesystem::path& path, Access access, std::int64_t version, Instant now) {
    Rights rights;
    if (version > kLayoutVersion) {
        rights.readOnlyReason = {code::journalNewer, {path.string(), version, kLayoutVersion}};
        return rights;
    }
    if (access == Access::read) return rights;
    if (!mayWrite(path) || !mayWrite(folderOf(path))) {
        rights.readOnlyReason = {code::journalMediumReadOnly, {path.string()}};
        return rights;
    }
    auto taken = Lease::take(path, now);
    if (!taken) return tl::unexpected(taken.error());
    if (const auto* owner = std::get_if<LeaseOwner>(&*taken)) {
        rights.readOnlyReason = heldBy(path, *owner);
    } else {
        rights.lease = std::get<Lease>(std::move(*taken));
    }
    return rights;
}

}  // namespace

struct Journal::State {
    State(std::filesystem::path where, SQLite::Database opened)
        : path(std::move(where)), medium(mediumOf(path)), database(std::move(opened)) {}
    ~State() {
        if (writable) keepTidy(database);
    }
    State(const State&) = delete;
    State& operator=(const State&) = delete;

    std::optional<BrokenPlace> scan(Heads& chains, std::int64_t& row,
                                    const std::function<void(StoredEntry&&)>& take);
    void leaveAlone(Message reason);
    void lookForOwner();

    std::filesystem::path path;
    Medium medium;
    std::optional<Lease> lease;  // given back after the database has been closed
    SQLite::Database database;
    std::optional<SQLite::Statement> insert;  // from the first entry on that is appended
    bool writable = false;
    std::optional<Message> readOnlyReason;
    Heads heads;
    Heads chained;             ///< as far as it has been read
    std::int64_t lastRow = 0;  ///< that has been read
};

std::optional<BrokenPlace> Journal::State::scan(Heads& chains, std::int64_t& row,
                                                const std::function<void(StoredEntry&&)>& take) {
    std::optional<BrokenPlace> broken;
    std::error_code unknown;
    // No row is shorter than its ids and its hash.
    const auto farthest = row + static_cast<std::int64_t>(std::filesystem::file_size(path, unknown) / 100);
    const auto unreadable =
        readRows(database, row, unknown ? row : farthest, [&](std::int64_t at, StoredEntry&& entry) {
            if (const auto fault = faultOf(chains, entry); fault && !broken) {
                broken = BrokenPlace{*fault, at, entry.header.device, entry.header.deviceSequence, {}};
            }
            row = at;
            take(std::move(entry));
        });
    if (unreadable && (!broken || unreadable->row <= broken->row)) {
        broken = BrokenPlace{Fault::unreadable, unreadable->row, {}, 0, unreadable->reason};
    }
    if (broken) leaveAlone({code::journalOpenedDamaged, {path.string()}});
    return broken;
}

void Journal::State::leaveAlone(Message reason) {
    insert.reset();
    writable = false;
    readOnlyReason = std::move(reason);
}

/// Where another program had it: whether that one still does, or yet another.
void Journal::State::lookForOwner() {
    if (!readOnlyReason) return;
    if (readOnlyReason->code != code::journalHeld && readOnlyReason->code != code::journalLeft) return;
    const auto owner = Lease::ownerOf(path);
    readOnlyReason = owner ? heldBy(path, *owner) : Message{code::journalLeft, {path.string()}};
}

Journal::Journal(std::unique_ptr<State> state) : m_state(std::move(state)) {}
Journal::Journal(Journal&&) noexcept = default;
Journal& Journal::operator=(Journal&&) noexcept = default;
Journal::~Journal() = default;

Result<Journal> Journal::create(const std::filesystem::path& path, Instant now) {
    const auto made = makeWhole(path, [](const std::filesystem::path& beside) -> Result<void> {
        const Medium medium = mediumOf(beside);
        SQLite::Database database = openForWriting(beside, medium);
        prepareToWrite(database, medium);
        makeTables(database);
        keepTidy(database);
        return {};
    });
    if (!made) return tl::unexpected(made.error());
    return open(path, Access::write, now);
}

Result<Journal> Journal::open(const std::filesystem::path& given, Access access, Instant now) {
    std::error_code unresolved;
    const std::filesystem::path resolved = std::filesystem::canonical(given, unresolved);
    const std::filesystem::path& path = unresolved ? given : resolved;
    const auto version = layoutVersionOf(path);
    if (!version) return tl::unexpected(version.error());
    if (*version < 1) return fail(code::journalForeign, "file", path.string());

    auto rights = rightsTo(path, access, *version, now);
    if (!rights) return tl::unexpected(rights.error());
    auto opened = openSound(path, *version, std::move(rights->lease));
    if (!opened && opened.error().code() == code::journalDamaged) return openBroken(path, opened.error());
    if (opened && !opened->isWritable() && rights->readOnlyReason) {
        opened->m_state->readOnlyReason = std::move(rights->readOnlyReason);
    }
    return opened;
}

Result<Journal> Journal::openSound(const std::filesystem::path& path, std::int64_t version,
                                   std::optional<Lease> lease) {
    const Medium medium = mediumOf(path);
    try {
        auto database =
            lease ? Result<SQLite::Database>{openForWriting(path, medium)} : openForReading(path, medium);
        if (!database) return tl::unexpected(database.error());
        if (!hasOurColumns(*database)) {
            if (version > kLayoutVersion) {
                return fail(code::journalTooNew, "file", path.string(), version, kLayoutVersion);
            }
            return fail(code::journalForeign, "file", path.string());
        }
        auto state = std::make_unique<State>(path, std::move(*database));
        state->heads = headsOf(state->database);
        state->writable = lease.has_value();
        state->lease = std::move(lease);
        Journal journal{std::move(state)};
        if (journal.isWritable()) {
            if (const auto done = journal.bringUpToDate(); !done) return tl::unexpected(done.error());
        }
        return journal;
    } catch (const SQLite::Exception& exception) {
        const int code = exception.getErrorCode();
        if (code == SQLITE_BUSY || code == SQLITE_CANTOPEN || code == SQLITE_PERM) {
            return fail(code::fileUnreadable, "file", path.string(), std::string{exception.what()});
        }
        return damaged(path, exception);
    }
}

/// With all that can be read of it, and nothing that would change it.
Result<Journal> Journal::openBroken(const std::filesystem::path& path, const Error& error) {
    try {
        auto state = std::make_unique<State>(path, openDamaged(path));
        if (!hasOurColumns(state->database)) return Unexpected{error};
        state->leaveAlone({code::journalOpenedDamaged, {path.string()}});
        return Journal{std::move(state)};
    } catch (const SQLite::Exception&) {
        return Unexpected{error};
    }
}

/// Migrates an older layout, once the file is known to be whole and a copy of it is kept.
Result<void> Journal::bringUpToDate() {
    State& state = *m_state;
    const auto version = layoutVersionIn(state.database);
    if (version >= kLayoutVersion || verify()) return {};
    const std::filesystem::path aside = state.path.string() + ".v" + std::to_string(version);
    std::error_code unknown;
    if (!std::filesystem::exists(aside, unknown)) {
        if (auto kept = copyTo(state.database, aside); !kept) return kept;
    }
    prepareToWrite(state.database, state.medium);
    migrate(state.database);
    return {};
}

const std::filesystem::path& Journal::path() const noexcept {
    return m_state->path;
}

bool Journal::isWritable() const noexcept {
    return m_state->writable;
}

const std::optional<Message>& Journal::readOnlyReason() const noexcept {
    return m_state->readOnlyReason;
}

const Heads& Journal::heads() const noexcept {
    return m_state->heads;
}

Result<void> Journal::append(std::span<const StoredEntry> entries,
                             std::span<const entries::Evidence> evidence) {
    State& state = *m_state;
    if (!state.writable) {
        const bool failed = state.readOnlyReason && state.readOnlyReason->code == code::journalWriteFailed;
        if (failed) return Unexpected{Error{*state.readOnlyReason, "entry", {}}};
        return fail(code::journalReadOnly, "file", state.path.string());
    }
    Heads heads = state.heads;
    for (const StoredEntry& entry : entries) {
        if (faultOf(heads, entry)) {
            return fail(code::entryOutOfOrder, "entry", entry.header.device.value.text(),
                        entry.header.deviceSequence);
        }
    }
    try {
        if (!isInPlace(state.database)) {
            throw SQLite::Exception("it is no longer where it was opened", SQLITE_IOERR);
        }
        if (!state.insert) {
            prepareToWrite(state.database, state.medium);
            state.insert.emplace(state.database, kInsertRow);
        }
        SQLite::Transaction transaction(state.database, SQLite::TransactionBehavior::IMMEDIATE);
        for (const StoredEntry& entry : entries) {
            state.insert->tryReset();
            bindRow(*state.insert, entry);
            state.insert->exec();
        }
        state.insert->tryReset();
        keepEvidence(state.database, evidence);
        transaction.commit();
    } catch (const SQLite::Exception& exception) {
        const Message message{code::journalWriteFailed, {state.path.string(), std::string{exception.what()}}};
        const int code = exception.getErrorCode();
        if (state.insert) state.insert->tryReset();
        // After a disk's failure what it says of later writes cannot be relied on: better to stop.
        if (code == SQLITE_IOERR || code == SQLITE_CORRUPT) state.leaveAlone(message);
        return Unexpected{Error{message, "entry", {}}};
    }
    state.heads = std::move(heads);
    return {};
}

Result<void> Journal::reopen(Instant now) {
    State& old = *m_state;
    old.insert.reset();
    old.database = SQLite::Database(":memory:");  // lets go of the file, so that a stick can be put back
    old.lease.reset();
    auto opened = open(old.path, Access::write, now);
    if (!opened) return tl::unexpected(opened.error());
    if (!opened->isWritable()) return Unexpected{Error{*opened->readOnlyReason(), "file", {}}};
    for (const auto& [device, head] : old.heads) {
        if (opened->hashAt(device, head.sequence) != head.hash) {
            return fail(code::journalBehind, "file", old.path.string());
        }
    }
    *this = std::move(*opened);
    return {};
}

std::optional<BrokenPlace> Journal::read(const std::function<void(StoredEntry&&)>& take) {
    m_state->chained.clear();
    m_state->lastRow = 0;
    return readNew(take);
}

std::optional<BrokenPlace> Journal::readNew(const std::function<void(StoredEntry&&)>& take) {
    m_state->lookForOwner();  // first: what the last one wrote is then read
    const auto broken = m_state->scan(m_state->chained, m_state->lastRow, take);
    if (!m_state->writable) m_state->heads = m_state->chained;
    return broken;
}

std::optional<BrokenPlace> Journal::verify(Look look) {
    State& state = *m_state;
    const bool whole = look == Look::whole;
    Heads chains;
    std::int64_t row = 0;
    if (whole) {
        if (auto broken = state.scan(chains, row, [](StoredEntry&&) {})) return broken;
    }
    std::string found;
    try {
        found = state.database.execAndGet(whole ? "PRAGMA integrity_check(1)" : "PRAGMA quick_check(1)")
                    .getString();
    } catch (const SQLite::Exception& exception) {
        const int code = exception.getErrorCode();
        // A disk that does not answer at a quick look says nothing of the file: the next write will tell.
        if (!whole && code != SQLITE_CORRUPT && code != SQLITE_NOTADB) return std::nullopt;
        found = exception.what();
    }
    if (found == "ok") return std::nullopt;
    state.leaveAlone({code::journalOpenedDamaged, {state.path.string()}});
    return BrokenPlace{Fault::structure, 0, {}, 0, found};
}

Result<std::optional<Hash>> Journal::hashAt(DeviceId device, std::int64_t sequence) const {
    try {
        SQLite::Statement find(m_state->database,
                               "SELECT hash FROM entry WHERE device = ? AND device_seq = ?");
        find.bind(1, device.value.bytes.data(), static_cast<int>(device.value.bytes.size()));
        find.bind(2, sequence);
        if (!find.executeStep()) return std::nullopt;
        Hash hash{};
        readBytes(find.getColumn(0), hash);
        return hash;
    } catch (const SQLite::Exception& exception) {
        return damaged(m_state->path, exception);
    }
}

Result<std::optional<std::string>> Journal::evidence(const Hash& hash) const {
    try {
        SQLite::Statement find(m_state->database, "SELECT content FROM evidence WHERE hash = ?");
        find.bind(1, hash.data(), static_cast<int>(hash.size()));
        if (!find.executeStep()) return std::nullopt;
        return find.getColumn(0).getString();
    } catch (const SQLite::Exception& exception) {
        return damaged(m_state->path, exception);
    }
}

PeopleTable Journal::people() {
    return {m_state->database, m_state->path, m_state->writable};
}

Result<void> Journal::backupTo(const std::filesystem::path& copy) const {
    return copyTo(m_state->database, copy);
}

}  // namespace treadwell::journal
