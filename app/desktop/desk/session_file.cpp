#include "app/desktop/desk/session_file.h"

#include "app/desktop/desk/corrected_clock.h"
#include "core/session/copies.h"
#include "core/session/session.h"

namespace treadwell::desk {

namespace {

class SessionFile final : public SeasonFile {
  public:
    SessionFile(session::Session session, session::Files files, std::unique_ptr<CorrectedClock> clock)
        : m_clock{std::move(clock)}, m_session{std::move(session)}, m_files{std::move(files)} {}

    SeasonPointer season() const override { return m_session.snapshot(); }
    session::Standing standing() const override { return m_session.standing(); }

    People people() const override { return m_session.people().all().value_or(People{}); }
    Hash head() const override { return m_session.head(); }
    Result<entries::PersonId> addPerson(const std::string& name) override {
        return m_session.people().add(name);
    }

    Result<void> record(std::span<const session::Proposal> proposals, entries::PersonId author) override {
        return done(m_session.importAll(proposals, author));
    }
    Result<void> takeBack(entries::EntryId entry, entries::PersonId author) override {
        return done(m_session.undo(entry, {}, author));
    }
    void lookAgain() override { m_session.lookAgain(); }
    void clockIsOffBy(std::chrono::microseconds off) override {
        m_clock->correctBy(off);
        m_session.clockIsRight();
    }
    Result<void> takeOver() override {
        auto opened = session::Session::open(m_files, *m_clock);
        if (!opened) return Unexpected{opened.error()};
        m_session = std::move(*opened);
        return {};
    }
    Result<Message> copies(const CopyWish& wish) override {
        Result<void> done;
        if (const auto* place = std::get_if<std::filesystem::path>(&wish)) {
            done = session::chooseSecondPlace(m_files.stateFolder, *place);
        } else if (std::holds_alternative<CopyNow>(wish)) {
            done = m_session.copyToSecondPlace();
        }
        if (!done) return Unexpected{done.error()};
        return session::copiesStand(m_files.stateFolder, m_files.season);
    }

  private:
    template <class Recorded>
    static Result<void> done(const Result<Recorded>& recorded) {
        if (!recorded) return Unexpected{recorded.error()};
        return {};
    }

    std::unique_ptr<CorrectedClock> m_clock;  ///< outlives the session
    mutable session::Session m_session;       // people() is not const of one
    session::Files m_files;
};

Result<std::unique_ptr<SeasonFile>> opened(const session::Files& files, const Clock& clock,
                                           session::Purpose purpose) {
    auto corrected = std::make_unique<CorrectedClock>(clock);
    auto session = session::Session::open(files, *corrected, purpose);
    if (!session) return Unexpected{session.error()};
    return std::make_unique<SessionFile>(std::move(*session), files, std::move(corrected));
}

}  // namespace

Result<std::unique_ptr<SeasonFile>> openSeason(const std::filesystem::path& season,
                                               const std::filesystem::path& stateFolder, const Clock& clock) {
    return opened({season, stateFolder}, clock, session::Purpose::writing);
}

Result<std::unique_ptr<SeasonFile>> openSeasonForReading(const std::filesystem::path& season,
                                                         const std::filesystem::path& stateFolder,
                                                         const Clock& clock) {
    return opened({season, stateFolder}, clock, session::Purpose::reading);
}

}  // namespace treadwell::desk
