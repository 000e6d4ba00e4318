#pragma once

#include "core/base/enum_text.h"
#include "core/quantity/geometry.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <string_view>

namespace treadwell::density {

/// What an estimate speaks of, and so which parts of the spread its band holds.
enum class Reading : std::uint8_t {
    silo,   ///< the whole silo: site and silo
    day,    ///< layers laid so far, of a day or in all: and place over the effective number of layers
    layer,  ///< the layer under way: and place
    core,   ///< a single core at a face: and face, and the spot within the layer
};
constexpr std::array<std::string_view, 4> enumTexts(Reading /*reading*/) noexcept {
    return {"silo", "day", "layer", "core"};
}

/// Where the spread of a reading comes from.
enum class SpreadPart : std::uint8_t {
    site,                  ///< this farm against the survey's farms
    silo,                  ///< this silo against the farm's others
    face,                  ///< this face against the silo
    place,                 ///< this layer or spot against its silo
    ordinaryInputs,        ///< errors of the entries as the survey had them
    inputsBeyondOrdinary,  ///< what today's entries err beyond that
    depthSlope,            ///< the regression's slope with depth
};
inline constexpr std::size_t kSpreadParts = 7;
constexpr std::array<std::string_view, 7> enumTexts(SpreadPart /*spreadpart*/) noexcept {
    return {"site", "silo", "face", "place", "ordinaryInputs", "inputsBeyondOrdinary", "depthSlope"};
}

/// Variances of ln(density) by part; they add up to the band's.
class SpreadParts final {
  public:
    [[nodiscard]] constexpr double& operator[](SpreadPart part) noexcept {
        return m_variance[static_cast<std::size_t>(part)];
    }
    [[nodiscard]] constexpr double operator[](SpreadPart part) const noexcept {
        return m_variance[static_cast<std::size_t>(part)];
    }
    [[nodiscard]] double total() const noexcept;
    /// The largest part; the first of equals.
    [[nodiscard]] SpreadPart largest() const noexcept;

  private:
    std::array<double, kSpreadParts> m_variance{};
};

/// What is not known of a site's density, as variances of ln(measured / estimated). The defaults are the
/// survey's residual, .2112^2 (derived), split as rule B10 says; the split is assumed. Calibration gives its
/// own.
struct Residual {
    double site = 0.105 * 0.105;
    double silo = 0.105 * 0.105;
    double face = 0.085 * 0.085;
    double layer = 0.10 * 0.10;
    double spot = 0.173 * 0.173;
    /// Variance through the entries that the residual holds already: as much of it as `inputsCounted` counts
    /// here, and only what is beyond is added. Both are 0 for a silo of a calibrated farm that has no
    /// evidence of its own; its entries' variance stands in full.
    double ordinaryInputs = 0.0055;
    double inputsCounted = 0.0055;
    /// ln(measured / estimated) that calibration expects.
    double level = 0.0;
    /// Half the variance of the variances above, where they were estimated: sum of v^2 / degrees of freedom;
    /// 0 where they are taken as known.
    double varianceDoubt = 0.0;
};

/// Of a band whose whole variance is `variance`: variance^2 / doubt, at least 1; infinite without doubt, the
/// band then being normal. Source: Satterthwaite 1946, Biometrics Bulletin 2(6):110-114.
[[nodiscard]] constexpr double degreesOfFreedom(double variance, double varianceDoubt) noexcept {
    if (!(varianceDoubt > 0.0)) return std::numeric_limits<double>::infinity();
    return std::max(1.0, variance * variance / varianceDoubt);
}

/// Standard deviations of ln(entry) of what was typed in or logged.
struct InputSpread {
    double machineMass;
    double layer;
    double packingTime;
    double loadMass;
    double dryMatter;
};

/// Variances of ln(density) through the entries at an elasticity s of density in the packing factor: machine
/// mass +s, layer -s, packing time and dry matter +s/2, the loads' mass -s/2 (rule B10).
struct InputParts {
    double machineMass;
    double layer;
    double packingTime;
    double loadMass;
    double dryMatter;
    [[nodiscard]] double total() const noexcept {
        return machineMass + layer + packingTime + loadMass + dryMatter;
    }
};
[[nodiscard]] InputParts inputParts(const InputSpread& inputs, double elasticity) noexcept;

/// All parts but those of the inputs. `effectiveLayers` (at least 1) is used by Reading::day. The slope with
/// depth has an assumed standard deviation of 50 % about 2.04 m: for a mean over depth D its ln is off by
/// .0446 |D/2 - 2.04| / meanFactor(D).
[[nodiscard]] SpreadParts fixedParts(const Residual& residual, Reading reading, double effectiveLayers,
                                     Length meanDepth) noexcept;

/// The same 50 % for one layer at a depth: variance of ln(density).
[[nodiscard]] double depthSlopeVarianceAt(Length depth) noexcept;

/// Gives `inputs`, the variance through the entries, its two parts: ordinary entries and what is beyond.
void setInputs(SpreadParts& parts, const Residual& residual, double inputs) noexcept;

}  // namespace treadwell::density
