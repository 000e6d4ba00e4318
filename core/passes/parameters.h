#pragma once

#include "core/quantity/relations.h"

namespace treadwell::passes {

/// All that the wheel-pass simulation assumes, in one place. "Fitted" values were found together, so that the
/// mean density of a simulated silo follows the field regression over the survey's range (a test holds it
/// within the regression's band); they are this model's own and no measurement.
struct Parameters {
    /// Of what is attainable, by the first pass: about three quarters (published practice of packing).
    double firstPass = 0.75;
    /// Gained by each e-fold of passes after it, as a part of what is attainable (fitted; that later passes
    /// follow the logarithm of their number is known of soils, value from memory).
    double laterGain = 0.12;
    /// Dry density that many passes reach at 100 kPa and 35 % dry matter [kg/m3] (fitted).
    double attainable_kg_m3 = 163.0;
    /// ... and its exponents in the stress and in the dry matter (fitted).
    double stressExponent = 0.44;
    double dryMatterExponent = 0.30;
    /// Under the tyre: inflation of 2.0-3.5 bar is published practice, and heavier machines run harder tyres;
    /// pressure at 12 t and its exponent in the mass (fitted), held to that range.
    double pressure_Pa = 250e3;
    double pressureExponent = 0.5;
    double lowestPressure_Pa = 200e3;
    double highestPressure_Pa = 350e3;
    /// Concentration of the stress under a wheel: 3 in an elastic body, 4 to 6 in soil (Froehlich, Soehne;
    /// value from memory). A layer is taken at the stress of its lower edge, which lags.
    double concentration = 3.0;
    /// A pass acts on the top 30-50 cm (published); no deeper than this [m].
    double reach_m = 0.50;
    /// Beside a tyre the crop is pressed with a part of the stress, as far as this [m] (fitted to how much
    /// looser silage lies beside walls, which tyres cannot reach).
    double besideTyre = 0.55;
    double besideTyre_m = 0.20;
    /// A pass at another speed counts (4 km/h / speed)^exponent passes: the crop is pressed for less time
    /// (assumed; above 1, so that at equal minutes hurrying brings a little less).
    double speedExponent = 1.5;
    double usualSpeed_m_s = 4.0 / 3.6;
    /// Part of the rolled density that stays at the surface once the wheel is gone, and what each pascal of
    /// crop above holds back of the rebound (fitted to the depth term of the field regression).
    double restAtSurface = 0.818;
    double restPerPascal = 1.32e-5;
    /// Nothing rebounds to more than this part of the rolled density, however much lies above (fitted).
    double restMost = 1.35;
};

/// What rolls: one tractor at one speed.
struct Roller {
    MachineMass mass;
    Length trackWidth = Length::fromMetres(1.4);  ///< ground that all its tyres cover, both sides together
    Speed speed = Speed::fromKilometresPerHour(4);

    /// Left to right tyre, middle to middle; wide tyres stand further apart (assumed).
    [[nodiscard]] constexpr Length gauge() const noexcept {
        const Length usual = Length::fromMetres(2.0);
        return tyreWidth() > usual ? tyreWidth() : usual;
    }
    [[nodiscard]] constexpr Length tyreWidth() const noexcept { return trackWidth / 2.0; }
    /// Over both tyres.
    [[nodiscard]] constexpr Length width() const noexcept { return gauge() + tyreWidth(); }
};

inline constexpr double kGravity_m_s2 = 9.80665;  ///< the standard value of ISO 80000-3

/// What a machine overhangs its tyres, so that they stay this far from a wall (assumed).
inline constexpr Length kOverhang = Length::fromCentimetres(20);

}  // namespace treadwell::passes
