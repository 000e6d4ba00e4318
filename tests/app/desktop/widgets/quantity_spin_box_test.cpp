#include "app/desktop/widgets/quantity_spin_box.h"

#include "core/quantity/mass.h"

#include <gtest/gtest.h>

#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>
#include <cmath>
#include <stdexcept>

namespace treadwell::widgets {
namespace {

struct Box {
    explicit Box(const char* locale) {
        appearance.setUnits(settings::DisplayUnits{UnitSystem::metric, QLocale{QString::fromUtf8(locale)}});
        box.setSiRange(0.0, 40000.0);
        box.setQuantity(AsFedMass::fromTonnes(18.4));
        box.show();
    }
    void type(const char* text) {
        box.setFocus();
        box.selectAll();
        QTest::keyClicks(&box, QString::fromUtf8(text));
    }
    void commit(const char* text) {
        type(text);
        QTest::keyClick(&box, Qt::Key_Return);
    }
    double tonnes() { return box.quantity<AsFedMass>().tonnes(); }

    settings::Appearance appearance;
    QuantitySpinBox box{appearance, Dimension::asFedMass};
};

class InEveryLocale : public testing::TestWithParam<const char*> {};

TEST_P(InEveryLocale, TakesPointAndCommaAsDecimalSign) {
    Box field{GetParam()};
    field.commit("3.5");
    EXPECT_DOUBLE_EQ(field.tonnes(), 3.5);
    field.commit("4,25");
    EXPECT_DOUBLE_EQ(field.tonnes(), 4.25);
}

TEST_P(InEveryLocale, NeverGroupsDigits) {
    Box field{GetParam()};
    field.commit("1.234");
    EXPECT_DOUBLE_EQ(field.tonnes(), 1.234);
    field.commit("1,235");
    EXPECT_DOUBLE_EQ(field.tonnes(), 1.235);
    EXPECT_FALSE(field.box.isWrong());
}

TEST_P(InEveryLocale, RefusesASecondDecimalSignAndKeepsTheOldValue) {
    Box field{GetParam()};
    for (const char* text : {"1.234,5", "1,234.5", "1.2.3", "1,2,3"}) {
        field.type(text);
        EXPECT_TRUE(field.box.isWrong()) << text;
        QTest::keyClick(&field.box, Qt::Key_Return);
        EXPECT_DOUBLE_EQ(field.tonnes(), 18.4) << text;
        EXPECT_TRUE(field.box.isWrong()) << "refused in silence: " << text;
        EXPECT_TRUE(field.box.echo().contains(QString::fromUtf8(text)));
    }
}

TEST_P(InEveryLocale, ShowsWhatItWouldReadBack) {
    Box field{GetParam()};
    for (const double tonnes : {0.0, 3.5, 18.456, 39.999}) {
        field.box.setQuantity(AsFedMass::fromTonnes(tonnes));
        EXPECT_DOUBLE_EQ(field.box.valueFromText(field.box.text()), tonnes);
    }
}

INSTANTIATE_TEST_SUITE_P(Locales, InEveryLocale,
                         testing::Values("C", "en_US", "en_GB", "de_DE", "de_CH", "pt_BR", "fr_FR", "hi_IN",
                                         "ar_EG"));

TEST(QuantitySpinBox, KeepsTheAmountUntilItIsEdited) {
    Box field{"en_US"};
    const double exact = 18437.123456789;
    field.box.setSi(exact);
    field.box.setFocus();
    QTest::keyClick(&field.box, Qt::Key_Return);
    field.box.clearFocus();
    EXPECT_EQ(field.box.si(), exact);
}

TEST(QuantitySpinBox, TellsOfEditsOnlyAndOnlyWhenTheyAreDone) {
    Box field{"en_US"};
    QSignalSpy edits{&field.box, &QuantitySpinBox::siEdited};
    field.box.setQuantity(AsFedMass::fromTonnes(12));
    field.type("15.5");
    EXPECT_EQ(edits.count(), 0);
    QTest::keyClick(&field.box, Qt::Key_Return);
    ASSERT_EQ(edits.count(), 1);
    EXPECT_NEAR(edits.at(0).at(0).toDouble(), 15500.0, 1e-9);
}

TEST(QuantitySpinBox, EchoesWhatIsTypedWithItsUnit) {
    Box field{"en_US"};
    field.type("1,234");
    EXPECT_TRUE(field.box.echo().contains(QStringLiteral("1.234\u00a0t"))) << field.box.echo().toStdString();
}

TEST(QuantitySpinBox, MarksWhatIsOutsideItsRange) {
    Box field{"en_US"};
    field.commit("95");
    EXPECT_TRUE(field.box.isWrong());
    EXPECT_DOUBLE_EQ(field.tonnes(), 18.4);
    field.commit("20");
    EXPECT_FALSE(field.box.isWrong());
    EXPECT_DOUBLE_EQ(field.tonnes(), 20.0);
}

TEST(QuantitySpinBox, ShowsAnAmountOutsideTheRangeAsItIs) {
    Box field{"en_US"};
    field.box.setQuantity(AsFedMass::fromTonnes(55));
    EXPECT_DOUBLE_EQ(field.box.value(), 55.0);
    EXPECT_DOUBLE_EQ(field.tonnes(), 55.0);
}

TEST(QuantitySpinBox, FollowsTheUnitsWithoutChangingTheAmount) {
    Box field{"en_US"};
    field.appearance.setUnits(settings::DisplayUnits{UnitSystem::us, QLocale{QStringLiteral("en_US")}});
    EXPECT_NEAR(field.box.value(), 20.2825, 1e-4);  // short tons of 907.18474 kg
    EXPECT_DOUBLE_EQ(field.tonnes(), 18.4);
}

TEST(QuantitySpinBox, IgnoresTheWheelWithoutFocus) {
    Box field{"en_US"};
    field.box.clearFocus();
    QWheelEvent wheel{QPointF{5, 5}, field.box.mapToGlobal(QPointF{5, 5}), {}, {0, 120}, {}, {}, {}, false};
    QApplication::sendEvent(&field.box, &wheel);
    EXPECT_FALSE(wheel.isAccepted());
    EXPECT_DOUBLE_EQ(field.tonnes(), 18.4);
}

TEST(QuantitySpinBox, TakesNoAmountThatIsNotFinite) {
    Box field{"en_US"};
    EXPECT_THROW(field.box.setSi(std::nan("")), std::invalid_argument);
    EXPECT_THROW(field.box.setSiRange(2.0, 1.0), std::invalid_argument);
}

}  // namespace
}  // namespace treadwell::widgets
