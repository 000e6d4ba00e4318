#include "core/session/state.h"

#include "core/journal/codes.h"
#include "core/session/codes.h"
#include "core/session/copies.h"
#include "core/session/kept_aside.h"

#include <algorithm>
#include <utility>

namespace treadwell::session {

using entries::Entry;
using entries::EntryId;
using entries::Header;
using entries::PersonId;
using entries::StoredEntry;

namespace {

/// Copies at a day's close: two weeks of a harvest.
constexpr int kSecondCopies = 14;

FarmZone zoneFor(const entries::Body& body, const season::Season& season) {
    if (const auto* started = std::get_if<entries::SeasonStarted>(&body)) {
        if (const auto named = FarmZone::named(started->zone)) return *named;
    }
    return season.zone();
}

/// What cannot be read is kept as an entry of an unknown kind, and told.
Entry readable(const StoredEntry& stored, std::vector<Message>& cautions) {
    auto entry = entries::decode(stored);
    if (entry) return std::move(*entry);
    cautions.push_back(
        {code::entryUnreadable, {stored.header.device.value.text(), stored.header.deviceSequence}});
    return {stored.header, {}};
}

}  // namespace

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

void Session::State::publish(season::Season folded) {
    auto next = std::make_shared<const season::Season>(std::move(folded));
    const std::scoped_lock lock{guard};
    season.swap(next);
}

season::EntryPointer Session::State::seen(const StoredEntry& stored) {
    lamport = std::max(lamport, stored.header.lamport);
    lastRecorded = std::max(lastRecorded, stored.header.recorded);
    return std::make_shared<const Entry>(readable(stored, cautions));
}

Result<void> Session::State::load() {
    std::vector<season::EntryPointer> entries;
    const auto broken = journal.read([&](StoredEntry&& stored) { entries.push_back(seen(stored)); });
    warnOf(broken);
    if (entries.empty()) return fail(code::seasonEmpty, "file", files.season.string());
    seasonId = entries.front()->header.id;
    publish(season::Season::foldPointers(std::move(entries)));
    return {};
}

/// Once, however often it is looked at.
void Session::State::warnOf(const std::optional<journal::BrokenPlace>& broken) {
    if (!broken) return;
    Message message = broken->message();
    if (std::find(cautions.begin(), cautions.end(), message) == cautions.end())
        cautions.push_back(std::move(message));
}

void Session::State::refresh() {
    std::vector<season::EntryPointer> entries;
    const auto broken = journal.readNew([&](StoredEntry&& stored) { entries.push_back(seen(stored)); });
    warnOf(broken);
    if (!entries.empty()) publish(season->withAll(entries));
}

/// At opening every entry was held to its chain; that the file's pages hang together is looked at once
/// afterwards, when nobody waits for the season any more.
void Session::State::lookAtStructure() {
    if (std::exchange(structureIsKnown, true)) return;
    warnOf(journal.verify(journal::Look::quick));
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
        if (!known) cautions.push_back({code::deviceRenewed, {files.season.string()}});
    }
    const entries::DeviceId device = known ? remembered->device : entries::DeviceId{ids.next(clock->now())};
    const auto head = journal.heads().find(device);
    const journal::Head last = head == journal.heads().end() ? journal::Head{} : head->second;
    auto started = DeviceMemory::start(stateFile(".device"), {device, last.sequence, last.hash});
    if (!started) return tl::unexpected(started.error());
    memory.emplace(std::move(*started));
    return {};
}

/// Makes the drafts entries of this device, puts them on the disk and folds them.
Result<std::vector<Header>> Session::State::commit(std::vector<StoredEntry>& drafts,
                                                   std::span<const entries::Evidence> evidence) {
    if (!memory) return fail(code::journalReadOnly, "file", files.season.string());
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
    lastRecorded = std::max(lastRecorded, now);
    memory->follow(head.sequence, head.hash);
    publish(season->withAll(added));
    const bool closed = std::any_of(added.begin(), added.end(), [](const auto& entry) {
        return std::holds_alternative<entries::DayClosed>(entry->body);
    });
    if (closed) {
        if (const auto copied = copyToSecondPlace(now); !copied) cautions.push_back(copied.error().message);
    }
    return headers;
}

/// What an earlier session could not record.
void Session::State::takeKept() {
    const auto file = keptFile();
    auto kept = keptIn(file);
    if (!kept) {
        keptIsReadable = false;
        cautions.push_back({code::keptEntriesUnreadable, {file.string(), kept.error().place.line}});
        return;
    }
    unsaved = std::move(*kept);
    takeTimesFromRun();
    resumeAndTell();
}

/// After a disk's failure a commit may have come through although it was reported as failed.
Result<void> Session::State::reopen() {
    if (auto opened = journal.reopen(clock->now()); !opened) return opened;
    std::vector<season::EntryPointer> arrived;
    const auto broken = journal.read([&](StoredEntry&& stored) {
        if (season->fact(stored.header.id) == nullptr) arrived.push_back(seen(stored));
    });
    publish(season->withAll(arrived));
    if (broken) return Unexpected{Error{broken->message(), "file", {}}};
    return {};
}

/// What waits for the clock's question alone is left.
Result<void> Session::State::resume() {
    std::vector<StoredEntry>& entries = unsaved.entries;
    if (entries.empty()) return {};
    if (!journal.isWritable()) {
        if (auto opened = reopen(); !opened) return tl::unexpected(opened.error());
    }
    const auto isRecorded = [this](const StoredEntry& entry) {
        return season->fact(entry.header.id) != nullptr;
    };
    std::erase_if(entries, isRecorded);
    const bool isAsked = clockQuestion().has_value();
    std::vector<StoredEntry> ready;
    std::copy_if(entries.begin(), entries.end(), std::back_inserter(ready),
                 [&](const StoredEntry& entry) { return !isAsked || !isUntimed(entry, unsaved); });
    if (!ready.empty()) {
        if (const auto recorded = commit(ready, unsaved.evidence); !recorded) {
            return tl::unexpected(recorded.error());
        }
        cautions.push_back({code::keptEntriesRecorded, {static_cast<std::int64_t>(ready.size())}});
        std::erase_if(entries, isRecorded);
    }
    if (!entries.empty()) {
        unsavedReason = Message{code::entryWaitsForClock, {keptFile().string()}};
        return {};
    }
    if (std::exchange(timesAreGuessed, false)) cautions.push_back({code::keptTimesGuessed, {}});
    unsaved = {};
    unsavedReason.reset();
    std::error_code failed;
    if (keptIsReadable) std::filesystem::remove(keptFile(), failed);
    return {};
}

void Session::State::resumeAndTell() {
    if (const auto recorded = resume(); !recorded) unsavedReason = recorded.error().message;
}

/// Here, and in a file elsewhere.
Result<void> Session::State::setAside(const Kept& drafts) {
    unsaved.entries.insert(unsaved.entries.end(), drafts.entries.begin(), drafts.entries.end());
    unsaved.evidence.insert(unsaved.evidence.end(), drafts.evidence.begin(), drafts.evidence.end());
    unsaved.untimed.insert(unsaved.untimed.end(), drafts.untimed.begin(), drafts.untimed.end());
    return keepAside(keptFile(), drafts);
}

/// Keeps what could not be recorded; gives the sentence that says so.
Error Session::State::keep(const Kept& drafts, const Error& error) {
    const auto* said = std::get_if<std::string>(&error.message.arguments.back());
    const std::string reason = said == nullptr ? std::string{toText(error.code())} : *said;
    unsavedReason = setAside(drafts) ? Message{code::entryKeptAside, {keptFile().string(), reason}}
                                     : Message{code::entryKeptInMemory, {reason}};
    return {*unsavedReason, "entry", {}};
}

/// The same for what cannot be recorded before somebody says what the time is.
Error Session::State::hold(const Kept& drafts) {
    const auto kept = setAside(drafts);
    unsavedReason = kept ? Message{code::entryWaitsForClock, {keptFile().string()}}
                         : Message{code::entryKeptInMemory, {kept.error().message.arguments.back()}};
    return {*unsavedReason, "entry", {}};
}

Result<std::vector<Header>> Session::State::record(std::span<const Proposal> proposals, PersonId author) {
    if (!memory) return fail(code::journalReadOnly, "file", files.season.string());
    const auto resumed = resume();
    std::vector<Proposal> checked;
    for (const Proposal& proposal : proposals) {
        auto one = accepted(*season, proposal);
        if (!one) {
            one.error().place.line = static_cast<std::int64_t>(checked.size()) + 1;
            return tl::unexpected(one.error());
        }
        checked.push_back(std::move(*one));
    }
    Kept drafts = draftsOf(std::move(checked), author);
    if (!resumed) return Unexpected{keep(drafts, resumed.error())};
    if (!drafts.untimed.empty()) return Unexpected{hold(drafts)};
    auto recorded = commit(drafts.entries, drafts.evidence);
    if (recorded || recorded.error().code() != code::journalWriteFailed) return recorded;
    return Unexpected{keep(drafts, recorded.error())};
}

Result<void> Session::State::copyToSecondPlace(Instant now) const {
    const auto place = secondPlace(files.stateFolder);
    if (!place) return {};
    const auto copied = backUpInto(journal, *place, now, kSecondCopies);
    if (copied) return {};
    return fail(code::secondPlaceFailed, "file", place->string(), copied.error().message.arguments.back());
}

}  // namespace treadwell::session
