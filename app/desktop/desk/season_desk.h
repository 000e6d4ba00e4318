#pragma once

#include "app/desktop/desk/season_file.h"

#include <QObject>
#include <QThread>
#include <cstdint>
#include <functional>

namespace treadwell::desk {

/// One thing asked of the file.
using Ticket = std::uint64_t;

/// Stands between the pages and the season's file, which lives on a thread of its own: a page asks and goes
/// on at once, and hears later whether the entry lies on the disk.
class SeasonDesk final : public QObject {
    Q_OBJECT

  public:
    SeasonDesk(std::unique_ptr<SeasonFile> file, const Clock& clock, QObject* parent = nullptr);
    /// Waits for all that was asked: nothing that a page has shown as pending is dropped.
    ~SeasonDesk() override;

    [[nodiscard]] const SeasonPointer& season() const noexcept { return m_season; }
    [[nodiscard]] bool isWritable() const noexcept { return m_writable; }
    [[nodiscard]] const std::optional<Message>& readOnlyReason() const noexcept { return m_readOnlyReason; }
    [[nodiscard]] Instant now() const { return m_clock.now(); }
    /// What was found when the file was opened.
    [[nodiscard]] const std::vector<Message>& cautions() const noexcept { return m_cautions; }

    /// Asks for an entry that happens now. committed() or failed() with this ticket follows.
    Ticket propose(const entries::Body& body);
    Ticket takeBack(entries::EntryId entry);
    /// Who makes the coming entries.
    void setAuthor(entries::PersonId author) noexcept { m_author = author; }

  signals:
    void committed(treadwell::desk::Ticket ticket);
    void failed(treadwell::desk::Ticket ticket, const treadwell::Error& error);

  private:
    Ticket ask(std::function<Result<Committed>(SeasonFile&)> work);
    void answer(Ticket ticket, const Result<Committed>& result);

    const Clock& m_clock;
    std::unique_ptr<SeasonFile> m_file;  ///< touched by the thread alone once it runs
    SeasonPointer m_season;
    bool m_writable;
    std::optional<Message> m_readOnlyReason;
    std::vector<Message> m_cautions;
    Ticket m_lastTicket = 0;
    entries::PersonId m_author;
    QThread m_thread;
    QObject* m_worker;  ///< lives on the thread; what is asked is queued to it
};

}  // namespace treadwell::desk
