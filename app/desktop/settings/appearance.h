#pragma once

#include "app/desktop/settings/display_units.h"
#include "app/desktop/settings/theme.h"

#include <QObject>

namespace treadwell::settings {

// Yard buttons are pressed with gloves: touch buttons of 20 mm did best and 10 mm worst (Duff et al. 2010).
inline constexpr double kYardButtonMillimetres = 20.0;
inline constexpr double kControlMillimetres = 12.0;
inline constexpr double kGapMillimetres = 3.0;

/// How everything looks, handed to each widget, which keeps a reference and follows changed().
class Appearance final : public QObject {
    Q_OBJECT

  public:
    explicit Appearance(QObject* parent = nullptr);

    [[nodiscard]] const Theme& theme() const noexcept { return m_theme; }
    [[nodiscard]] const DisplayUnits& units() const noexcept { return m_units; }
    [[nodiscard]] double pixelsPerMillimetre() const noexcept { return m_pixelsPerMillimetre; }
    /// Never less than one pixel.
    [[nodiscard]] int pixels(double millimetres) const;

    void setLook(Look look);
    void setUnits(const DisplayUnits& units);
    /// Screens often report a wrong size, so the scale is the user's to set; held to 1-60.
    void setPixelsPerMillimetre(double scale);

  signals:
    void changed();

  private:
    Theme m_theme;
    DisplayUnits m_units;
    double m_pixelsPerMillimetre;
};

}  // namespace treadwell::settings
