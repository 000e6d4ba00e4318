#include "app/desktop/plots/timeline.h"

#include "tests/app/desktop/finger.h"

#include <gtest/gtest.h>

#include <QTest>
#include <QWheelEvent>
#include <limits>

namespace treadwell::plots {
namespace {

using std::chrono::hours;
using std::chrono::minutes;

TimelineView morning() {
    TimelineView view;
    view.zone = FarmZone::named("America/Sao_Paulo").value();  // three hours behind UTC
    view.from = instantFromIso8601("2026-02-10T09:00:00Z").value();
    view.to = view.from + hours{6};
    for (int i = 0; i < 18; ++i)
        view.deliveries.push_back({view.from + minutes{20 * i}, AsFedMass::fromTonnes(18)});
    for (int i = 0; i <= 36; ++i) {
        const Instant at = view.from + minutes{10 * i};
        view.rates.push_back({at, AsFedRate::fromTonnesPerHour(54 + i), AsFedRate::fromTonnesPerHour(70)});
        const double median = 190 + i;
        view.densities.push_back({at, DryDensity::fromKilogramsPerCubicMetre(median),
                                  DryDensity::fromKilogramsPerCubicMetre(median * 0.84),
                                  DryDensity::fromKilogramsPerCubicMetre(median * 1.2)});
    }
    view.target = DryDensity::fromKilogramsPerCubicMetre(225);
    view.samples.push_back({view.from + minutes{75}, DryMatter::fromPercent(34)});
    view.pauses.push_back({view.from + hours{2}, view.from + hours{2} + minutes{30}});
    return view;
}

struct Shown : testing::Test {
    Shown() {
        timeline.resize(900, 360);
        timeline.setView(morning());
        timeline.show();
    }
    settings::Appearance appearance;
    Timeline timeline{appearance};
};

TEST_F(Shown, SaysWhatItShowsInTheFarmsTime) {
    const QString sentence = timeline.sentence();
    for (const char* part : {"06:00", "12:00", "18", "324", "226"}) {
        EXPECT_TRUE(sentence.contains(QString::fromUtf8(part))) << part << " in " << sentence.toStdString();
    }
    EXPECT_EQ(timeline.accessibleDescription(), sentence);
    EXPECT_FALSE(timeline.accessibleName().isEmpty());
}

TEST_F(Shown, ZoomsAndPansByKeysAndGoesBack) {
    const auto span = [this] { return timeline.shownTo() - timeline.shownFrom(); };
    QTest::keyClick(&timeline, Qt::Key_Plus);
    EXPECT_NEAR(std::chrono::duration<double>(span()).count(), 0.8 * 6 * 3600.0, 1.0);
    const Instant from = timeline.shownFrom();
    QTest::keyClick(&timeline, Qt::Key_PageDown);
    EXPECT_GT(timeline.shownFrom(), from);
    timeline.setView(morning());
    EXPECT_LT(span(), hours{6}) << "new data must not undo the zoom";
    QTest::keyClick(&timeline, Qt::Key_Home);
    EXPECT_EQ(span(), hours{6});
}

TEST_F(Shown, NeverLeavesTheSpanOfItsData) {
    QTest::keyClick(&timeline, Qt::Key_Plus);
    for (int i = 0; i < 30; ++i) QTest::keyClick(&timeline, Qt::Key_PageUp);
    EXPECT_EQ(timeline.shownFrom(), morning().from);
    for (int i = 0; i < 60; ++i) QTest::keyClick(&timeline, Qt::Key_Minus);
    EXPECT_EQ(timeline.shownTo(), morning().to);
}

TEST_F(Shown, DrawsTheRestWhereAValueIsNotFinite) {
    QTest::qWait(50);
    const QImage before = timeline.grab().toImage();
    TimelineView view = morning();
    view.rates.push_back({view.to, AsFedRate::fromSi(std::numeric_limits<double>::infinity()), std::nullopt});
    timeline.setView(view);
    QTest::qWait(50);
    const QImage after = timeline.grab().toImage();
    // The point lies at the right edge and must neither stretch the axis nor move a curve.
    EXPECT_EQ(before.copy(0, 0, 700, 360), after.copy(0, 0, 700, 360));
}

TEST_F(Shown, CanShowNothingYet) {
    timeline.setView(TimelineView{});
    EXPECT_FALSE(timeline.sentence().isEmpty());
    EXPECT_GT(timeline.shownTo(), timeline.shownFrom());
}

TEST_F(Shown, MarksAPauseWithAPattern) {
    QTest::qWait(50);
    const QImage with = timeline.grab().toImage();
    TimelineView view = morning();
    view.pauses.clear();
    timeline.setView(view);
    QTest::qWait(50);
    EXPECT_NE(with, timeline.grab().toImage());
}

// Who looks at the newest hour goes on seeing the newest; who looks back is left alone.
TEST_F(Shown, FollowsTheRightEdgeWhileItIsInSight) {
    QTest::keyClick(&timeline, Qt::Key_Plus);
    for (int i = 0; i < 10; ++i) QTest::keyClick(&timeline, Qt::Key_PageDown);
    TimelineView later = morning();
    later.to += minutes{10};
    const auto span = timeline.shownTo() - timeline.shownFrom();
    timeline.setView(later);
    EXPECT_EQ(timeline.shownTo(), later.to);
    EXPECT_EQ(timeline.shownTo() - timeline.shownFrom(), span);
    for (int i = 0; i < 10; ++i) QTest::keyClick(&timeline, Qt::Key_PageUp);
    const Instant from = timeline.shownFrom();
    later.to += minutes{10};
    timeline.setView(later);
    EXPECT_EQ(timeline.shownFrom(), from);
}

TEST_F(Shown, ReadsAMomentWithTheArrowKeys) {
    EXPECT_FALSE(timeline.cursor());
    QTest::keyClick(&timeline, Qt::Key_Left);
    ASSERT_TRUE(timeline.cursor());
    EXPECT_EQ(*timeline.cursor(), morning().to - minutes{10});
    QTest::keyClick(&timeline, Qt::Key_Left);
    QTest::keyClick(&timeline, Qt::Key_Right);
    EXPECT_EQ(*timeline.cursor(), morning().to - minutes{10});
    for (const char* part : {"11:50", "89", "70", "225"}) {
        EXPECT_TRUE(timeline.accessibleDescription().contains(QString::fromUtf8(part)))
            << part << " in " << timeline.accessibleDescription().toStdString();
    }
}

TEST_F(Shown, ReadsTheMomentUnderThePointer) {
    QTest::qWait(30);
    QTest::mouseMove(&timeline, QPoint{450, 150});
    ASSERT_TRUE(timeline.cursor());
    const auto at = *timeline.cursor();
    EXPECT_GT(at, morning().from + hours{2});
    EXPECT_LT(at, morning().from + hours{4});
    const QImage before = timeline.grab().toImage();
    QTest::mouseMove(&timeline, QPoint{600, 150});
    EXPECT_GT(*timeline.cursor(), at);
    EXPECT_NE(before, timeline.grab().toImage()) << "the line moves along";
}

TEST_F(Shown, BringsTheCursorIntoSight) {
    for (int i = 0; i < 8; ++i) QTest::keyClick(&timeline, Qt::Key_Plus);
    for (int i = 0; i < 36; ++i) QTest::keyClick(&timeline, Qt::Key_Left);
    EXPECT_EQ(*timeline.cursor(), morning().from);
    EXPECT_EQ(timeline.shownFrom(), morning().from);
}

TEST_F(Shown, ZoomsByTheWheelAboutThePointer) {
    timeline.setFocus();
    QTest::qWait(30);
    const auto span = [this] { return timeline.shownTo() - timeline.shownFrom(); };
    const QPointF place{300.0, 150.0};
    QWheelEvent notch{place, timeline.mapToGlobal(place), {},   {0, 120}, Qt::NoButton,
                      {},    Qt::NoScrollPhase,           false};
    QCoreApplication::sendEvent(&timeline, &notch);
    EXPECT_NEAR(std::chrono::duration<double>(span()).count(), 0.8 * 6 * 3600.0, 1.0);
}

TEST_F(Shown, ZoomsByAPinch) {
    auto* fingers = testing_support::finger();
    const auto span = [this] { return timeline.shownTo() - timeline.shownFrom(); };
    const QPoint left{400, 150}, right{500, 150};
    QTest::touchEvent(&timeline, fingers).press(0, left, &timeline).press(1, right, &timeline);
    for (int by = 20; by <= 160; by += 20) {
        QTest::touchEvent(&timeline, fingers)
            .move(0, left - QPoint{by, 0}, &timeline)
            .move(1, right + QPoint{by, 0}, &timeline);
    }
    QTest::touchEvent(&timeline, fingers)
        .release(0, left - QPoint{160, 0}, &timeline)
        .release(1, right + QPoint{160, 0}, &timeline);
    EXPECT_LT(span(), hours{4}) << "the fingers went from 100 to 420 pixels apart";
}

// Marks that cover each other are drawn once; nearer by they all come back.
TEST_F(Shown, ShowsEveryLoadOnceItIsZoomedInto) {
    TimelineView view;
    view.from = morning().from;
    view.to = morning().to;
    for (int i = 0; i < 1'080; ++i)
        view.deliveries.push_back({view.from + std::chrono::seconds{20 * i}, AsFedMass::fromTonnes(12)});
    timeline.setView(view);
    for (int i = 0; i < 20; ++i) QTest::keyClick(&timeline, Qt::Key_Plus);
    ASSERT_EQ(timeline.shownTo() - timeline.shownFrom(), minutes{10});
    QTest::qWait(50);
    const QImage image = timeline.grab().toImage();
    int most = 0;
    for (int y = image.height() / 2; y < image.height(); ++y) {
        int marks = 0;
        bool before = false;
        for (int x = 0; x < image.width(); ++x) {
            const bool inMark = image.pixelColor(x, y) == appearance.theme().delivery;
            marks += inMark && !before;
            before = inMark;
        }
        most = std::max(most, marks);
    }
    EXPECT_GE(most, 28) << "one every twenty seconds of ten minutes";
}

TEST_F(Shown, MarksAdvice) {
    QTest::qWait(50);
    const QImage without = timeline.grab().toImage();
    TimelineView view = morning();
    view.advice.push_back({view.from + hours{3}, entries::AdviceDecision::accepted});
    timeline.setView(view);
    QTest::qWait(50);
    EXPECT_NE(without, timeline.grab().toImage());
}

}  // namespace
}  // namespace treadwell::plots
