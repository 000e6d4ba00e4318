#include "core/density/spread.h"

#include "core/density/field_equation.h"
#include "core/stats/square.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace treadwell::density {

namespace {

/// Half the slope with depth, as the standard deviation of that slope.
constexpr double kDepthSlopeSd = 0.5 * FieldEquation::kFactorSlope;

using stats::square;

}  // namespace

double SpreadParts::total() const noexcept {
    return std::accumulate(m_variance.begin(), m_variance.end(), 0.0);
}

SpreadPart SpreadParts::largest() const noexcept {
    return static_cast<SpreadPart>(std::max_element(m_variance.begin(), m_variance.end()) -
                                   m_variance.begin());
}

InputParts inputParts(const InputSpread& inputs, double elasticity) noexcept {
    return {.machineMass = square(elasticity * inputs.machineMass),
            .layer = square(elasticity * inputs.layer),
            .packingTime = square(0.5 * elasticity * inputs.packingTime),
            .loadMass = square(0.5 * elasticity * inputs.loadMass),
            .dryMatter = square(0.5 * elasticity * inputs.dryMatter)};
}

SpreadParts fixedParts(const Residual& residual, Reading reading, double effectiveLayers,
                       Length meanDepth) noexcept {
    SpreadParts parts;
    parts[SpreadPart::site] = residual.site;
    parts[SpreadPart::silo] = residual.silo;
    if (reading == Reading::core) parts[SpreadPart::face] = residual.face;
    switch (reading) {
        case Reading::silo:
            break;
        case Reading::day:
            parts[SpreadPart::place] = residual.layer / effectiveLayers;
            break;
        case Reading::layer:
            parts[SpreadPart::place] = residual.layer;
            break;
        case Reading::core:
            parts[SpreadPart::place] = residual.layer + residual.spot;
            break;
    }
    const double depth = meanDepth.metres();
    parts[SpreadPart::depthSlope] =
        square(kDepthSlopeSd * (0.5 * depth - FieldEquation::kUnitDepth) / FieldEquation::meanFactor(depth));
    return parts;
}

double depthSlopeVarianceAt(Length depth) noexcept {
    return square(kDepthSlopeSd * (depth.metres() - FieldEquation::kUnitDepth) /
                  FieldEquation::factor(depth.metres()));
}

void setInputs(SpreadParts& parts, const Residual& residual, double inputs) noexcept {
    parts[SpreadPart::ordinaryInputs] = residual.ordinaryInputs;
    parts[SpreadPart::inputsBeyondOrdinary] = std::max(0.0, inputs - residual.inputsCounted);
}

}  // namespace treadwell::density
