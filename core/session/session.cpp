#include "core/session/session.h"

#include "core/journal/journal.h"
#include "core/session/device_memory.h"
#include "core/session/kept_aside.h"

#include <algorithm>
#include <mutex>
#include <tuple>

namespace treadwell::session {

namespace {

using entries::Entry;
using entries::EntryId;
using entries::Header;
using entries::PersonId;
using entries::StoredEntry;
using journal::Journal;

FarmZone zoneFor(const entries::Body& body, const season::Season& season) {
    if (const auto* started = std::get_if<entries::SeasonStarted>(&body)) {
        if (const auto named = FarmZone::named(started->zone)) return *named;
    }
    return season.zone();
}

/// The part of an entry that its author decides; commit() adds what the device adds.
StoredEntry draftOf(const Proposal& proposal, EntryId id, PersonId author) {
    StoredEntry draft;
    const auto [kind, version] = entries::kindOf(proposal.body);
    draft.header.id = id;
    draft.header.author = author;
    draft.header.kind = kind;
    draft.header.kindVersion = version;
    draft.header.happened = proposal.happened;
    draft.header.target = proposal.target;
    draft.payload = entries::encode(proposal.body);
    return draft;
}

/// What cannot be read is kept as an entry of an unknown kind, and told.
Entry readable(const StoredEntry& stored, std::vector<Message>& cautions) {
    auto entry = entries::decode(stored);
    if (entry) return std::move(*entry);
    cautions.push_back(
        {Code::entryUnreadable, {stored.header.device.value.text(), stored.header.deviceSequence}});
    return {stored.header, {}};
}

}  // namespace

struct Session::State {
    State(Journal opened, const Files& where, const Clock& time)
        : journal(std::move(opened)), files(where), clock(&time) {}

    Result<void> load();
    Result<void> becomeDevice();
    Result<void> recordKept();
    Result<std::vector<Header>> commit(std::vector<StoredEntry>& drafts,
                                       std::span<const entries::Evidence> evidence = {});
    Result<std::vector<Header>> record(std::span<const Proposal> proposals, PersonId author);
    void publish(season::Season folded);

    [[nodiscard]] std::filesystem::path stateFile(const char* suffix) const {
        return files.stateFolder / (seasonId.value.text() + suffix);
    }

    Journal journal;
    Files files;
    const Clock* clock;
    UuidSource ids;
    EntryId seasonId;  ///< of the first entry
    std::int64_t lamport = 0;
    std::optional<DeviceMemory> memory;  ///< there while the file can be written
    std::vector<Message> cautions;

    mutable std::mutex guard;  ///< of `season` alone
    std::shared_ptr<const season::Season> season = std::make_shared<const season::Season>();
};

void Session::State::publish(season::Season folded) {
    auto next = std::make_shared<const season::Season>(std::move(folded));
    const std::scoped_lock lock{guard};
    season.swap(next);
}

Result<void> Session::State::load() {
    std::vector<season::EntryPointer> entries;
    const auto broken = journal.read([&](StoredEntry&& stored) {
        lamport = std::max(lamport, stored.header.lamport);
        entries.push_back(std::make_shared<const Entry>(readable(stored, cautions)));
    });
    if (!broken) return tl::unexpected(broken.error());
    if (*broken) cautions.push_back((*broken)->message());
    if (entries.empty()) return fail(Code::seasonEmpty, "file", files.season.string());
    seasonId = entries.front()->header.id;
    publish(season::Season::foldPointers(std::move(entries)));
    return {};
}

/// The device that this machine was in this file, or a new one where it was none or the file is behind what
/// it remembers.
Result<void> Session::State::becomeDevice() {
    std::error_code failed;
    std::filesystem::create_directories(files.stateFolder, failed);
    const auto remembered = recall(stateFile(".device"));
    bool known = false;
    if (remembered) {
        const auto hash = journal.hashAt(remembered->device, remembered->sequence);
        if (!hash) return tl::unexpected(hash.error());
        known = remembered->sequence == 0 || *hash == remembered->hash;
        if (!known) cautions.push_back({Code::deviceRenewed, {files.season.string()}});
    }
    const entries::DeviceId device = known ? remembered->device : entries::DeviceId{ids.next(clock->now())};
    const auto head = journal.heads().find(device);
    const journal::Head last = head == journal.heads().end() ? journal::Head{} : head->second;
    auto started = DeviceMemory::start(stateFile(".device"), {device, last.sequence, last.hash});
    if (!started) return tl::unexpected(started.error());
    memory.emplace(std::move(*started));
    return {};
}

/// Records what an earlier session could not.
Result<void> Session::State::recordKept() {
    const auto file = stateFile(".kept.jsonl");
    auto kept = keptIn(file);
    if (!kept) {
        return fail(Code::keptEntriesUnreadable, "file", file.string(), kept.error().place.line);
    }
    if (kept->empty()) return {};
    std::erase_if(*kept, [this](const StoredEntry& entry) {
        return season->fact(entry.header.id) != nullptr;  // its commit came through after all
    });
    const auto recorded = commit(*kept);
    if (!recorded) return tl::unexpected(recorded.error());
    std::error_code failed;
    std::filesystem::remove(file, failed);
    if (!recorded->empty()) {
        cautions.push_back({Code::keptEntriesRecorded, {static_cast<std::int64_t>(recorded->size())}});
    }
    return {};
}

/// Makes the drafts entries of this device, puts them on the disk and folds them.
Result<std::vector<Header>> Session::State::commit(std::vector<StoredEntry>& drafts,
                                                   std::span<const entries::Evidence> evidence) {
    if (!memory) return fail(Code::journalReadOnly, "file", files.season.string());
    const Instant now = clock->now();
    const auto known = journal.heads().find(memory->device());
    journal::Head head = known == journal.heads().end() ? journal::Head{} : known->second;
    std::vector<Header> headers;
    std::vector<season::EntryPointer> added;
    std::int64_t highest = lamport;
    for (StoredEntry& draft : drafts) {
        Entry entry = readable(draft, cautions);  // what is shown is what was stored
        Header& header = draft.header;
        header.device = memory->device();
        header.deviceSequence = ++head.sequence;
        header.lamport = ++highest;
        header.recorded = now;
        header.utcOffsetMinutes = static_cast<int>(zoneFor(entry.body, *season).offsetAt(now).count());
        draft.hash = head.hash = entries::entryHash(head.hash, header, draft.payload);
        entry.header = header;
        headers.push_back(header);
        added.push_back(std::make_shared<const Entry>(std::move(entry)));
    }
    if (const auto appended = journal.append(drafts, evidence); !appended)
        return tl::unexpected(appended.error());
    lamport = highest;
    memory->follow(head.sequence, head.hash);
    publish(season->withAll(added));
    return headers;
}

Result<std::vector<Header>> Session::State::record(std::span<const Proposal> proposals, PersonId author) {
    std::vector<StoredEntry> drafts;
    std::vector<entries::Evidence> evidence;
    for (const Proposal& proposal : proposals) {
        auto checked = accepted(*season, proposal);
        if (!checked) {
            checked.error().place.line = static_cast<std::int64_t>(drafts.size()) + 1;
            return tl::unexpected(checked.error());
        }
        drafts.push_back(draftOf(*checked, EntryId{ids.next(clock->now())}, author));
        if (checked->evidence) evidence.push_back(std::move(*checked->evidence));
    }
    auto recorded = commit(drafts, evidence);
    if (recorded || recorded.error().code() != Code::journalWriteFailed) return recorded;
    const auto file = stateFile(".kept.jsonl");
    if (!keepAside(file, drafts)) return recorded;
    return fail(Code::entryKeptAside, "entry", file.string(), recorded.error().message.arguments.back());
}

Session::Session(std::unique_ptr<State> state) : m_state(std::move(state)) {}
Session::Session(Session&&) noexcept = default;
Session& Session::operator=(Session&&) noexcept = default;
Session::~Session() = default;

Result<Session> Session::create(const Files& files, const entries::SeasonStarted& start, PersonId author,
                                const Clock& clock, std::optional<Instant> begins) {
    if (const auto valid = entries::validate(start); !valid) return tl::unexpected(valid.error());
    auto journal = Journal::create(files.season, clock.now());
    if (!journal) return tl::unexpected(journal.error());
    auto state = std::make_unique<State>(std::move(*journal), files, clock);
    // The first entry names the season, and with it the file in which this machine remembers itself.
    const Instant now = clock.now();
    state->seasonId = EntryId{state->ids.next(now)};
    if (const auto device = state->becomeDevice(); !device) return tl::unexpected(device.error());
    std::vector<StoredEntry> first{
        draftOf({start, begins.value_or(now), std::nullopt}, state->seasonId, author)};
    const auto started = state->commit(first);
    if (!started) return tl::unexpected(started.error());
    return Session{std::move(state)};
}

Result<Session> Session::openForReading(const Files& files, const Clock& clock) {
    auto journal = Journal::open(files.season, journal::Access::read, clock.now());
    if (!journal) return tl::unexpected(journal.error());
    auto state = std::make_unique<State>(std::move(*journal), files, clock);
    if (const auto loaded = state->load(); !loaded) return tl::unexpected(loaded.error());
    return Session{std::move(state)};
}

Result<Session> Session::open(const Files& files, const Clock& clock) {
    auto journal = Journal::open(files.season, journal::Access::write, clock.now());
    if (!journal) return tl::unexpected(journal.error());
    auto state = std::make_unique<State>(std::move(*journal), files, clock);
    if (const auto loaded = state->load(); !loaded) return tl::unexpected(loaded.error());
    if (state->journal.isWritable()) {
        if (const auto device = state->becomeDevice(); !device) return tl::unexpected(device.error());
        if (const auto kept = state->recordKept(); !kept) state->cautions.push_back(kept.error().message);
    }
    return Session{std::move(state)};
}

bool Session::isWritable() const noexcept {
    return m_state->journal.isWritable();
}

const std::optional<Message>& Session::readOnlyReason() const noexcept {
    return m_state->journal.readOnlyReason();
}

const std::vector<Message>& Session::cautions() const noexcept {
    return m_state->cautions;
}

std::shared_ptr<const season::Season> Session::snapshot() const {
    const std::scoped_lock lock{m_state->guard};
    return m_state->season;
}

Result<Header> Session::propose(entries::Body body, Instant happened, PersonId author,
                                std::optional<EntryId> target) {
    const Proposal proposal{std::move(body), happened, target};
    auto recorded = m_state->record({&proposal, 1}, author);
    if (!recorded) {
        recorded.error().place = {};
        return tl::unexpected(recorded.error());
    }
    return std::move(recorded->front());
}

Result<std::vector<Header>> Session::importAll(std::span<const Proposal> proposals, PersonId author) {
    return m_state->record(proposals, author);
}

Result<Header> Session::undo(EntryId id, std::string reason, PersonId author) {
    auto proposal = undoing(*m_state->season, id, std::move(reason), m_state->clock->now());
    if (!proposal) return tl::unexpected(proposal.error());
    return propose(std::move(proposal->body), proposal->happened, author, proposal->target);
}

Result<Header> Session::correct(EntryId id, entries::Body body, Instant happened, PersonId author) {
    return propose(std::move(body), happened, author, id);
}

std::vector<season::EntryPointer> Session::history(EntryId id) const {
    const auto fact = m_state->season->fact(id);
    if (fact == nullptr) return {};
    std::vector<season::EntryPointer> all = fact->changes();
    all.push_back(std::make_shared<const Entry>(fact->stated()));
    std::sort(all.begin(), all.end(), [](const auto& a, const auto& b) {
        return std::tie(a->header.lamport, a->header.device) < std::tie(b->header.lamport, b->header.device);
    });
    return all;
}

Result<std::optional<std::string>> Session::evidence(const Hash& hash) const {
    return m_state->journal.evidence(hash);
}

Hash Session::head() const {
    return journal::headHash(m_state->journal.heads());
}

Result<void> Session::quickCheck() const {
    return m_state->journal.quickCheck();
}

Result<void> Session::backupTo(const std::filesystem::path& copy) const {
    return m_state->journal.backupTo(copy);
}

}  // namespace treadwell::session
