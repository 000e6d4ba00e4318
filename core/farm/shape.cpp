#include "core/farm/shape.h"

#include "core/base/codes.h"
#include "core/farm/codes.h"
#include "core/farm/geometry.h"
#include "core/quantity/range.h"

#include <algorithm>
#include <cmath>

namespace treadwell::farm {

namespace {

double slopeFactor(double run) {
    return std::sqrt(1.0 + 1.0 / (run * run));
}

// A bunker is a row of strips along it, each h(y) high: level over the length less its ramps, which are
// n*s*h long. All integrals are then polynomials in the integrals of h, h^2 and h^3 over the width.
struct Bunker {
    double width, length, wall, crown, side, run, ends;

    explicit Bunker(const Shape& shape)
        : width{shape.width.metres()},
          length{shape.length.metres()},
          wall{std::min(shape.height, shape.wallHeight).metres()},
          crown{shape.height.metres() - wall},
          side{kCrownSide.runPerRise()},
          run{shape.rampSlope.runPerRise()},
          ends{static_cast<double>(shape.rampEnds)} {}

    /// Integral over the width of the crown's height to the power `n`.
    [[nodiscard]] double crownMoment(int n) const {
        return std::pow(crown, n) * (width - 2.0 * side * crown) +
               2.0 * side * std::pow(crown, n + 1) / (n + 1);
    }
    [[nodiscard]] double section() const { return width * wall + crownMoment(1); }
    [[nodiscard]] double squares() const {
        return width * wall * wall + 2.0 * wall * crownMoment(1) + crownMoment(2);
    }
    [[nodiscard]] double cubes() const {
        return width * wall * wall * wall + 3.0 * wall * wall * crownMoment(1) + 3.0 * wall * crownMoment(2) +
               crownMoment(3);
    }
};

Body bunkerBody(const Shape& shape) {
    const Bunker b{shape};
    const double ramps = b.ends * b.run;
    const double volume = b.section() * b.length - ramps / 2.0 * b.squares();
    const double squares = b.length * b.squares() - 2.0 / 3.0 * ramps * b.cubes();
    const double flat = (b.width - 2.0 * b.side * b.crown) * (b.length - ramps * (b.wall + b.crown));
    const double crownSides =
        2.0 * b.side * (b.crown * (b.length - ramps * b.wall) - ramps * b.crown * b.crown / 2.0);
    const double surface = flat + crownSides * slopeFactor(b.side) + ramps * b.section() * slopeFactor(b.run);
    const double walls =
        2.0 * (b.wall * b.length - ramps * b.wall * b.wall / 2.0) + (2.0 - b.ends) * b.width * b.wall;
    return {.volume = Volume::fromCubicMetres(volume),
            .meanDepth = Length::fromMetres(squares / volume),
            .surface = Area::fromSquareMetres(surface),
            .walls = Area::fromSquareMetres(walls),
            .flatTop = Area::fromSquareMetres(flat)};
}

Body pileBody(const Shape& shape) {
    const Volume volume = pileVolume(shape.width, shape.length, shape.height, shape.rampSlope);
    const double w = shape.width.metres(), l = shape.length.metres(), h = shape.height.metres();
    const double s = shape.rampSlope.runPerRise();
    const double squares =
        h * h * (w * l - 4.0 / 3.0 * s * (w + l) * h + 2.0 * s * s * h * h);  // of 2*z*A(z) from 0 to h
    const double flat = (w - 2.0 * s * h) * (l - 2.0 * s * h);
    return {.volume = volume,
            .meanDepth = Length::fromMetres(squares / volume.cubicMetres()),
            .surface = Area::fromSquareMetres(flat + (w * l - flat) * slopeFactor(s)),
            .walls = {},
            .flatTop = Area::fromSquareMetres(flat)};
}

}  // namespace

Result<void> validate(const Shape& shape) {
    const auto metres = [](double m) { return Length::fromMetres(m); };
    const bool pile = shape.kind == ShapeKind::pile;
    auto ranges = firstFailure(
        holdsWithin(shape.width, metres(3), metres(200), "width"),
        holdsWithin(shape.length, metres(5), metres(500), "length"),
        holdsWithin(shape.height, metres(0.3), metres(12), "height"),
        holdsWithin(shape.wallHeight, metres(pile ? 0 : 0.5), metres(pile ? 0 : 8), "wallHeight"),
        holdsWithin(shape.rampSlope, Slope::fromRunPerRise(1), Slope::fromRunPerRise(20), "rampSlope"));
    if (!ranges) return ranges;
    if (shape.rampEnds > 2 || shape.rampEnds < (pile ? 2 : 1)) {
        return fail(code::valueOutOfRange, "rampEnds", std::int64_t{shape.rampEnds},
                    std::int64_t{pile ? 2 : 1}, std::int64_t{2});
    }
    const Length ramps = shape.height * (shape.rampSlope.runPerRise() * shape.rampEnds);
    if (pile) {
        if (ramps <= std::min(shape.width, shape.length)) return {};
        return fail(code::pileDoesNotClose, "height", shape.height.amount(), ramps.amount(),
                    std::min(shape.width, shape.length).amount());
    }
    if (ramps > shape.length)
        return fail(code::rampLongerThanSilo, "rampSlope", ramps.amount(), shape.length.amount());
    const Length crown = std::max(Length{}, shape.height - shape.wallHeight);
    if (crown * (2.0 * kCrownSide.runPerRise()) > shape.width)
        return fail(code::crownTooWide, "height", crown.amount(), shape.width.amount());
    return {};
}

Shape shapeOf(const Silo& silo) noexcept {
    return {.kind = ShapeKind::bunker,
            .width = silo.width,
            .length = silo.length,
            .height = silo.wallHeight + silo.crown,
            .wallHeight = silo.wallHeight,
            .rampSlope = silo.rampSlope,
            .rampEnds = silo.rampEnds};
}

Body bodyOf(const Shape& shape) noexcept {
    return shape.kind == ShapeKind::pile ? pileBody(shape) : bunkerBody(shape);
}

Shape filledTo(Shape shape, Length height) noexcept {
    shape.height = height;
    return shape;
}

Length surfaceHeight(const Shape& shape, Length along, Length across) noexcept {
    const Length zero;
    const Length fromEnd = shape.length - along;
    const Length fromSide = std::min(across, shape.width - across);
    if (fromSide < zero || along < zero || fromEnd < zero) return zero;
    const double run = shape.rampSlope.runPerRise();
    const Length toEnd = shape.rampEnds == 2 ? std::min(along, fromEnd) : fromEnd;
    if (shape.kind == ShapeKind::pile) return std::min(shape.height, std::min(toEnd, fromSide) / run);
    const Length wall = std::min(shape.height, shape.wallHeight);
    const Length crowned = std::min(shape.height, wall + fromSide / kCrownSide.runPerRise());
    return std::min(crowned, toEnd / run);
}

}  // namespace treadwell::farm
