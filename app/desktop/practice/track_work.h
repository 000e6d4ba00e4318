#pragma once

#include "app/desktop/desk/season_file.h"
#include "core/density/readings.h"
#include "core/passes/replay.h"
#include "core/passes/silo_tracks.h"
#include "core/practice/track_findings.h"

#include <QObject>
#include <QThread>
#include <memory>
#include <mutex>

namespace treadwell::practice_page {

/// A silo at a moment, and the tracks that are to be laid on it.
struct DayQuestion {
    desk::SeasonPointer season;
    farm::SiloId silo;
    Instant at;
    std::vector<entries::TrackAttached> tracks;
};

/// What the tracks say of the passes.
struct Driven {
    passes::DrivenGrid grid;
    std::vector<passes::ReadTrack> tracks;
    std::vector<practice::Finding> findings;
};

/// The simulation's answer and the regression's, when full, for all layers and each.
struct Opinion {
    passes::Replay replay;
    std::optional<density::Estimate> silo;
    std::vector<std::optional<density::Estimate>> layers;
};

/// Reads tracks and replays days on a thread of its own: files may be long. What was asked last is answered;
/// an older question is dropped in the middle of its file.
class TrackWork final : public QObject {
    Q_OBJECT

  public:
    explicit TrackWork(QObject* parent = nullptr);
    ~TrackWork() override;

    /// driven() follows where there are tracks, then replayed().
    void ask(DayQuestion question);
    /// lookedAt() follows: what attaches this file to the season.
    void lookAt(desk::SeasonPointer season, std::filesystem::path file, farm::TractorId tractor);

  signals:
    /// Percent of the tracks' bytes.
    void progressed(int percent);
    void driven(std::shared_ptr<const treadwell::Result<treadwell::practice_page::Driven>> driven);
    void replayed(std::shared_ptr<const treadwell::Result<treadwell::practice_page::Opinion>> opinion);
    void lookedAt(std::shared_ptr<const treadwell::Result<treadwell::passes::Attaching>> attaching);

  private:
    // On the thread.
    void work();
    [[nodiscard]] bool isDropped() const;
    [[nodiscard]] Result<Driven> layTracks(const DayQuestion& question, const density::SiloLayers& layers);

    mutable std::mutex m_lock;
    std::optional<DayQuestion> m_next;  ///< guarded by the lock
    bool m_ending = false;              ///< guarded by the lock
    QThread m_thread;
    QObject* m_worker;  ///< lives on the thread; what is asked is queued to it
};

}  // namespace treadwell::practice_page
