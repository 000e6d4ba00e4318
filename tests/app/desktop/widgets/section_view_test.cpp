#include "app/desktop/widgets/section_view.h"

#include "app/desktop/widgets/density_ramp.h"
#include "tests/app/desktop/finger.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QTest>

namespace treadwell::widgets {
namespace {

/// A level silo of 40 m by 10 m with two layers, the upper one packed less.
Section twoLayers() {
    farm::Silo silo;
    silo.length = Length::fromMetres(40);
    silo.width = Length::fromMetres(10);
    silo.wallHeight = Length::fromMetres(3);
    silo.plannedDepth = Length::fromMetres(3);
    silo.filling = farm::FillingWay::lifts;
    const DryDensity limit = DryDensity::fromKilogramsPerCubicMetre(350);
    std::vector<density::LaidLayer> laid;
    std::vector<density::FieldLayer> layers;
    for (const double bracket : {260.0, 160.0}) {
        laid.push_back({DryMass::fromTonnes(100), DryDensity::fromKilogramsPerCubicMetre(bracket), limit});
        layers.push_back({{bracket, limit.si()}, limit, 0.01, 0.01});
    }
    const auto stack = density::stackOf(silo, laid, density::Filled::asItLies).value();
    Section section;
    section.field = std::make_shared<const density::Field>(silo, stack, layers, density::Residual{});
    section.layers = {{1, QStringLiteral("15 Sep 10:20–11:05"), 0},
                      {2, QStringLiteral("15 Sep 11:05–12:10"), 0}};
    section.length = silo.length;
    section.width = silo.width;
    section.wall = silo.wallHeight;
    section.planned = silo.plannedDepth;
    section.target = DryDensity::fromKilogramsPerCubicMetre(200);
    return section;
}

struct Shown : testing::Test {
    Shown() {
        appearance.setUnits(settings::DisplayUnits{UnitSystem::metric, QLocale::c()});
        view.resize(800, 200);
        view.setSection(twoLayers());
        view.show();
    }
    [[nodiscard]] QColor colourAt(double along, double up) {
        const QPoint place = view.pixelOf(Length::fromMetres(along), Length::fromMetres(up)).toPoint();
        // The place of no hatch line.
        const QImage image = view.grab().toImage();
        QColor lightest = image.pixelColor(place);
        for (int x = 0; x < 4; ++x) {
            const QColor each = image.pixelColor(place + QPoint{x, 0});
            if (DensityRamp::lightness(each) > DensityRamp::lightness(lightest)) lightest = each;
        }
        return lightest;
    }
    settings::Appearance appearance;
    SectionView view{appearance};
};

TEST_F(Shown, DrawsTheDenserLayerDarker) {
    EXPECT_LT(DensityRamp::lightness(colourAt(20, 0.3)), DensityRamp::lightness(colourAt(20, 1.3)) - 0.1);
}

TEST_F(Shown, HatchesWhatIsBelowTheTarget) {
    const auto darkIn = [this](double up) {
        const QPoint place = view.pixelOf(Length::fromMetres(20), Length::fromMetres(up)).toPoint();
        const QImage image = view.grab().toImage();
        int dark = 0;
        for (int x = 0; x < 40; ++x)
            dark += DensityRamp::lightness(image.pixelColor(place + QPoint{x, 0})) < 0.4;
        return dark;
    };
    EXPECT_GE(darkIn(1.3), 3) << "a line at every twelfth pixel";
}

TEST_F(Shown, TellsThePlaceUnderThePointer) {
    QTest::mouseClick(&view, Qt::LeftButton, {},
                      view.pixelOf(Length::fromMetres(20), Length::fromMetres(0.3)).toPoint());
    for (const char* part : {"20.00", "0.30", "layer 1", "10:20–11:05", "kg DM/m³", "80 % band"}) {
        EXPECT_TRUE(view.sentence().contains(QString::fromUtf8(part)))
            << part << " in " << view.sentence().toStdString();
    }
    QTest::mouseMove(&view, view.pixelOf(Length::fromMetres(20), Length::fromMetres(1.3)).toPoint());
    EXPECT_TRUE(view.sentence().contains(QStringLiteral("layer 2"))) << view.sentence().toStdString();
    QTest::mouseMove(&view, view.pixelOf(Length::fromMetres(20), Length::fromMetres(3.2)).toPoint());
    EXPECT_TRUE(view.sentence().contains(QStringLiteral("no crop")));
}

TEST_F(Shown, TellsWhatATouchPointsAt) {
    auto* finger = testing_support::finger();
    const QPoint place = view.pixelOf(Length::fromMetres(10), Length::fromMetres(0.3)).toPoint();
    QTest::touchEvent(&view, finger).press(0, place, &view);
    QTest::touchEvent(&view, finger).release(0, place, &view);
    EXPECT_TRUE(view.sentence().contains(QStringLiteral("layer 1"))) << view.sentence().toStdString();
}

TEST_F(Shown, IsReadWithTheArrowKeys) {
    view.pointAt(Length::fromMetres(20), Length::fromMetres(0.5));
    for (int i = 0; i < 6; ++i) QTest::keyClick(&view, Qt::Key_Up);
    EXPECT_TRUE(view.sentence().contains(QStringLiteral("layer 2"))) << view.sentence().toStdString();
    for (int i = 0; i < 100; ++i) QTest::keyClick(&view, Qt::Key_Right);
    EXPECT_TRUE(view.sentence().contains(QStringLiteral("40.00"))) << "the place stays in the silo";
    QTest::keyClick(&view, Qt::Key_Home);
    EXPECT_TRUE(view.sentence().startsWith(QStringLiteral("0.00")));
    EXPECT_EQ(view.accessibleDescription(), view.sentence());
    EXPECT_FALSE(view.accessibleName().isEmpty());
}

TEST_F(Shown, SaysWhyThereIsNoPicture) {
    Section none;
    none.reason = QStringLiteral("No load has been recorded.");
    view.setSection(none);
    EXPECT_TRUE(view.sentence().contains(none.reason));
    QTest::keyClick(&view, Qt::Key_Right);
    EXPECT_FALSE(view.grab().isNull());
}

class RampOf : public testing::TestWithParam<settings::Look> {};

// Equal steps of density are equal steps of lightness; held to a 20th of the whole, which a step that the eye
// takes for twice another would break.
TEST_P(RampOf, GoesDarkerInEvenSteps) {
    const DensityRamp ramp{GetParam()};
    constexpr int kSteps = 12;
    const auto at = [&](int step) {
        return DensityRamp::lightness(
            ramp.colour(DensityRamp::kLoosest +
                        (DensityRamp::kDensest - DensityRamp::kLoosest) * (step / double{kSteps})));
    };
    const double even = (at(0) - at(kSteps)) / kSteps;
    EXPECT_GT(even, 0.04);
    for (int step = 0; step < kSteps; ++step) EXPECT_NEAR(at(step) - at(step + 1), even, 0.01) << step;
    EXPECT_EQ(ramp.colour(DryDensity{}), ramp.colour(DensityRamp::kLoosest));
}

// Grey as Rec. 709 weighs the colours.
TEST_P(RampOf, StaysInOrderInGrey) {
    const DensityRamp ramp{GetParam()};
    double before = 256.0;
    for (int step = 0; step <= 20; ++step) {
        const QColor colour = ramp.colour(DensityRamp::kLoosest +
                                          (DensityRamp::kDensest - DensityRamp::kLoosest) * (step / 20.0));
        const double grey = 0.2126 * colour.red() + 0.7152 * colour.green() + 0.0722 * colour.blue();
        EXPECT_LT(grey, before) << step;
        before = grey;
        if (GetParam() == settings::Look::outdoor) {
            EXPECT_NEAR(colour.red(), colour.blue(), 1);
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Looks, RampOf,
                         testing::Values(settings::Look::light, settings::Look::dark,
                                         settings::Look::outdoor),
                         [](const auto& each) { return std::string{enumText(each.param)}; });

}  // namespace
}  // namespace treadwell::widgets
