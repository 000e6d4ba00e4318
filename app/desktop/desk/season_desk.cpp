#include "app/desktop/desk/season_desk.h"

#include <chrono>
#include <utility>

namespace treadwell::desk {

namespace {

using namespace std::chrono_literals;

constexpr auto kLookAgain = 3s;

}  // namespace

SeasonDesk::SeasonDesk(std::unique_ptr<SeasonFile> file, const Clock& clock, QObject* parent)
    : QObject{parent},
      m_clock{clock},
      m_file{std::move(file)},
      m_season{m_file->season()},
      m_standing{m_file->standing()},
      m_worker{new QObject} {
    m_worker->moveToThread(&m_thread);
    connect(&m_thread, &QThread::finished, m_worker, &QObject::deleteLater);
    m_thread.start();
    connect(&m_tick, &QTimer::timeout, this, &SeasonDesk::lookAgain);
    m_tick.start(kLookAgain);
}

SeasonDesk::~SeasonDesk() {
    // Queued behind all that was asked.
    QMetaObject::invokeMethod(m_worker, [this] { m_thread.quit(); });
    m_thread.wait();
}

/// Does the work on the file's thread, and `then` on this one, told whether another season has come of it.
void SeasonDesk::ask(std::function<void(SeasonFile&)> work, std::function<void(bool)> then) {
    QMetaObject::invokeMethod(m_worker, [this, work = std::move(work), then = std::move(then)] {
        work(*m_file);
        const auto take = [this, then, season = m_file->season(), standing = m_file->standing()] {
            const bool isAnother = std::exchange(m_season, season) != season;
            const bool stands = std::exchange(m_standing, standing) == standing;
            then(isAnother);
            if (!stands) emit changed();
        };
        QMetaObject::invokeMethod(this, take, Qt::QueuedConnection);
    });
}

Ticket SeasonDesk::askForEntry(std::function<Result<entries::EntryId>(SeasonFile&)> work) {
    const Ticket ticket = ++m_lastTicket;
    auto result = std::make_shared<Result<entries::EntryId>>();
    ask([result, work = std::move(work)](SeasonFile& file) { *result = work(file); },
        [this, ticket, result](bool) {
            if (*result) {
                emit committed(ticket);
            } else {
                emit failed(ticket, result->error());
            }
        });
    return ticket;
}

Ticket SeasonDesk::propose(const entries::Body& body) {
    return askForEntry([body, happened = now(), author = m_author](SeasonFile& file) {
        return file.append(body, happened, author);
    });
}

Ticket SeasonDesk::takeBack(entries::EntryId entry) {
    return askForEntry([entry, author = m_author](SeasonFile& file) { return file.takeBack(entry, author); });
}

void SeasonDesk::lookAgain() {
    if (std::exchange(m_looking, true)) return;  // a slow disk is not asked twice
    ask([](SeasonFile& file) { file.lookAgain(); },
        [this](bool isAnother) {
            m_looking = false;
            if (isAnother) emit changed();
        });
}

void SeasonDesk::clockIsRight() {
    ask([](SeasonFile& file) { file.clockIsRight(); }, [](bool) {});
}

}  // namespace treadwell::desk
