#pragma once

#include "core/passes/press.h"

#include <array>
#include <random>
#include <string_view>

namespace treadwell::passes {

/// How a driver places the tracks over the width.
enum class Pattern : std::uint8_t {
    wholeWidth,  ///< side by side from wall to wall, then from there anew
    middle,      ///< over and over the same middle third
    anywhere,    ///< as it comes
};
constexpr std::array<std::string_view, 3> enumTexts(Pattern /*pattern*/) noexcept {
    return {"wholeWidth", "middle", "anywhere"};
}

/// Lays the tracks of one machine on one layer, drive by drive, each over the whole length and back the next.
/// The same seed gives the same tracks.
class TrackLayer final {
  public:
    /// `nearWall` is how far the outer tyre stays from a wall, kOverhang or more.
    TrackLayer(const PadShape& shape, Pattern pattern, Length nearWall, std::uint64_t seed);

    /// Adds drives until they have covered `distance` (0 or more); what is left of a drive comes first next
    /// time. `roller` is its place in the list of tables.
    void add(std::vector<WheelPass>& passes, const Roller& machine, std::uint32_t roller, Length distance);

  private:
    [[nodiscard]] double nextMiddle_m(const Roller& machine);

    PadShape m_shape;
    Pattern m_pattern;
    Length m_nearWall;
    std::mt19937_64 m_random;
    std::uint64_t m_drives = 0;
    double m_place = 0.0;     ///< of the sweep, from 0 at one wall to 1 at the other
    double m_middle_m = 0.0;  ///< of the present drive
    double m_done_m = 0.0;    ///< of its length
};

}  // namespace treadwell::passes
