#include "app/desktop/desk/season_desk.h"

#include "app/desktop/desk/corrected_clock.h"
#include "core/season/rolling.h"
#include "core/session/sheet_origin.h"

#include <algorithm>
#include <chrono>
#include <utility>

namespace treadwell::desk {

namespace {

using namespace std::chrono_literals;

constexpr auto kLookAgain = 3s;

/// What makes `person` the one who holds the tablet, instead of `holder`.
std::vector<session::Proposal> tabletTo(entries::PersonId person,
                                        const std::optional<season::ShiftSpan>& holder,
                                        session::Proposal touch) {
    std::vector<session::Proposal> shifts;
    if (holder && holder->person != person) {
        touch.body = entries::Shift{holder->person, true, holder->duty, false, holder->tractor};
        shifts.push_back(touch);
    }
    touch.body = entries::Shift{person, true, entries::Duty::supervising, true, {}};
    shifts.push_back(std::move(touch));
    return shifts;
}

Result<entries::PersonId> personCalled(const std::string& name, SeasonFile& file) {
    for (const auto& [id, known] : file.people()) {
        if (known == name) return id;
    }
    return file.addPerson(name);
}

}  // namespace

SeasonDesk::SeasonDesk(std::unique_ptr<SeasonFile> file, const Clock& clock, QObject* parent)
    : QObject{parent},
      m_clock{std::make_unique<CorrectedClock>(clock)},
      m_file{std::move(file)},
      m_season{m_file->season()},
      m_standing{m_file->standing()},
      m_people{m_file->people()},
      m_head{m_file->head()},
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
        const auto take = [this, then, season = m_file->season(), standing = m_file->standing(),
                           people = m_file->people(), head = m_file->head()] {
            const bool isAnother = std::exchange(m_season, season) != season;
            const bool stands = std::exchange(m_standing, standing) == standing;
            m_people = people;
            m_head = head;
            then(isAnother);
            if (!stands) emit changed();
        };
        QMetaObject::invokeMethod(this, take, Qt::QueuedConnection);
    });
}

Ticket SeasonDesk::askFor(std::function<Result<void>(SeasonFile&)> work) {
    const Ticket ticket = ++m_lastTicket;
    auto result = std::make_shared<Result<void>>();
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

entries::PersonId SeasonDesk::author() const {
    const auto holder = season::tabletHolder(*m_season, now());
    return holder ? holder->person : entries::PersonId{};
}

std::optional<std::string> SeasonDesk::holder() const {
    const auto holder = season::tabletHolder(*m_season, now());
    if (!holder) return std::nullopt;
    const auto named = m_people.find(holder->person);
    return named == m_people.end() ? std::string{} : named->second;
}

Instant SeasonDesk::now() const {
    return m_clock->now();
}

Ticket SeasonDesk::propose(const entries::Body& body) {
    return propose(std::vector{touch(body)});
}

session::Proposal SeasonDesk::touch(const entries::Body& body) const {
    return {body, now(), {}, {}, m_clock->elapsed()};
}

Ticket SeasonDesk::propose(std::vector<session::Proposal> proposals) {
    return askFor([proposals = std::move(proposals), author = author()](SeasonFile& file) {
        return file.record(proposals, author);
    });
}

Ticket SeasonDesk::proposeAs(const std::string& name, std::vector<session::Proposal> proposals) {
    return askFor([name, proposals = std::move(proposals)](SeasonFile& file) -> Result<void> {
        const auto person = personCalled(name, file);
        if (!person) return Unexpected{person.error()};
        return file.record(proposals, *person);
    });
}

review::SheetOrigin SeasonDesk::originOf(const season::Day& day) const {
    return session::originOf(*m_season, day, m_people, m_head);
}

Ticket SeasonDesk::takeBack(entries::EntryId entry) {
    return askFor([entry, author = author()](SeasonFile& file) { return file.takeBack(entry, author); });
}

void SeasonDesk::lookAgain() {
    if (std::exchange(m_looking, true)) return;  // a slow disk is not asked twice
    ask([](SeasonFile& file) { file.lookAgain(); },
        [this](bool isAnother) {
            m_looking = false;
            if (isAnother) emit changed();
        });
}

void SeasonDesk::clockIsRight(std::optional<Instant> right) {
    const auto off = m_clock->correctionTo(right.value_or(now()));
    m_clock->correctBy(off);
    ask([off](SeasonFile& file) { file.clockIsOffBy(off); }, [](bool) {});
}

Ticket SeasonDesk::takeOver() {
    return askFor([](SeasonFile& file) { return file.takeOver(); });
}

void SeasonDesk::askForCopies(const CopyWish& wish, std::function<void(const Result<Message>&)> then) {
    auto stand = std::make_shared<Result<Message>>();
    ask([stand, wish](SeasonFile& file) { *stand = file.copies(wish); },
        [stand, then = std::move(then)](bool) { then(*stand); });
}

Ticket SeasonDesk::takeTablet(const std::string& name) {
    return askFor([name, touched = touch({})](SeasonFile& file) -> Result<void> {
        const auto person = personCalled(name, file);
        if (!person) return Unexpected{person.error()};
        const auto holder = season::tabletHolder(*file.season(), touched.happened);
        return file.record(tabletTo(*person, holder, touched), *person);
    });
}

std::optional<Ticket> SeasonDesk::endShift() {
    const auto holder = season::tabletHolder(*m_season, now());
    if (!holder) return std::nullopt;
    return propose(entries::Shift{holder->person, false, holder->duty, false, holder->tractor});
}

}  // namespace treadwell::desk
