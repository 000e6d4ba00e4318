#include "core/density/field_equation.h"
#include "core/density/measured.h"

#include <cmath>

namespace treadwell::density {

namespace {

constexpr int kMostSlopeSteps = 30;
constexpr double kSmallestStep = 1e-10;

/// Normal equations of level (of its logarithm) and slope.
struct Normal {
    double levelLevel = 0.0, levelSlope = 0.0, slopeSlope = 0.0, level = 0.0, slope = 0.0;

    [[nodiscard]] double determinant() const { return levelLevel * slopeSlope - levelSlope * levelSlope; }
};

Normal normalAt(std::span<const SlopeEvidence> evenings, double level, double slope) {
    constexpr double kPrior = 1.0 / (0.25 * FieldEquation::kFactorSlope * FieldEquation::kFactorSlope);
    Normal normal;
    normal.slopeSlope = kPrior;
    normal.slope = kPrior * (FieldEquation::kFactorSlope - slope);
    for (const SlopeEvidence& evening : evenings) {
        const double below = 0.5 * evening.meanDepth.metres() - FieldEquation::kUnitDepth;
        const double factor = std::max(0.1, 1.0 + slope * below);
        const double weight = 1.0 / (evening.logSd * evening.logSd);
        const double misfit = std::log(evening.ratio) - level - std::log(factor);
        const double change = below / factor;
        normal.levelLevel += weight;
        normal.levelSlope += weight * change;
        normal.slopeSlope += weight * change * change;
        normal.level += weight * misfit;
        normal.slope += weight * change * misfit;
    }
    return normal;
}

}  // namespace

std::optional<DepthSlope> depthSlopeFrom(std::span<const SlopeEvidence> evenings) {
    if (evenings.size() < kEveningsForSlope) return std::nullopt;
    double level = 0.0;
    DepthSlope slope{FieldEquation::kFactorSlope, 0.0, 0.5 * FieldEquation::kFactorSlope, false};
    for (int step = 0; step < kMostSlopeSteps && !slope.converged; ++step) {
        const Normal normal = normalAt(evenings, level, slope.perMetre);
        const double determinant = normal.determinant();
        const double change =
            (normal.levelLevel * normal.slope - normal.levelSlope * normal.level) / determinant;
        level += (normal.slopeSlope * normal.level - normal.levelSlope * normal.slope) / determinant;
        slope.perMetre += change;
        slope.sd = std::sqrt(normal.levelLevel / determinant);
        slope.converged = std::abs(change) < kSmallestStep;
    }
    return slope;
}

}  // namespace treadwell::density
