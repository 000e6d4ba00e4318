#include "core/farm/geometry.h"

#include <algorithm>
#include <cmath>

namespace treadwell::farm {

Area workingArea(const Silo& silo, Length height) noexcept {
    if (silo.filling == FillingWay::lifts) return silo.width * silo.length;
    const double run = silo.rampSlope.runPerRise();
    return silo.width * (height * std::sqrt(1.0 + run * run));
}

Length rampHeight(const Silo& silo, Volume volume) noexcept {
    const Volume oneMetreHigh = risingRampVolume(silo, Length::fromMetres(1));
    return std::min(silo.plannedDepth, Length::fromMetres(std::sqrt(volume / oneMetreHigh)));
}

Volume risingRampVolume(const Silo& silo, Length height) noexcept {
    return silo.width * height * (height * (silo.rampEnds * silo.rampSlope.runPerRise() / 2.0));
}

Volume levelVolume(const Silo& silo, Length height) noexcept {
    const Length ramps = height * (silo.rampEnds * silo.rampSlope.runPerRise() / 2.0);
    return silo.width * height * (silo.length - ramps);
}

Area crownedSection(Length width, Length wallHeight, Length crown, Slope side) noexcept {
    return width * wallHeight + crown * (width - crown * side.runPerRise());
}

Volume pileVolume(Length baseWidth, Length baseLength, Length height, Slope side) noexcept {
    const Length run = height * side.runPerRise();
    const Area meanSection =
        baseWidth * baseLength - run * (baseWidth + baseLength) + 4.0 / 3.0 * (run * run);
    return meanSection * height;
}

}  // namespace treadwell::farm
