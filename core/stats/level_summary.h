#pragma once

#include <cmath>

namespace treadwell::stats {

/// What normal readings say of the level t that they share:
/// -2 ln L = precision t^2 - 2 pull t + square + logDeterminant. Summaries of one level add up, and a level
/// that was integrated out speaks of the one above, so a tree of groups costs as much as it has groups.
struct LevelSummary {
    double precision = 0.0;
    double pull = 0.0;
    double square = 0.0;
    double logDeterminant = 0.0;

    /// One reading of the level, `variance` above 0 its error's.
    [[nodiscard]] static LevelSummary of(double reading, double variance) {
        return {1.0 / variance, reading / variance, reading * reading / variance, std::log(variance)};
    }
    LevelSummary& operator+=(const LevelSummary& other) noexcept {
        precision += other.precision;
        pull += other.pull;
        square += other.square;
        logDeterminant += other.logDeterminant;
        return *this;
    }
    /// The same of the level above, from which this one differs by a variance of 0 or more.
    [[nodiscard]] LevelSummary passedUp(double variance) const {
        const double shrink = 1.0 / (1.0 + variance * precision);
        return {precision * shrink, pull * shrink, square - variance * pull * pull * shrink,
                logDeterminant - std::log(shrink)};
    }
    /// The level that fits best; there must be a reading.
    [[nodiscard]] double level() const noexcept { return pull / precision; }
    /// What is left of the readings at that level: a chi-square, if their errors are right.
    [[nodiscard]] double misfit() const noexcept { return std::fmax(0.0, square - pull * pull / precision); }
};

}  // namespace treadwell::stats
