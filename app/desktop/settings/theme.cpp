#include "app/desktop/settings/theme.h"

#include <QApplication>
#include <QFont>
#include <QFontDatabase>
#include <QProxyStyle>
#include <QStyleFactory>
#include <QWidget>

namespace treadwell::settings {

namespace {

constexpr QRgb kBlack = 0xff000000;
constexpr QRgb kWhite = 0xffffffff;

QPalette paletteOf(const Theme& theme) {
    QPalette palette;
    const auto set = [&palette](QPalette::ColorRole role, const QColor& colour) {
        palette.setColor(role, colour);
    };
    set(QPalette::Window, theme.ground);
    set(QPalette::WindowText, theme.ink);
    set(QPalette::Base, theme.panel);
    set(QPalette::AlternateBase, theme.ground);
    set(QPalette::Text, theme.ink);
    set(QPalette::Button, theme.panel);
    set(QPalette::ButtonText, theme.ink);
    set(QPalette::ToolTipBase, theme.panel);
    set(QPalette::ToolTipText, theme.ink);
    set(QPalette::PlaceholderText, theme.quietInk);
    set(QPalette::Highlight, theme.accent);
    set(QPalette::HighlightedText, theme.onAccent);
    set(QPalette::Link, theme.accent);
    set(QPalette::Light, theme.panel);
    set(QPalette::Mid, theme.outline);
    set(QPalette::Dark, theme.outline);
    set(QPalette::Shadow, theme.outline);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        palette.setColor(QPalette::Disabled, role, theme.quietInk);
    }
    return palette;
}

Theme lightTheme() {
    return {.look = Look::light,
            .palette = {},
            .ground = QColor{0xf4f1ea},
            .panel = QColor{0xfdfcf9},
            .ink = QColor{0x1c1a16},
            .quietInk = QColor{0x4e4a41},
            .outline = QColor{0x7a7466},
            .accent = QColor{0x00558a},
            .onAccent = QColor{kWhite},
            .density = QColor{0x00558a},
            .densityFill = QColor{0xc9d8e3},
            .target = QColor{0x9c4300},
            .porosity = QColor{0x00694c},
            .saturation = QColor{0x1c1a16},
            .delivery = QColor{0x9c4300},
            .capacity = QColor{0x1c1a16},
            .caution = QColor{0x9c4300},
            .lineWidth = 1.5,
            .bold = false};
}

Theme darkTheme() {
    return {.look = Look::dark,
            .palette = {},
            .ground = QColor{0x16181a},
            .panel = QColor{0x212427},
            .ink = QColor{0xf2efe8},
            .quietInk = QColor{0xc4c0b6},
            .outline = QColor{0x8b8f93},
            .accent = QColor{0x7cc6f0},
            .onAccent = QColor{kBlack},
            .density = QColor{0x7cc6f0},
            .densityFill = QColor{0x2c4a5c},
            .target = QColor{0xf0b040},
            .porosity = QColor{0x3fcf9f},
            .saturation = QColor{0xf2efe8},
            .delivery = QColor{0xf0b040},
            .capacity = QColor{0xf2efe8},
            .caution = QColor{0xf0b040},
            .lineWidth = 1.5,
            .bold = false};
}

Theme outdoorTheme() {
    const QColor black{kBlack};
    const QColor white{kWhite};
    return {.look = Look::outdoor,
            .palette = {},
            .ground = white,
            .panel = white,
            .ink = black,
            .quietInk = black,
            .outline = black,
            .accent = black,
            .onAccent = white,
            .density = black,
            .densityFill = white,
            .target = black,
            .porosity = black,
            .saturation = black,
            .delivery = black,
            .capacity = black,
            .caution = black,
            .lineWidth = 3.0,
            .bold = true};
}

// Edges of our own: the style derives its own from the window colour, and on white they are faint greys. A
// widget with the property `edged` has one round it.
QString styleSheetOf(const Theme& theme) {
    static const QString kSheet = QStringLiteral(
        "QPushButton, QToolButton { background: %1; color: %2; border: %6px solid %3; border-radius: 6px;"
        " padding: 4px 10px; }"
        "QPushButton:pressed, QToolButton:pressed, QPushButton:checked, QToolButton:checked"
        " { background: %4; color: %5; border-color: %4; }"
        "QPushButton:focus, QToolButton:focus { border: %7px solid %4; padding: 2px 8px; }"
        "QPushButton:checked:focus, QToolButton:checked:focus { border: %7px double %5; }"
        "QPushButton:disabled, QToolButton:disabled { border-style: dashed; }"
        "QToolButton::menu-indicator { image: none; }"
        "QAbstractSpinBox, QLineEdit { background: %1; color: %2; border: %6px solid %3; border-radius: 4px;"
        " padding: 2px 6px; selection-background-color: %4; selection-color: %5; }"
        "QAbstractSpinBox:focus, QLineEdit:focus { border-color: %4; }"
        "QComboBox { background: %1; color: %2; border: %6px solid %3; border-radius: 4px; padding: 2px 6px; "
        "}"
        "QComboBox:focus { border-color: %4; }"
        "QComboBox::drop-down { border: none; width: 24px; }"
        "QComboBox QAbstractItemView { background: %1; color: %2; selection-background-color: %4;"
        " selection-color: %5; }"
        "*[edged=\"true\"] { border: %6px solid %3; border-radius: 6px; }"
        "QScrollBar:vertical { background: %1; width: 16px; }"
        "QScrollBar::handle:vertical { background: %3; min-height: 40px; border-radius: 6px; margin: 2px; }"
        "QScrollBar::add-line, QScrollBar::sub-line { height: 0px; }");
    const int thin = theme.bold ? 3 : 1;
    return kSheet.arg(theme.panel.name(), theme.ink.name(), theme.outline.name(), theme.accent.name(),
                      theme.onAccent.name(), QString::number(thin), QString::number(thin + 2));
}

/// Nothing slides or fades: it would draw the eye from the yard, and some people cannot bear it.
class StillStyle final : public QProxyStyle {
  public:
    StillStyle() : QProxyStyle{QStyleFactory::create(QStringLiteral("Fusion"))} {}
    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                  QStyleHintReturn* data) const override {
        if (hint == SH_Widget_Animation_Duration || hint == SH_Widget_Animate) return 0;
        return QProxyStyle::styleHint(hint, option, widget, data);
    }
};

}  // namespace

Theme themeOf(Look look) {
    Theme theme = look == Look::light ? lightTheme() : look == Look::dark ? darkTheme() : outdoorTheme();
    theme.palette = paletteOf(theme);
    return theme;
}

void applyTheme(QApplication& application, const Theme& theme) {
    static const bool kFontsLoaded = [] {
        const int regular = QFontDatabase::addApplicationFont(QStringLiteral(":/fonts/DejaVuSans.ttf"));
        const int bold = QFontDatabase::addApplicationFont(QStringLiteral(":/fonts/DejaVuSans-Bold.ttf"));
        return regular >= 0 && bold >= 0;
    }();
    QFont font = application.font();
    if (kFontsLoaded) font.setFamily(QStringLiteral("DejaVu Sans"));
    font.setBold(theme.bold);
    application.setStyle(new StillStyle);
    // What the platform would let slide or fade by itself.
    for (const Qt::UIEffect effect : {Qt::UI_AnimateMenu, Qt::UI_FadeMenu, Qt::UI_AnimateCombo,
                                      Qt::UI_AnimateTooltip, Qt::UI_FadeTooltip, Qt::UI_AnimateToolBox})
        QApplication::setEffectEnabled(effect, false);
    application.setPalette(theme.palette);
    application.setFont(font);
}

void applySheet(QWidget& window, const Theme& theme) {
    window.setStyleSheet(styleSheetOf(theme));
}

}  // namespace treadwell::settings
