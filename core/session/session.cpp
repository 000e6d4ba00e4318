#include "core/session/session.h"

#include "core/session/copies.h"
#include "core/session/state.h"

namespace treadwell::session {

using entries::EntryId;
using entries::Header;
using entries::PersonId;
using entries::StoredEntry;
using journal::Journal;

namespace {

Result<Header> single(Result<std::vector<Header>> recorded) {
    if (recorded) return std::move(recorded->front());
    recorded.error().place = {};
    return tl::unexpected(recorded.error());
}

}  // namespace

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
    const auto started = state->commit(first, {});
    if (!started) return tl::unexpected(started.error());
    return Session{std::move(state)};
}

Result<Session> Session::open(const Files& files, const Clock& clock, Purpose purpose) {
    const auto access = purpose == Purpose::writing ? journal::Access::write : journal::Access::read;
    auto journal = Journal::open(files.season, access, clock.now());
    if (!journal) return tl::unexpected(journal.error());
    auto state = std::make_unique<State>(std::move(*journal), files, clock);
    if (const auto loaded = state->load(); !loaded) return tl::unexpected(loaded.error());
    if (state->journal.isWritable()) {
        if (const auto device = state->becomeDevice(); !device) return tl::unexpected(device.error());
        state->takeKept();
    }
    return Session{std::move(state)};
}

Standing Session::standing() const {
    const State& state = *m_state;
    return {state.journal.isWritable(),
            state.journal.readOnlyReason(),
            state.cautions,
            static_cast<std::int64_t>(state.unsaved.entries.size()),
            state.unsavedReason,
            state.journal.isWritable() ? state.clockQuestion() : std::nullopt};
}

std::shared_ptr<const season::Season> Session::snapshot() const {
    const std::scoped_lock lock{m_state->guard};
    return m_state->season;
}

Result<Header> Session::propose(entries::Body body, Instant happened, PersonId author,
                                std::optional<EntryId> target) {
    const Proposal proposal{std::move(body), happened, target};
    return single(m_state->record({&proposal, 1}, author));
}

Result<std::vector<Header>> Session::importAll(std::span<const Proposal> proposals, PersonId author) {
    return m_state->record(proposals, author);
}

Result<Header> Session::undo(EntryId id, std::string reason, PersonId author) {
    auto proposal = undoing(*m_state->season, id, std::move(reason), m_state->clock->now());
    if (!proposal) return tl::unexpected(proposal.error());
    proposal->touched = m_state->clock->elapsed();
    return single(m_state->record({&*proposal, 1}, author));
}

Result<std::optional<std::string>> Session::evidence(const Hash& hash) const {
    return m_state->journal.evidence(hash);
}

People Session::people() {
    return {m_state->journal, m_state->ids, *m_state->clock};
}

Hash Session::head() const {
    return journal::headHash(m_state->journal.heads());
}

std::optional<Message> Session::check() {
    const auto broken = m_state->journal.verify();
    return broken ? std::optional{broken->message()} : std::nullopt;
}

void Session::lookAgain() {
    m_state->lookAtStructure();
    if (!m_state->memory) {
        m_state->refresh();
    } else {
        m_state->resumeAndTell();
    }
}

void Session::clockIsRight() {
    m_state->clockIsRight();
}

Result<void> Session::copyToSecondPlace() const {
    return m_state->copyToSecondPlace(m_state->clock->now());
}

Result<void> Session::backupTo(const std::filesystem::path& copy) const {
    return m_state->journal.backupTo(copy);
}

}  // namespace treadwell::session
