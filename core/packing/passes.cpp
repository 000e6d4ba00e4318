#include "core/packing/passes.h"

#include <cmath>

namespace treadwell::packing {

double passesPerLayer(std::span<const Roller> machines, AsFedDensity loose, Length layer) noexcept {
    double rolled_m2_kg = 0.0;
    for (const Roller& machine : machines) {
        rolled_m2_kg += machine.speed.si() * machine.trackWidth.si() * machine.rolling.si();
    }
    return loose.si() * layer.si() * rolled_m2_kg;
}

PackingIntensity intensityForPasses(double passes, AsFedDensity loose, Length layer, Speed speed,
                                    Length trackWidth) noexcept {
    return PackingIntensity::fromSi(passes / (loose.si() * layer.si() * speed.si() * trackWidth.si()));
}

Share unrolledShare(double passes) noexcept {
    return Share::fromFraction(std::exp(-passes));
}

Share shareWithThreePasses(double passes) noexcept {
    return Share::fromFraction(1.0 - std::exp(-passes) * (1.0 + passes + 0.5 * passes * passes));
}

}  // namespace treadwell::packing
