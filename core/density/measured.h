#pragma once

#include "core/density/distribution.h"
#include "core/density/surface.h"
#include "core/season/season.h"

#include <optional>
#include <vector>

namespace treadwell::density {

/// Variances of ln(measured density) by what they come from.
struct MeasuredParts {
    double mass = 0.0;  ///< weighing, box volumes and usual loads
    double dryMatter = 0.0;
    double heights = 0.0;
    double settling = 0.0;  ///< of a part: how far what lies below gave way under it
    [[nodiscard]] double total() const noexcept { return mass + dryMatter + heights + settling; }
};

/// A mass balance: what was tipped over the room it takes.
struct MassBalance {
    std::int64_t loads = 0;
    AsFedMass mass;
    DryMass dry;
    Volume volume;
    Distribution density;  ///< as it lies; cut at the limit of its dry matter
    MeasuredParts parts;   ///< add up to density.sigma()^2
};

/// What the heights of one evening say of a silo.
struct MeasuredSilo {
    entries::EntryId survey;
    Instant at;
    std::optional<Surface> surface = {};
    std::optional<MassBalance> whole = {};  ///< all that lies in the silo
    std::optional<MassBalance> placed =
        {};                              ///< what came since the survey before, or since the silo was empty
    std::optional<Message> reason = {};  ///< why there is no whole
    std::optional<Message> placedReason = {};  ///< why there is no part
};

/// What a survey says, to be shown: its density and that of what came since the one before, or why not.
[[nodiscard]] std::vector<Message> messagesOf(const MeasuredSilo& survey);

/// Every survey of a silo up to and including `now`, in order; one that gives no density says why. The silo's
/// dimensions are those that the farm gives now. Density = dry mass tipped up to the survey / volume under
/// its surface. Errors of weighing, of box volumes and usual loads, of the dry matter (1.5 % and 3.7 points /
/// sqrt(samples)) and of the heights are independent of each other (rule B10).
///
/// The part placed since: its room is the new surface less the old one as it has given way since, column by
/// column: the old crop of height Z lies at the end from the depth of the new down, F(Z2) - F(new) = F(Z1), F
/// the integral of the depth factor (rule B7). The factor's slope is taken to be 50 % uncertain.
[[nodiscard]] std::vector<MeasuredSilo> measuredIn(const season::Season& season, const farm::Silo& silo,
                                                   Instant now);

/// Thickness in place of what was laid upon crop of height `below_m` when the whole stands at `now_m`;
/// negative where the surface sank. `slope` of the depth factor per metre, 1 at FieldEquation::kUnitDepth.
[[nodiscard]] double laidThickness(double below_m, double now_m, double slope) noexcept;

/// sd of ln that the method may be off in common (assumed: rule B10), and that what lies loses and settles
/// until it is opened.
inline constexpr double kMassBalanceLogSd = 0.05;
inline constexpr double kToOpeningLogSd = 0.05;

/// Variance of ln(measured / predicted) beside what is not known of the silo itself: the mass and the dry
/// matter stand in the prediction too and enter with 1 + s/2 and 1 - s/2, s the elasticity of density in the
/// packing factor. Method and way to opening are not in it.
[[nodiscard]] double logRatioVariance(const MeasuredParts& parts, double elasticity) noexcept;

/// One evening's measured density as a ratio of the density where the depth factor is 1.
struct SlopeEvidence {
    Length meanDepth;
    double ratio;  ///< measured mean density / predicted mean bracket, above 0
    double logSd;  ///< above 0
};

/// The farm's own slope of the depth factor, per metre.
struct DepthSlope {
    double perMetre;
    double sd;
    double priorSd;
    bool converged;
};

inline constexpr std::size_t kEveningsForSlope = 3;

/// From three or more evenings on ratio = level * (1 + slope * (meanDepth / 2 - 2.04)), level and slope by
/// Gauss-Newton steps from the equation's slope, of which 50 % (1 sd) is the prior and a flat prior for the
/// level. Fewer evenings give none.
[[nodiscard]] std::optional<DepthSlope> depthSlopeFrom(std::span<const SlopeEvidence> evenings);

}  // namespace treadwell::density
