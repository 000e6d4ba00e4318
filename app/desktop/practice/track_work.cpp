#include "app/desktop/practice/track_work.h"

#include <algorithm>
#include <numeric>

namespace treadwell::practice_page {

namespace {

Result<Opinion> opinionOf(const season::Season& season, const density::Readings& readings) {
    if (!readings.layers) return Unexpected{Error{*readings.silo.reason, "silo", {}}};
    auto replay = passes::replay(season, *readings.layers, density::Filled::whenFull);
    if (!replay) return Unexpected{replay.error()};
    Opinion opinion{*std::move(replay), readings.silo.estimate, {}};
    for (std::size_t k = 0; k < opinion.replay.layers.size(); ++k)
        opinion.layers.push_back(
            density::readingOf(season, *readings.layers, {k, 1}, density::Reading::layer).estimate);
    return opinion;
}

}  // namespace

TrackWork::TrackWork(QObject* parent) : QObject{parent}, m_worker{new QObject} {
    m_worker->moveToThread(&m_thread);
    connect(&m_thread, &QThread::finished, m_worker, &QObject::deleteLater);
    m_thread.start();
}

TrackWork::~TrackWork() {
    {
        const std::lock_guard hold{m_lock};
        m_ending = true;
    }
    m_thread.quit();
    m_thread.wait();
}

void TrackWork::ask(DayQuestion question) {
    {
        const std::lock_guard hold{m_lock};
        m_next = std::move(question);
    }
    QMetaObject::invokeMethod(
        m_worker, [this] { work(); }, Qt::QueuedConnection);
}

void TrackWork::lookAt(desk::SeasonPointer season, std::filesystem::path file, farm::TractorId tractor) {
    QMetaObject::invokeMethod(
        m_worker,
        [this, season = std::move(season), file = std::move(file), tractor] {
            const auto attaching = std::make_shared<const Result<passes::Attaching>>(
                passes::lookAtTrack(file, tractor).and_then([&](entries::TrackAttached track) {
                    return passes::attachingOf(*season, std::move(track));
                }));
            QMetaObject::invokeMethod(this, [this, attaching] { emit lookedAt(attaching); });
        },
        Qt::QueuedConnection);
}

bool TrackWork::isDropped() const {
    const std::lock_guard hold{m_lock};
    return m_ending || m_next.has_value();
}

void TrackWork::work() {
    std::optional<DayQuestion> question;
    {
        const std::lock_guard hold{m_lock};
        if (m_ending) return;
        std::swap(question, m_next);
    }
    if (!question) return;  // an earlier call has taken it
    const density::Readings readings = density::readingsAt(*question->season, question->silo, question->at);
    // Signals leave on the thread of the page.
    if (readings.layers && !question->tracks.empty()) {
        const auto laid = std::make_shared<const Result<Driven>>(layTracks(*question, *readings.layers));
        if (isDropped()) return;
        QMetaObject::invokeMethod(this, [this, laid] { emit driven(laid); });
    }
    const auto opinion = std::make_shared<const Result<Opinion>>(opinionOf(*question->season, readings));
    if (isDropped()) return;
    QMetaObject::invokeMethod(this, [this, opinion] { emit replayed(opinion); });
}

Result<Driven> TrackWork::layTracks(const DayQuestion& question, const density::SiloLayers& layers) {
    const season::FarmBook& farm = question.season->farm();
    const auto known = farm.places.find(question.silo);
    auto grid =
        passes::gridOf(layers, known == farm.places.end() ? std::nullopt : std::optional{known->second});
    if (!grid) return Unexpected{grid.error()};
    Driven result{*std::move(grid), {}, {}};
    const auto all = std::accumulate(question.tracks.begin(), question.tracks.end(), std::int64_t{0},
                                     [](std::int64_t sum, const auto& track) { return sum + track.bytes; });
    std::int64_t done = 0;
    int told = 0;
    const passes::TakeBytes goOn = [&](std::string_view bytes) {
        done += static_cast<std::int64_t>(bytes.size());
        const int percent = static_cast<int>(std::min<std::int64_t>(100, 100 * done / all));
        if (percent > told) {
            told = percent;
            QMetaObject::invokeMethod(this, [this, percent] { emit progressed(percent); });
        }
        return !isDropped();
    };
    for (std::size_t i = 0; i < question.tracks.size(); ++i) {
        auto laid = passes::layTrack(result.grid, farm, question.tracks[i], static_cast<std::uint32_t>(i),
                                     question.at, goOn);
        if (!laid) return Unexpected{laid.error()};
        result.tracks.push_back(*std::move(laid));
    }
    result.findings = practice::trackFindings(result.grid);
    return result;
}

}  // namespace treadwell::practice_page
