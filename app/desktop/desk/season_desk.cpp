#include "app/desktop/desk/season_desk.h"

#include <utility>

namespace treadwell::desk {

SeasonDesk::SeasonDesk(std::unique_ptr<SeasonFile> file, const Clock& clock, QObject* parent)
    : QObject{parent},
      m_clock{clock},
      m_file{std::move(file)},
      m_season{m_file->season()},
      m_writable{m_file->isWritable()},
      m_readOnlyReason{m_file->readOnlyReason()},
      m_cautions{m_file->cautions()},
      m_worker{new QObject} {
    m_worker->moveToThread(&m_thread);
    connect(&m_thread, &QThread::finished, m_worker, &QObject::deleteLater);
    m_thread.start();
}

SeasonDesk::~SeasonDesk() {
    // Queued behind all that was asked.
    QMetaObject::invokeMethod(m_worker, [this] { m_thread.quit(); });
    m_thread.wait();
}

Ticket SeasonDesk::ask(std::function<Result<Committed>(SeasonFile&)> work) {
    const Ticket ticket = ++m_lastTicket;
    QMetaObject::invokeMethod(m_worker, [this, ticket, work = std::move(work)] {
        QMetaObject::invokeMethod(
            this, [this, ticket, result = work(*m_file)] { answer(ticket, result); }, Qt::QueuedConnection);
    });
    return ticket;
}

void SeasonDesk::answer(Ticket ticket, const Result<Committed>& result) {
    if (!result) {
        emit failed(ticket, result.error());
        return;
    }
    m_season = result->season;
    emit committed(ticket);
}

Ticket SeasonDesk::propose(const entries::Body& body) {
    return ask([body, happened = now(), author = m_author](SeasonFile& file) {
        return file.append(body, happened, author);
    });
}

Ticket SeasonDesk::takeBack(entries::EntryId entry) {
    return ask([entry, author = m_author](SeasonFile& file) { return file.takeBack(entry, author); });
}

}  // namespace treadwell::desk
