#include "app/desktop/widgets/advice_line.h"
#include "app/desktop/widgets/caution_panel.h"
#include "app/desktop/widgets/message_bar.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace treadwell::widgets {
namespace {

struct Lines : testing::Test {
    settings::Appearance appearance;
};

TEST_F(Lines, MessagesAreCountedNotRepeated) {
    MessageBar bar{appearance};
    EXPECT_FALSE(bar.isVisibleTo(nullptr));
    for (int i = 0; i < 3; ++i) bar.post(Weight::caution, QStringLiteral("The scale is silent."));
    EXPECT_EQ(bar.waiting(), 1);
    EXPECT_TRUE(bar.shownText().contains(QStringLiteral("The scale is silent.")));
    EXPECT_TRUE(bar.shownText().contains(u'3'));
}

TEST_F(Lines, TheWeightiestMessageIsShownAndPutAwayFirst) {
    MessageBar bar{appearance};
    bar.post(Weight::error, QStringLiteral("The disk is full."));
    bar.post(Weight::note, QStringLiteral("The day is closed."));
    bar.show();
    EXPECT_TRUE(bar.shownText().contains(QStringLiteral("The disk is full.")));
    QTest::mouseClick(bar.findChild<QPushButton*>(), Qt::LeftButton);
    EXPECT_EQ(bar.shownText(), QStringLiteral("The day is closed."));
    QTest::mouseClick(bar.findChild<QPushButton*>(), Qt::LeftButton);
    EXPECT_EQ(bar.waiting(), 0);
    EXPECT_FALSE(bar.isVisible());
}

TEST_F(Lines, AdviceIsTakenOrDeclined) {
    AdviceLine line{appearance};
    line.show();
    QSignalSpy accepted{&line, &AdviceLine::accepted};
    QSignalSpy declined{&line, &AdviceLine::declined};
    const QList<QPushButton*> buttons = line.findChildren<QPushButton*>();
    ASSERT_EQ(buttons.size(), 2);
    EXPECT_FALSE(buttons.at(0)->isVisible());
    line.setAdvice(QStringLiteral("Let the 14 t tractor pack too."));
    EXPECT_EQ(line.accessibleDescription(), QStringLiteral("Let the 14 t tractor pack too."));
    for (QPushButton* button : buttons) QTest::mouseClick(button, Qt::LeftButton);
    EXPECT_EQ(accepted.count(), 1);
    EXPECT_EQ(declined.count(), 1);
    line.setSilent(std::nullopt);
    EXPECT_FALSE(line.accessibleDescription().isEmpty());
    line.setSilent(QStringLiteral("Packing keeps up."));
    EXPECT_EQ(line.accessibleDescription(), QStringLiteral("Packing keeps up."));
    EXPECT_FALSE(buttons.at(0)->isVisible());
}

TEST_F(Lines, EveryCautionNamesItsSource) {
    CautionPanel panel{appearance};
    panel.setCautions(
        {{QStringLiteral("Nobody stands behind a tractor that backs up."), QStringLiteral("common practice")},
         {QStringLiteral("Keep off the face."), QStringLiteral("site rule")}});
    QStringList texts;
    for (const QLabel* label : panel.findChildren<QLabel*>()) texts << label->text();
    for (const char* part : {"Nobody stands", "common practice", "Keep off", "site rule"}) {
        EXPECT_TRUE(texts.join(u' ').contains(QString::fromUtf8(part))) << part;
    }
}

TEST_F(Lines, SayWhenThereIsNothing) {
    CautionPanel panel{appearance};
    ASSERT_FALSE(panel.findChildren<QLabel*>().isEmpty());
    EXPECT_FALSE(panel.findChildren<QLabel*>().front()->text().isEmpty());
}

}  // namespace
}  // namespace treadwell::widgets
