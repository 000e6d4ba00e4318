#include "app/desktop/desk/session_file.h"

#include "core/session/session.h"

namespace treadwell::desk {

namespace {

class SessionFile final : public SeasonFile {
  public:
    explicit SessionFile(session::Session session) : m_session{std::move(session)} {}

    SeasonPointer season() const override { return m_session.snapshot(); }
    bool isWritable() const override { return m_session.isWritable(); }
    std::optional<Message> readOnlyReason() const override { return m_session.readOnlyReason(); }
    std::vector<Message> cautions() const override { return m_session.cautions(); }

    Result<Committed> append(const entries::Body& body, Instant happened, entries::PersonId author) override {
        return committed(m_session.propose(body, happened, author));
    }
    Result<Committed> takeBack(entries::EntryId entry, entries::PersonId author) override {
        return committed(m_session.undo(entry, {}, author));
    }

  private:
    Result<Committed> committed(const Result<entries::Header>& header) const {
        if (!header) return Unexpected{header.error()};
        return Committed{header->id, m_session.snapshot()};
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
