#include "app/desktop/widgets/density_gauge.h"

#include "app/desktop/widgets/distribution_view.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace treadwell::widgets {
namespace {

GaugeDensity reading(double median, double limit = 380.0) {
    return {density::Distribution{{median, 0.14}, DryDensity::fromKilogramsPerCubicMetre(limit)},
            DryDensity::fromKilogramsPerCubicMetre(225), DryDensity::fromKilogramsPerCubicMetre(236),
            Chance::fromPercent(36)};
}

struct Gauge : testing::Test {
    Gauge() {
        appearance.setUnits(settings::DisplayUnits{UnitSystem::metric, QLocale::c()});
        gauge.resize(480, 420);
        gauge.show();
    }
    QPushButton* button(const QString& start) {
        for (QPushButton* each : gauge.findChildren<QPushButton*>()) {
            if (each->text().startsWith(start)) return each;
        }
        return nullptr;
    }
    void set(Reading which, const GaugeView& view) {
        std::array<GaugeView, kReadings.size()> views;
        views[static_cast<std::size_t>(which)] = view;
        gauge.setViews(views);
    }
    settings::Appearance appearance;
    DensityGauge gauge{appearance};
};

TEST_F(Gauge, SaysTheReasonWhileThereIsTooLittle) {
    set(Reading::layerNow, QStringLiteral("No dry-matter sample yet."));
    EXPECT_TRUE(gauge.sentence().contains(QStringLiteral("No dry-matter sample yet.")));
    EXPECT_FALSE(button(DensityGauge::tr("Show the working"))->isEnabled());
}

TEST_F(Gauge, SaysMedianWithBandChanceAndTarget) {
    set(Reading::layerNow, reading(212));
    // Band ends 212 exp(-+1.2816 * 0.14) = 177 and 254.
    for (const char* part : {"212", "177–254", "36", "225"}) {
        EXPECT_TRUE(gauge.sentence().contains(QString::fromUtf8(part))) << part;
    }
}

TEST_F(Gauge, SaysHowItLiesNowBesideTheBand) {
    GaugeDensity shown = reading(212);
    shown.asItLies = reading(180).density;
    set(Reading::layerNow, shown);
    // 180 exp(-+1.2816 * 0.14) = 150 and 215.
    const auto labels = gauge.findChildren<QLabel*>();
    EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
        return label->text().contains(QStringLiteral("180")) &&
               label->text().contains(QStringLiteral("150–215"));
    }));
}

TEST_F(Gauge, SaysWhatMovedTheReadingThatIsShown) {
    gauge.setViews({reading(212), reading(220), reading(240)});
    gauge.setMoved({QStringLiteral("-6: faster loads"), QString{}, QStringLiteral("+8: new sample")});
    const auto* moved = gauge.findChild<QLabel*>(QStringLiteral("moved"));
    EXPECT_EQ(moved->text(), QStringLiteral("-6: faster loads"));
    EXPECT_TRUE(gauge.sentence().endsWith(QStringLiteral("-6: faster loads")));
    gauge.select(Reading::silo);
    EXPECT_EQ(moved->text(), QStringLiteral("+8: new sample"));
}

TEST_F(Gauge, SwitchesTheReadingAtATouch) {
    set(Reading::silo, reading(240));
    QSignalSpy spy{&gauge, &DensityGauge::readingSelected};
    QTest::mouseClick(button(readingName(Reading::silo)), Qt::LeftButton);
    EXPECT_EQ(gauge.selected(), Reading::silo);
    ASSERT_EQ(spy.count(), 1);
    EXPECT_TRUE(gauge.sentence().contains(QStringLiteral("240")));
}

TEST_F(Gauge, AsksForTheWorkingOfTheShownReading) {
    set(Reading::today, reading(220));
    gauge.select(Reading::today);
    QSignalSpy spy{&gauge, &DensityGauge::workingRequested};
    QTest::mouseClick(button(DensityGauge::tr("Show the working")), Qt::LeftButton);
    ASSERT_EQ(spy.count(), 1);
    EXPECT_EQ(spy.at(0).at(0).value<Reading>(), Reading::today);
}

TEST_F(Gauge, GivesItsMedianAsAReadableValue) {
    set(Reading::layerNow, reading(212));
    auto* view = gauge.findChild<DistributionView*>();
    QAccessibleInterface* accessible = QAccessible::queryAccessibleInterface(view);
    ASSERT_NE(accessible, nullptr);
    EXPECT_EQ(accessible->role(), QAccessible::Indicator);
    EXPECT_FALSE(accessible->text(QAccessible::Name).isEmpty());
    EXPECT_TRUE(accessible->text(QAccessible::Value).startsWith(QStringLiteral("212")));
    ASSERT_NE(accessible->valueInterface(), nullptr);
    EXPECT_NEAR(accessible->valueInterface()->currentValue().toDouble(), 212.0, 1e-9);
    EXPECT_LT(accessible->valueInterface()->minimumValue().toDouble(), 177.0);
    EXPECT_GT(accessible->valueInterface()->maximumValue().toDouble(), 254.0);
}

TEST_F(Gauge, KeepsEverythingThatItMarksOnTheAxis) {
    auto* view = gauge.findChild<DistributionView*>();
    for (const double limit : {180.0, 380.0, 620.0}) {
        set(Reading::layerNow, reading(212, limit));
        EXPECT_GT(view->axis().high, limit);
        EXPECT_LE(view->axis().low, 100.0);
    }
}

// A pixel of the curve's area at the limit carries the colour of the curve only where mass lies there.
TEST_F(Gauge, DrawsTheMassThatLiesAtTheLimit) {
    auto* view = gauge.findChild<DistributionView*>();
    const auto colourBesideLimit = [&](double median) {
        set(Reading::layerNow, reading(median, 260.0));
        const DensityAxis axis = view->axis();
        const QPoint place{static_cast<int>(axis.x(260.0)) - 4, static_cast<int>(axis.area.center().y())};
        return view->grab().toImage().pixelColor(place);
    };
    EXPECT_EQ(colourBesideLimit(330.0), appearance.theme().density);
    EXPECT_EQ(colourBesideLimit(150.0), appearance.theme().panel);
}

TEST_F(Gauge, MarksRoundNumbersInAnyUnits) {
    DistributionView view{appearance};
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::us}) {
        appearance.setUnits(settings::DisplayUnits{units, QLocale::c()});
        for (const double limit : {316.0, 380.0, 620.0}) {
            view.setView(reading(212, limit));
            const std::vector<double> ticks = view.ticks();
            ASSERT_GE(ticks.size(), 3u);
            const double step = ticks[1] - ticks[0];
            for (const double tick : ticks) EXPECT_NEAR(std::remainder(tick, step), 0.0, 1e-9) << tick;
        }
    }
}

// Beside a narrow pad the line of the target crosses the row of the axis' title.
TEST_F(Gauge, KeepsItsTitleReadableWhereItIsNarrow) {
    DistributionView view{appearance};
    view.resize(336, 140);
    view.setView(reading(212));
    const QImage image = view.grab().toImage();
    const int row = view.fontMetrics().height(), x = static_cast<int>(view.axis().x(225.0));
    const auto isTarget = [&](int y) { return image.pixelColor(x, y) == appearance.theme().target; };
    EXPECT_TRUE(isTarget(row + row / 2)) << "the line is there";
    for (int y = 2 * row; y < 3 * row; ++y) EXPECT_FALSE(isTarget(y)) << y;
}

}  // namespace
}  // namespace treadwell::widgets
