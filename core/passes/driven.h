#pragma once

#include "core/formats/fix.h"
#include "core/passes/local_frame.h"
#include "core/passes/press.h"
#include "core/passes/rest.h"

#include <functional>

namespace treadwell::passes {

/// A standard deviation of position in metres, by how the receiver found it: RTK published (moving, in the
/// field), the others from memory.
[[nodiscard]] double positionSd_m(formats::FixQuality quality) noexcept;

/// Positions no better than this tell how long a machine was where, but not where its tyres went.
inline constexpr double kWheelSd_m = 0.35;

/// What the cleaning holds a track to (assumed).
inline constexpr Seconds kLongestGap{5.0};
inline constexpr Length kLongestStep = Length::fromMetres(12);
inline constexpr Speed kFastest = Speed::fromKilometresPerHour(40);

/// What became of the fixes of one file.
struct TrackCounts {
    std::int64_t fixes = 0;
    std::int64_t unchecked = 0;  ///< without a checksum, in a format that has one
    std::int64_t notLater = 0;   ///< as old as the one before, or older
    std::int64_t farAway = 0;    ///< more than a kilometre from the silo
    std::int64_t jumps = 0;      ///< faster than any tractor from the one before
    std::int64_t outside = 0;    ///< not over the silo's floor
    std::int64_t beforeFirstLayer = 0;
    std::int64_t segments = 0;
    std::array<std::int64_t, 6> byQuality{};  ///< in the order of FixQuality
};

/// A layer for tracks: what is driven from `begin` until the next one's belongs to it.
struct LayerWindow {
    std::int64_t number;
    Instant begin;
    double x0_m;  ///< where it lies along the silo
    double x1_m;
};

/// A drive of a cleaned track, to be drawn or to press a pad.
struct DrivenPass {
    std::size_t layer;  ///< in the list of windows
    Instant at;
    double sd_m;  ///< of position
    WheelPass pass;
};

/// Which passes: with positions as they are, those that the positions' errors leave certain (two standard
/// deviations), or those that they make possible.
enum class Counted : std::uint8_t { asFixed, least, most };

/// What the tracks say of one layer.
struct DrivenLayer {
    std::int64_t number;
    Length distance;
    Seconds time;
    Share precise;     ///< of the distance, by fixes that tell where tyres went
    Coverage counted;  ///< `variation` is of the passes
    Coverage least;
    Coverage most;
};

/// Counts tracks of real tractors on the grid of a silo, in memory that does not grow with their length.
class DrivenGrid final {
  public:
    /// `layers` by their begin. Errors: those of validate() and makePad().
    [[nodiscard]] static Result<DrivenGrid> make(const PadShape& shape, const farm::SiloPlace& place,
                                                 std::vector<LayerWindow> layers);

    /// Called for every drive as it is found; none by default.
    void onPass(std::function<void(const DrivenPass&)> see) { m_see = std::move(see); }

    /// Begins the track of a tractor; `roller` is its place in the caller's list.
    void begin(const Roller& machine, std::uint32_t roller);
    /// Fixes in the order of the file.
    void take(const formats::Fix& fix);
    /// Of the present track.
    [[nodiscard]] const TrackCounts& counts() const noexcept { return m_counts; }

    /// Of the layer that is `layer` in the list of windows.
    [[nodiscard]] DrivenLayer layer(std::size_t layer) const;
    /// Passes over each column of a layer, row by row.
    [[nodiscard]] std::span<const std::uint8_t> passes(std::size_t layer,
                                                       Counted which = Counted::asFixed) const noexcept;
    [[nodiscard]] const PadShape& shape() const noexcept { return m_pad.shape; }
    /// Whether a layer lies where a column is; `along` counts from the back wall.
    [[nodiscard]] bool holds(std::size_t layer, std::size_t along) const noexcept;
    [[nodiscard]] std::size_t layers() const noexcept { return m_layers.size(); }
    /// Seconds in each of three lanes across by each ten metres along, lanes first: coarse enough for any
    /// fix.
    [[nodiscard]] const std::vector<double>& zoneSeconds() const noexcept { return m_zone_s; }

  private:
    /// The last fix that was kept.
    struct Anchor {
        GroundPoint point;
        Instant at;
        double sd_m;
    };
    struct Sums {
        double distance_m = 0.0;
        double precise_m = 0.0;
        double time_s = 0.0;
    };
    using Counts = std::vector<std::uint8_t>;

    DrivenGrid(Pad pad, const LocalFrame& frame, std::vector<LayerWindow> layers);
    void move(const Anchor& to);
    void drive(const Anchor& from, const Anchor& to, std::size_t layer);
    void count(const DrivenPass& driven, double widen_m, Counts& counts);
    [[nodiscard]] std::optional<std::size_t> layerAt(Instant at) const noexcept;
    [[nodiscard]] Coverage coverage(const Counts& counts, std::size_t layer) const;

    Pad m_pad;
    LocalFrame m_frame;
    std::vector<LayerWindow> m_layers;
    std::vector<Sums> m_sums;
    Counts m_counted, m_least, m_most;
    std::vector<double> m_zone_s;
    std::function<void(const DrivenPass&)> m_see;
    Roller m_machine;
    std::uint32_t m_roller = 0;
    TrackCounts m_counts;
    std::optional<Anchor> m_anchor;
    std::int64_t m_jumpsInARow = 0;
};

}  // namespace treadwell::passes
