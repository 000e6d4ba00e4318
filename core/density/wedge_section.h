#pragma once

#include "core/density/layer_law.h"

#include <array>
#include <cstddef>

namespace treadwell::density {

/// The section along a silo that is filled on a ramp, as a kernel in metres: a level top between ramps, the
/// foot of the forward one at `foot`. Layers lie on the forward ramp: a point x from the back wall and z
/// above the floor is under the front xi = x + run * z that passed it (rule B7).
class WedgeSection final {
  public:
    /// What lies under a front, for one metre of width.
    struct Content {
        double integral;  ///< of the layer law's factor over the section [m2]
        double slope;     ///< its derivative in the front [m]
    };
    struct Outline {
        double area;       ///< [m2]
        double depthArea;  ///< integral of the depth below the surface [m3/m]
        double areaSlope;  ///< derivatives in the front
        double depthSlope;
    };

    /// `top` and `foot` 0 or more, `run` above 0, one ramp or two. A foot too near for the top gives a
    /// triangle.
    WedgeSection(double top_m, double foot_m, double run, int ramps) noexcept;

    [[nodiscard]] double foot_m() const noexcept { return m_corners[m_count - 1].x; }
    [[nodiscard]] double deepest_m() const noexcept { return m_top; }
    /// Depth of the floor where it lies deepest between two places along it.
    [[nodiscard]] double deepestOver_m(double first_m, double last_m) const noexcept;

    [[nodiscard]] Content under(double front_m, const LayerLaw& law) const noexcept;
    [[nodiscard]] Outline outline(double front_m) const noexcept;

  private:
    struct Corner {
        double x;
        double height;
    };
    /// A stretch along the floor over which everything changes evenly: depth of the floor below the surface,
    /// and of the front below it (0 where the front has passed the surface).
    struct Piece {
        double length;
        double floor0, floor1;
        double front0, front1;
        bool passed;
    };
    template <class Take>
    void pieces(double front_m, Take take) const noexcept;

    std::array<Corner, 4> m_corners{};
    std::size_t m_count = 0;
    double m_run;
    double m_top;
};

/// The level top of a silo of this length, run and number of ramps whose mean depth integral(Z^2) /
/// integral(Z) is `meanDepth`; the height of its greatest triangle where no top is high enough.
[[nodiscard]] double levelTop_m(double length_m, double run, int ramps, double meanDepth_m) noexcept;

/// The foot at which such a section holds a factor integral of `content` [m2], nothing capped.
[[nodiscard]] double footFor_m(double content_m2, double top_m, double run, int ramps) noexcept;

}  // namespace treadwell::density
