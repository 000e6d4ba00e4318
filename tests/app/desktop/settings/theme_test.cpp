#include "app/desktop/settings/theme.h"

#include "app/desktop/settings/appearance.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFontInfo>
#include <QStyle>
#include <algorithm>
#include <cmath>
#include <limits>

namespace treadwell::settings {
namespace {

// Relative luminance and contrast ratio: WCAG 2.2, W3C Recommendation 2023, definitions.
double luminance(const QColor& colour) {
    const auto linear = [](double part) {
        return part <= 0.04045 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

double contrast(const QColor& a, const QColor& b) {
    const double lighter = std::max(luminance(a), luminance(b));
    const double darker = std::min(luminance(a), luminance(b));
    return (lighter + 0.05) / (darker + 0.05);
}

class EveryLook : public testing::TestWithParam<Look> {};

// WCAG 2.2, success criteria 1.4.6 (text 7:1) and 1.4.11 (parts and graphics 3:1).
TEST_P(EveryLook, KeepsTextAndGraphicsApartFromTheirGround) {
    const Theme theme = themeOf(GetParam());
    for (const QColor& ground : {theme.ground, theme.panel}) {
        for (const QColor& text : {theme.ink, theme.quietInk}) EXPECT_GE(contrast(text, ground), 7.0);
        for (const QColor& drawn :
             {theme.outline, theme.accent, theme.density, theme.saturation, theme.capacity}) {
            EXPECT_GE(contrast(drawn, ground), 3.0);
        }
        // These label marks in their own colour too: 4.5:1, criterion 1.4.3.
        for (const QColor& label : {theme.target, theme.porosity, theme.delivery, theme.caution}) {
            EXPECT_GE(contrast(label, ground), 4.5);
        }
    }
    EXPECT_GE(contrast(theme.onAccent, theme.accent), 7.0);
    EXPECT_GE(contrast(theme.density, theme.densityFill), 3.0);
}

TEST_P(EveryLook, ReadsBackFromItsName) {
    EXPECT_EQ(enumFromText<Look>(enumText(GetParam())), GetParam());
}

INSTANTIATE_TEST_SUITE_P(Looks, EveryLook, testing::Values(Look::light, Look::dark, Look::outdoor));

TEST(Theme, IsPureBlackOnWhiteOutdoors) {
    const Theme theme = themeOf(Look::outdoor);
    for (const QColor& colour : {theme.ink, theme.quietInk, theme.outline, theme.density, theme.target}) {
        EXPECT_EQ(colour, QColor(Qt::black));
    }
    EXPECT_EQ(theme.ground, QColor(Qt::white));
    EXPECT_TRUE(theme.bold);
}

TEST(Theme, DoesNotKnowAnyOtherName) {
    EXPECT_EQ(enumFromText<Look>("night"), std::nullopt);
}

TEST(Theme, BringsItsOwnFont) {
    EXPECT_EQ(QFontInfo{QApplication::font()}.family(), QStringLiteral("DejaVu Sans"));
}

TEST(Theme, MovesNothingByItself) {
    EXPECT_EQ(QApplication::style()->styleHint(QStyle::SH_Widget_Animation_Duration), 0);
    EXPECT_EQ(QApplication::style()->styleHint(QStyle::SH_Widget_Animate), 0);
    QApplication::setEffectEnabled(Qt::UI_FadeMenu, true);  // as a platform may have it
    applyTheme(*qApp, themeOf(Look::light));
    for (const Qt::UIEffect effect : {Qt::UI_AnimateMenu, Qt::UI_FadeMenu, Qt::UI_AnimateCombo,
                                      Qt::UI_AnimateTooltip, Qt::UI_FadeTooltip, Qt::UI_AnimateToolBox})
        EXPECT_FALSE(QApplication::isEffectEnabled(effect)) << effect;
}

TEST(Appearance, CountsPixelsOfMillimetresUp) {
    Appearance appearance;
    appearance.setPixelsPerMillimetre(4.1);
    EXPECT_EQ(appearance.pixels(20.0), 82);
    EXPECT_EQ(appearance.pixels(0.01), 1);
}

TEST(Appearance, HoldsTheScaleToItsRange) {
    Appearance appearance;
    appearance.setPixelsPerMillimetre(0.0);
    EXPECT_EQ(appearance.pixelsPerMillimetre(), 1.0);
    appearance.setPixelsPerMillimetre(std::numeric_limits<double>::infinity());
    EXPECT_EQ(appearance.pixelsPerMillimetre(), 1.0);
}

}  // namespace
}  // namespace treadwell::settings
