#pragma once

#include "app/desktop/desk/season_file.h"
#include "core/review/day_sheet.h"

#include <QObject>
#include <QThread>
#include <QTimer>
#include <cstdint>
#include <functional>

namespace treadwell::desk {

class CorrectedClock;

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
    [[nodiscard]] Instant now() const;

    [[nodiscard]] const People& people() const noexcept { return m_people; }
    /// What a sheet of this day carries of the file.
    [[nodiscard]] review::SheetOrigin originOf(const season::Day& day) const;
    /// The name of who holds the tablet and makes the coming entries; none where nobody has taken it.
    [[nodiscard]] std::optional<std::string> holder() const;

    /// What happens with this touch.
    [[nodiscard]] session::Proposal touch(const entries::Body& body) const;
    /// Asks for an entry that happens now. committed() or failed() with this ticket follows.
    Ticket propose(const entries::Body& body);
    /// Entries of other times, and corrections: all of them or none.
    Ticket propose(std::vector<session::Proposal> proposals);
    /// The same in the name of somebody, a new person where nobody has it yet.
    Ticket proposeAs(const std::string& name, std::vector<session::Proposal> proposals);
    Ticket takeBack(entries::EntryId entry);
    /// Somebody takes the tablet, and with it begins a shift where none is under way; a name that nobody has
    /// yet is a new person. Who held it goes on without it.
    Ticket takeTablet(const std::string& name);
    /// The shift of who holds the tablet ends; with nobody holding it nothing is asked.
    std::optional<Ticket> endShift();

    /// Asks whether another program has written and whether the disk is well again; comes by itself every few
    /// seconds.
    void lookAgain();
    /// Answers the clock's question: what the machine shows is right, or `right` is.
    void clockIsRight(std::optional<Instant> right = {});
    /// Asks for the right to write, which another program has given back.
    Ticket takeOver();
    /// Asks about the copies after each day's close; `then` hears how they stand, on this thread.
    void askForCopies(const CopyWish& wish, std::function<void(const Result<Message>&)> then);

  signals:
    void committed(treadwell::desk::Ticket ticket);
    void failed(treadwell::desk::Ticket ticket, const treadwell::Error& error);
    /// The standing, or the season by what this desk was not just told of, is no longer what it was.
    void changed();

  private:
    void ask(std::function<void(SeasonFile&)> work, std::function<void(bool)> then);
    Ticket askFor(std::function<Result<void>(SeasonFile&)> work);
    [[nodiscard]] entries::PersonId author() const;

    std::unique_ptr<CorrectedClock> m_clock;
    std::unique_ptr<SeasonFile> m_file;  ///< touched by the thread alone once it runs
    SeasonPointer m_season;
    session::Standing m_standing;
    Ticket m_lastTicket = 0;
    People m_people;
    Hash m_head;
    bool m_looking = false;
    QTimer m_tick;
    QThread m_thread;
    QObject* m_worker;  ///< lives on the thread; what is asked is queued to it
};

}  // namespace treadwell::desk
