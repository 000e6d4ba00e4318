#pragma once

#include "core/base/enum_text.h"

#include <QColor>
#include <QPalette>
#include <QString>
#include <array>
#include <cstdint>
#include <string_view>

class QApplication;
class QWidget;

namespace treadwell::settings {

/// Outdoor is pure black on white, bold, without tints: in full sun a 4.5:1 grey falls below 2:1.
enum class Look : std::uint8_t { light, dark, outdoor };

constexpr std::array<std::string_view, 3> enumTexts(Look /*look*/) noexcept {
    return {"light", "dark", "outdoor"};
}

/// The colours and weights of one look. Text reaches 7:1 on its ground, lines and marks 3:1; what differs by
/// colour differs by pattern or label too. The plot colours are those of Okabe & Ito 2008 (Color Universal
/// Design), darkened where they miss 3:1.
struct Theme {
    Look look;
    QPalette palette;
    QColor ground;       ///< behind everything
    QColor panel;        ///< behind a drawing or a button
    QColor ink;          ///< text
    QColor quietInk;     ///< labels of less weight
    QColor outline;      ///< edges of controls and zones
    QColor accent;       ///< focus, selection, the part of a distribution that reaches the target
    QColor onAccent;     ///< text upon it
    QColor density;      ///< the density and its band
    QColor densityFill;  ///< the part of a distribution that misses the target
    QColor target;
    QColor porosity;
    QColor saturation;
    QColor delivery;   ///< rate of delivery
    QColor capacity;   ///< packing capacity
    QColor caution;    ///< marks beside a caution
    double lineWidth;  ///< of drawings, in pixels
    bool bold;         ///< all text
};

[[nodiscard]] Theme themeOf(Look look);

/// Style, palette and font of the whole application. The font is the bundled one, so that a machine without
/// fonts, and every PDF, has text.
void applyTheme(QApplication& application, const Theme& theme);

/// The edges of the controls in a window. It is the window's sheet and not the application's: there Qt would
/// style a page anew each time that a part of it is put into another, half of a start's time.
void applySheet(QWidget& window, const Theme& theme);

}  // namespace treadwell::settings
