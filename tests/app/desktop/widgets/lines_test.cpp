#include "app/desktop/widgets/advice_line.h"
#include "app/desktop/widgets/attention_panel.h"
#include "app/desktop/widgets/message_bar.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

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
    ASSERT_EQ(buttons.size(), 3);
    EXPECT_FALSE(buttons.at(1)->isVisible());
    line.setAdvice(QStringLiteral("Let the 14 t tractor pack too."));
    EXPECT_EQ(line.accessibleDescription(), QStringLiteral("Let the 14 t tractor pack too."));
    for (QPushButton* button : buttons) QTest::mouseClick(button, Qt::LeftButton);
    EXPECT_EQ(accepted.count(), 1);
    EXPECT_EQ(declined.count(), 1);
    line.setSilent(std::nullopt);
    EXPECT_FALSE(line.accessibleDescription().isEmpty());
    line.setSilent(QStringLiteral("Packing keeps up."));
    EXPECT_EQ(line.accessibleDescription(), QStringLiteral("Packing keeps up."));
    EXPECT_FALSE(buttons.at(1)->isVisible());
}

TEST_F(Lines, ATrialIsCarriedOutOrLeft) {
    AdviceLine line{appearance};
    line.show();
    QSignalSpy asked{&line, &AdviceLine::trialAsked};
    QSignalSpy accepted{&line, &AdviceLine::accepted};
    auto* whatIf = line.findChild<QPushButton*>(QStringLiteral("whatIf"));
    auto* doIt = line.findChild<QPushButton*>(QStringLiteral("doIt"));
    QTest::mouseClick(whatIf, Qt::LeftButton);
    ASSERT_EQ(asked.count(), 1);
    EXPECT_TRUE(asked.at(0).at(0).toBool());
    line.setTrial(QStringLiteral("Move a tractor."), false);
    EXPECT_FALSE(doIt->isVisible());
    line.setTrial(QStringLiteral("Otter packs: 212 to 236."), true);
    EXPECT_TRUE(whatIf->isChecked());
    EXPECT_FALSE(line.findChild<QPushButton*>(QStringLiteral("notNow"))->isVisible());
    QTest::mouseClick(doIt, Qt::LeftButton);
    EXPECT_EQ(accepted.count(), 1);
    QTest::mouseClick(whatIf, Qt::LeftButton);
    EXPECT_FALSE(asked.at(1).at(0).toBool());
}

TEST_F(Lines, EveryCautionNamesItsSource) {
    AttentionPanel panel{appearance};
    panel.setSections({{QStringLiteral("Cautions"),
                        {{QStringLiteral("Nobody stands behind a tractor that backs up."),
                          QStringLiteral("common practice"), true},
                         {QStringLiteral("Keep off the face."), QStringLiteral("site rule"), true}}},
                       {QStringLiteral("Nothing here"), {}}});
    QStringList texts;
    for (const QLabel* label : panel.findChildren<QLabel*>()) texts << label->text();
    for (const char* part : {"Cautions", "Nobody stands", "common practice", "Keep off", "site rule"}) {
        EXPECT_TRUE(texts.join(u' ').contains(QString::fromUtf8(part))) << part;
    }
    EXPECT_FALSE(texts.contains(QStringLiteral("Nothing here"))) << "a title without notices";
}

TEST_F(Lines, WhatMattersIsPutAwayByItsKey) {
    AttentionPanel panel{appearance};
    panel.show();
    QSignalSpy away{&panel, &AttentionPanel::putAway};
    panel.setSections({{QStringLiteral("Now"),
                        {{QStringLiteral("Packing falls behind."), {}, true, QStringLiteral("behind")},
                         {QStringLiteral("A sample is due."), {}, true, QStringLiteral("sample")}}}});
    const auto buttons = panel.findChildren<QToolButton*>();
    ASSERT_EQ(buttons.size(), 2);
    EXPECT_TRUE(buttons.at(1)->accessibleName().contains(QStringLiteral("A sample is due.")));
    QTest::mouseClick(buttons.at(1), Qt::LeftButton);
    ASSERT_EQ(away.count(), 1);
    EXPECT_EQ(away.at(0).at(0).toString(), QStringLiteral("sample"));
}

TEST_F(Lines, SayWhenThereIsNothing) {
    AttentionPanel panel{appearance};
    ASSERT_FALSE(panel.findChildren<QLabel*>().isEmpty());
    EXPECT_FALSE(panel.findChildren<QLabel*>().front()->text().isEmpty());
}

}  // namespace
}  // namespace treadwell::widgets
