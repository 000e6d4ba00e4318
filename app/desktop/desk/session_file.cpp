#include "app/desktop/desk/session_file.h"

#include "core/session/session.h"

namespace treadwell::desk {

namespace {

class SessionFile final : public SeasonFile {
  public:
    explicit SessionFile(session::Session session) : m_session{std::move(session)} {}

    SeasonPointer season() const override { return m_session.snapshot(); }
    session::Standing standing() const override { return m_session.standing(); }

    Result<entries::EntryId> append(const entries::Body& body, Instant happened,
                                    entries::PersonId author) override {
        return idOf(m_session.propose(body, happened, author));
    }
    Result<entries::EntryId> takeBack(entries::EntryId entry, entries::PersonId author) override {
        return idOf(m_session.undo(entry, {}, author));
    }
    void lookAgain() override { m_session.lookAgain(); }
    void clockIsRight() override { m_session.clockIsRight(); }

  private:
    static Result<entries::EntryId> idOf(const Result<entries::Header>& header) {
        return header.map([](const entries::Header& made) { return made.id; });
    }

    session::Session m_session;
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
