#pragma once

#include "core/passes/pad.h"

#include <array>
#include <span>

namespace treadwell::passes {

/// What a machine presses with under its tyres [Pa]. Mass above 0.
[[nodiscard]] double contactPressure(MachineMass mass, const Parameters& parameters) noexcept;

/// Vertical stress under the middle of a wheel [Pa] at a depth of 0 m or more:
/// p * (1 - (1 + (R/z)^2)^(-nu/2)), R = sqrt(F / (pi p)), F the wheel's load, p its contact pressure, nu the
/// concentration (Froehlich, Soehne; value from memory). Pressure governs near the surface, load below.
[[nodiscard]] double stressUnderWheel(double load_N, double pressure_Pa, double depth_m,
                                      double concentration) noexcept;

/// Dry density that many passes reach at a stress above 0 and this dry matter, not yet held to saturation.
[[nodiscard]] DryDensity attainable(double stress_Pa, DryMatter dryMatter,
                                    const Parameters& parameters) noexcept;

/// What one roller does to crop, tabulated, so that the kernel needs no power and no logarithm.
class PressTable final {
  public:
    /// Mass 1-60 t, speed above 0.
    PressTable(const Roller& roller, const Parameters& parameters);

    [[nodiscard]] const Roller& roller() const noexcept { return m_roller; }
    [[nodiscard]] double reach_m() const noexcept { return m_reach_m; }

    /// Attainable specific volume [m3/kg] at a depth and 35 % dry matter.
    [[nodiscard]] double attainable_m3_kg(double depth_m) const noexcept {
        return at(m_attainable, depth_m * m_perDepth);
    }
    /// From here on a further pass takes nothing.
    static constexpr double kMostDone = 1.6;
    /// What one more pass takes of the fall from loose to attainable, where `done` of it is done already.
    [[nodiscard]] double gain(double done) const noexcept { return at(m_gain, done * kGainPerDone); }

  private:
    struct Node {
        double value;
        double slope;  ///< to the next node
    };
    static constexpr std::size_t kNodes = 256;
    static constexpr double kGainPerDone = (kNodes - 1) / kMostDone;
    using Table = std::array<Node, kNodes>;

    [[nodiscard]] static double at(const Table& table, double place) noexcept {
        constexpr double kLast = kNodes - 1;
        const double held = place < kLast ? place : kLast;
        const auto node = static_cast<int>(held);
        return table[static_cast<std::size_t>(node)].value +
               (held - node) * table[static_cast<std::size_t>(node)].slope;
    }

    Roller m_roller;
    double m_reach_m;
    double m_perDepth;
    Table m_attainable;
    Table m_gain;
};

/// One drive of a machine straight from one point to another: the middle between its tyres.
struct WheelPass {
    double x0_m, y0_m, x1_m, y1_m;
    std::uint32_t roller;  ///< in the list of tables
};

/// Columns of one row that a tyre rolls.
struct Run {
    std::size_t row;
    std::size_t first;
    std::size_t count;
};

/// A strip along a pass, from the middle between the tyres: left is below 0.
struct Strip {
    double from_m;
    double to_m;
};

/// Under the left and the right tyre.
[[nodiscard]] std::array<Strip, 2> tyresOf(const Roller& roller) noexcept;

/// The columns of a row whose middles lie in a strip of a pass. A column belongs to the pass if its middle
/// lies beside [begin, end) of it, so that passes which follow each other roll none twice. `count` is 0 where
/// there are none.
[[nodiscard]] Run runOf(const Pad& pad, const WheelPass& pass, const Strip& strip, std::size_t row) noexcept;

/// Rolls all passes in their order. Each tyre presses the columns under it: layers within reach approach what
/// the stress at their depth attains, the first pass by about three quarters, later ones by less. Columns are
/// independent, so any number of `threads` (1 or more) gives the same to the bit. Nothing is allocated for a
/// pass. `tables` of the pad's own parameters.
void press(Pad& pad, std::span<const WheelPass> passes, std::span<const PressTable> tables, unsigned threads);

}  // namespace treadwell::passes
