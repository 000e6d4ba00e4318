#include "app/desktop/widgets/density_ramp.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace treadwell::widgets {

namespace {

constexpr double kLightest = 0.93;
constexpr double kDarkest = 0.33;
constexpr double kHueLoose = 95.0 * std::numbers::pi / 180.0;  // straw to a deep green blue
constexpr double kHueDense = 235.0 * std::numbers::pi / 180.0;
constexpr double kChroma = 0.075;

double encoded(double linear) {
    const double held = std::clamp(linear, 0.0, 1.0);
    return held <= 0.0031308 ? 12.92 * held : 1.055 * std::pow(held, 1.0 / 2.4) - 0.055;
}

double decoded(double shown) {
    return shown <= 0.04045 ? shown / 12.92 : std::pow((shown + 0.055) / 1.055, 2.4);
}

double cube(double x) {
    return x * x * x;
}

QColor fromOklab(double lightness, double a, double b) {
    const double l = cube(lightness + 0.3963377774 * a + 0.2158037573 * b);
    const double m = cube(lightness - 0.1055613458 * a - 0.0638541728 * b);
    const double s = cube(lightness - 0.0894841775 * a - 1.2914855480 * b);
    return QColor::fromRgbF(
        static_cast<float>(encoded(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s)),
        static_cast<float>(encoded(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s)),
        static_cast<float>(encoded(-0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s)));
}

}  // namespace

QColor DensityRamp::colour(DryDensity density) const noexcept {
    const double part = std::clamp((density - kLoosest) / (kDensest - kLoosest), 0.0, 1.0);
    const double lightness = kLightest + (kDarkest - kLightest) * part;
    if (m_look == settings::Look::outdoor) return fromOklab(lightness, 0.0, 0.0);
    const double hue = kHueLoose + (kHueDense - kHueLoose) * part;
    return fromOklab(lightness, kChroma * std::cos(hue), kChroma * std::sin(hue));
}

double DensityRamp::lightness(const QColor& colour) noexcept {
    const double r = decoded(static_cast<double>(colour.redF()));
    const double g = decoded(static_cast<double>(colour.greenF()));
    const double b = decoded(static_cast<double>(colour.blueF()));
    return 0.2104542553 * std::cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b) +
           0.7936177850 * std::cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b) -
           0.0040720468 * std::cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
}

}  // namespace treadwell::widgets
