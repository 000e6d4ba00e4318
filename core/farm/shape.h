#pragma once

#include "core/base/error.h"
#include "core/farm/silo.h"
#include "core/quantity/relations.h"

#include <array>
#include <cstdint>
#include <string_view>

namespace treadwell::farm {

/// What holds the crop: walls, or nothing but its own slopes.
enum class ShapeKind : std::uint8_t { bunker, pile };

constexpr std::array<std::string_view, 2> enumTexts(ShapeKind /*kind*/) noexcept {
    return {"bunker", "pile"};
}

/// The sides of a crown rise 1:3 from the walls (our drawing of it).
inline constexpr Slope kCrownSide = Slope::fromRunPerRise(3);

/// The full body of a bunker silo or of a drive-over pile. Length and width are those of the floor that it
/// covers; a bunker's ramps rise within its length, all four sides of a pile rise from its edge.
struct Shape {
    ShapeKind kind = ShapeKind::bunker;
    Length width;
    Length length;
    Length height;      ///< of the middle when full; what is above the walls is the crown
    Length wallHeight;  ///< 0 for a pile
    Slope rampSlope = Slope::fromRunPerRise(3);
    int rampEnds = 1;  ///< 1 with a back wall, 2 without; 2 for a pile

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("height_m", self.height);
        visit("kind", self.kind);
        visit("length_m", self.length);
        visit("ramp_ends", self.rampEnds);
        visit("ramp_run_per_rise", self.rampSlope);
        visit("wall_height_m", self.wallHeight);
        visit("width_m", self.width);
    }
    friend bool operator==(const Shape&, const Shape&) = default;
};

/// Width 3-200 m, length 5-500 m, height 0.3-12 m, slope 1:1 to 1:20; the ramps must fit into the length and
/// the crown into the width. Errors: valueOutOfRange, rampLongerThanSilo, crownTooWide, pileDoesNotClose.
[[nodiscard]] Result<void> validate(const Shape& shape);

[[nodiscard]] Shape shapeOf(const Silo& silo) noexcept;

/// What a shape holds and covers. All exact for the shape as drawn; each is held against numerical
/// integration of surfaceHeight() over random shapes (tests).
struct Body {
    Volume volume;
    Length meanDepth;  ///< integral(Z^2) / integral(Z) over the floor
    Area surface;      ///< of the top with its slopes, to be covered
    Area walls;        ///< that crop lies against, back wall included
    Area flatTop;      ///< level part of the top
};

/// The body of a shape that validate() has passed, filled to its height.
[[nodiscard]] Body bodyOf(const Shape& shape) noexcept;

/// The same shape filled only so high in the middle; `height` above 0 and at most the shape's.
[[nodiscard]] Shape filledTo(Shape shape, Length height) noexcept;

/// Height of the surface over a place of the floor: `along` from the back wall (or one end), `across` from
/// one side. 0 outside.
[[nodiscard]] Length surfaceHeight(const Shape& shape, Length along, Length across) noexcept;

}  // namespace treadwell::farm
