#pragma once

#include "app/desktop/desk/season_file.h"

#include <QObject>
#include <QThread>
#include <QTimer>
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
    [[nodiscard]] const session::Standing& standing() const noexcept { return m_standing; }
    [[nodiscard]] Instant now() const { return m_clock.now(); }

    /// Asks for an entry that happens now. committed() or failed() with this ticket follows.
    Ticket propose(const entries::Body& body);
    Ticket takeBack(entries::EntryId entry);
    /// Who makes the coming entries.
    void setAuthor(entries::PersonId author) noexcept { m_author = author; }

    /// Asks whether another program has written and whether the disk is well again; comes by itself every few
    /// seconds.
    void lookAgain();
    void clockIsRight();

  signals:
    void committed(treadwell::desk::Ticket ticket);
    void failed(treadwell::desk::Ticket ticket, const treadwell::Error& error);
    /// The standing, or the season by what this desk was not just told of, is no longer what it was.
    void changed();

  private:
    void ask(std::function<void(SeasonFile&)> work, std::function<void(bool)> then);
    Ticket askForEntry(std::function<Result<entries::EntryId>(SeasonFile&)> work);

    const Clock& m_clock;
    std::unique_ptr<SeasonFile> m_file;  ///< touched by the thread alone once it runs
    SeasonPointer m_season;
    session::Standing m_standing;
    Ticket m_lastTicket = 0;
    entries::PersonId m_author;
    bool m_looking = false;
    QTimer m_tick;
    QThread m_thread;
    QObject* m_worker;  ///< lives on the thread; what is asked is queued to it
};

}  // namespace treadwell::desk
