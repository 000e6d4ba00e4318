#include "app/desktop/settings/appearance.h"

#include <algorithm>
#include <cmath>

namespace treadwell::settings {

namespace {

constexpr double kPixelsPerMillimetreAt96Dpi = 96.0 / 25.4;
constexpr double kLeastScale = 1.0;
constexpr double kMostScale = 60.0;

}  // namespace

Appearance::Appearance(QObject* parent)
    : QObject{parent}, m_theme{themeOf(Look::light)}, m_pixelsPerMillimetre{kPixelsPerMillimetreAt96Dpi} {}

int Appearance::pixels(double millimetres) const {
    return std::max(1, static_cast<int>(std::ceil(millimetres * m_pixelsPerMillimetre)));
}

void Appearance::setLook(Look look) {
    m_theme = themeOf(look);
    emit changed();
}

void Appearance::setUnits(const DisplayUnits& units) {
    m_units = units;
    emit changed();
}

void Appearance::setPixelsPerMillimetre(double scale) {
    if (!std::isfinite(scale)) return;
    m_pixelsPerMillimetre = std::clamp(scale, kLeastScale, kMostScale);
    emit changed();
}

}  // namespace treadwell::settings
