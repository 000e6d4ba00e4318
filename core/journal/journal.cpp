#include "core/journal/journal.h"

#include "core/base/atomic_file.h"
#include "core/journal/open.h"
#include "core/journal/row.h"
#include "core/journal/schema.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/Transaction.h>
#include <fcntl.h>
#include <sqlite3.h>

#include <cerrno>
#include <system_error>

namespace treadwell::journal {

namespace {

using entries::DeviceId;
using entries::StoredEntry;

using Heads = std::map<DeviceId, Head>;

/// Steps from device to device through the index, so that it costs the same in a season of any length.
Heads headsOf(const SQLite::Database& database) {
    SQLite::Statement next(database, "SELECT min(device) FROM entry WHERE device > ?");
    SQLite::Statement last(
        database, "SELECT device_seq, hash FROM entry WHERE device = ? ORDER BY device_seq DESC LIMIT 1");
    Heads heads;
    for (std::string device;;) {
        next.bind(1, device.data(), static_cast<int>(device.size()));
        next.executeStep();
        if (next.getColumn(0).isNull()) return heads;
        DeviceId id;
        readBytes(next.getColumn(0), id.value.bytes);
        device = next.getColumn(0).getString();
        next.reset();
        last.bind(1, device.data(), static_cast<int>(device.size()));
        last.executeStep();
        Head& head = heads[id];
        head.sequence = last.getColumn(0).getInt64();
        readBytes(last.getColumn(1), head.hash);
        last.reset();
    }
}

/// Whether `entry` follows the last of its device, which it then becomes.
bool follows(Heads& heads, const StoredEntry& entry) {
    Head& head = heads[entry.header.device];
    const bool right = entry.header.deviceSequence == head.sequence + 1 &&
                       entry.hash == entryHash(head.hash, entry.header, entry.payload);
    head = {entry.header.deviceSequence, entry.hash};
    return right;
}

Result<void> makeEmpty(const std::filesystem::path& path) {
    const Descriptor file{::open(path.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, 0600)};
    if (!file.isOpen()) {
        return fail(Code::fileUnwritable, "file", path.string(), std::generic_category().message(errno));
    }
    return {};
}

/// Fills a file beside `path` and gives it its name when it is whole.
Result<void> makeWhole(const std::filesystem::path& path,
                       const std::function<Result<void>(const std::filesystem::path&)>& fill) {
    if (auto free = nothingAt(path); !free) return free;
    const std::filesystem::path beside = path.string() + ".new";
    // What an interrupted attempt has left.
    for (const char* suffix : {"", "-wal", "-shm", "-journal"}) {
        std::error_code absent;
        std::filesystem::remove(beside.string() + suffix, absent);
    }
    auto made = makeEmpty(beside);
    if (!made) return made;
    try {
        made = fill(beside);
    } catch (const SQLite::Exception& exception) {
        made = fail(Code::fileUnwritable, "file", path.string(), std::string{exception.what()});
    }
    if (made) made = publishFile(beside, path);
    if (!made) ::unlink(beside.c_str());
    return made;
}

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

Result<Rights> rightsTo(const std::filesystem::path& path, Access access, std::int64_t version, Instant now) {
    Rights rights;
    if (version > kLayoutVersion) {
        rights.readOnlyReason = {Code::journalNewer, {path.string(), version, kLayoutVersion}};
        return rights;
    }
    if (access == Access::read) return rights;
    if (!mayWrite(path) || !mayWrite(folderOf(path))) {
        rights.readOnlyReason = {Code::journalMediumReadOnly, {path.string()}};
        return rights;
    }
    auto taken = Lease::take(path, now);
    if (!taken) return tl::unexpected(taken.error());
    if (const auto* owner = std::get_if<LeaseOwner>(&*taken)) {
        rights.readOnlyReason = {Code::journalHeld, {path.string(), owner->pid, owner->host, owner->since}};
    } else {
        rights.lease = std::get<Lease>(std::move(*taken));
    }
    return rights;
}

}  // namespace

Message ChainBreak::message() const {
    return {Code::chainBroken, {device.value.text(), sequence}};
}

struct Journal::State {
    State(std::filesystem::path where, SQLite::Database opened)
        : path(std::move(where)), database(std::move(opened)), heads(headsOf(database)) {}

    std::filesystem::path path;
    std::optional<Lease> lease;  // given back after the database has been closed
    SQLite::Database database;
    std::optional<SQLite::Statement> insert;  // there while the file can be written
    std::optional<Message> readOnlyReason;
    Heads heads;
};

Journal::Journal(std::unique_ptr<State> state) : m_state(std::move(state)) {}
Journal::Journal(Journal&&) noexcept = default;
Journal& Journal::operator=(Journal&&) noexcept = default;
Journal::~Journal() = default;

Result<Journal> Journal::create(const std::filesystem::path& path, Instant now) {
    const auto made = makeWhole(path, [](const std::filesystem::path& beside) -> Result<void> {
        SQLite::Database database = openForWriting(beside);
        makeTables(database);
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

    auto rights = rightsTo(path, access, *version, now);
    if (!rights) return tl::unexpected(rights.error());
    try {
        auto database = rights->lease ? Result<SQLite::Database>{openForWriting(path)} : openForReading(path);
        if (!database) return tl::unexpected(database.error());
        if (!hasOurColumns(*database)) {
            if (*version > kLayoutVersion) {
                return fail(Code::journalTooNew, "file", path.string(), *version, kLayoutVersion);
            }
            return fail(Code::journalForeign, "file", path.string());
        }
        auto state = std::make_unique<State>(path, std::move(*database));
        if (rights->lease) state->insert.emplace(state->database, kInsertRow);
        state->lease = std::move(rights->lease);
        state->readOnlyReason = std::move(rights->readOnlyReason);
        return Journal{std::move(state)};
    } catch (const SQLite::Exception& exception) {
        return damaged(path, exception);
    }
}

const std::filesystem::path& Journal::path() const noexcept {
    return m_state->path;
}

bool Journal::isWritable() const noexcept {
    return m_state->insert.has_value();
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
    if (!state.insert) {
        const bool failed = state.readOnlyReason && state.readOnlyReason->code == Code::journalWriteFailed;
        if (failed) return Unexpected{Error{*state.readOnlyReason, "entry", {}}};
        return fail(Code::journalReadOnly, "file", state.path.string());
    }
    Heads heads = state.heads;
    for (const StoredEntry& entry : entries) {
        if (!follows(heads, entry)) {
            return fail(Code::entryOutOfOrder, "entry", entry.header.device.value.text(),
                        entry.header.deviceSequence);
        }
    }
    try {
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
        const Message message{Code::journalWriteFailed, {state.path.string(), std::string{exception.what()}}};
        const int code = exception.getErrorCode();
        state.insert->tryReset();
        // After a disk's failure what it says of later writes cannot be relied on: better to stop.
        if (code == SQLITE_IOERR || code == SQLITE_CORRUPT) {
            state.insert.reset();
            state.readOnlyReason = message;
        }
        return Unexpected{Error{message, "entry", {}}};
    }
    state.heads = std::move(heads);
    return {};
}

Result<std::optional<ChainBreak>> Journal::read(const std::function<void(StoredEntry&&)>& take) const {
    Heads heads;
    std::optional<ChainBreak> broken;
    try {
        readRows(m_state->database, [&](StoredEntry&& entry) {
            if (!follows(heads, entry) && !broken) {
                broken = ChainBreak{entry.header.device, entry.header.deviceSequence};
            }
            take(std::move(entry));
        });
    } catch (const SQLite::Exception& exception) {
        return damaged(m_state->path, exception);
    }
    return broken;
}

Result<void> Journal::quickCheck() const {
    try {
        const std::string found = m_state->database.execAndGet("PRAGMA quick_check(1)").getString();
        if (found != "ok") return fail(Code::journalDamaged, "file", m_state->path.string(), found);
    } catch (const SQLite::Exception& exception) {
        return damaged(m_state->path, exception);
    }
    return {};
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

Result<void> Journal::backupTo(const std::filesystem::path& copy) const {
    return makeWhole(copy, [this](const std::filesystem::path& beside) -> Result<void> {
        {
            SQLite::Database target(beside.string(), SQLite::OPEN_READWRITE);
            SQLite::Backup(target, m_state->database).executeStep();
        }
        SQLite::Database made(beside.string(), SQLite::OPEN_READWRITE);
        const std::string found = made.execAndGet("PRAGMA integrity_check(1)").getString();
        if (found != "ok") return fail(Code::journalDamaged, "file", beside.string(), found);
        if (headsOf(made) != headsOf(m_state->database)) {
            return fail(Code::journalDamaged, "file", beside.string(), std::string{"entries are missing"});
        }
        return {};
    });
}

Hash headHash(const Heads& heads) {
    Sha256 hasher;
    hasher.add("treadwell heads 1");
    for (const auto& [device, head] : heads) {
        hasher.add(device.value.bytes).add(head.sequence).add(head.hash);
    }
    return hasher.finish();
}

}  // namespace treadwell::journal
