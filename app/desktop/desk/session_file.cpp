#include "app/desktop/desk/session_file.h"

#include "core/session/session.h"

namespace treadwell::desk {

namespace {

class SessionFile final : public SeasonFile {
  public:
    explicit SessionFile(session::Session session) : m_session{std::move(session)} {}

    SeasonPointer season() const override { return m_session.snapshot(); }
    session::Standing standing() const override { return m_session.standing(); }

    People people() const override { return m_session.people().all().value_or(People{}); }
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
    void clockIsRight() override { m_session.clockIsRight(); }

  private:
    template <class Recorded>
    static Result<void> done(const Result<Recorded>& recorded) {
        if (!recorded) return Unexpected{recorded.error()};
        return {};
    }

    mutable session::Session m_session;  // people() is not const of one
};

Result<std::unique_ptr<SeasonFile>> fileOf(Result<session::Session> opened) {
    if (!opened) return Unexpected{opened.error()};
    return std::make_unique<SessionFile>(std::move(*opened));
}

}  // namespace

Result<std::unique_ptr<SeasonFile>> openSeason(const std::filesystem::path& season,
                                               const std::filesystem::path& stateFolder, const Clock& clock) {
    return fileOf(session::Session::open({season, stateFolder}, clock));
}

Result<std::unique_ptr<SeasonFile>> openSeasonForReading(const std::filesystem::path& season,
                                                         const std::filesystem::path& stateFolder,
                                                         const Clock& clock) {
    return fileOf(session::Session::openForReading({season, stateFolder}, clock));
}

}  // namespace treadwell::desk
