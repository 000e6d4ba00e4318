#include "app/desktop/plots/timeline.h"

#include <gtest/gtest.h>

#include <QTest>
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
    QTest::keyClick(&timeline, Qt::Key_Right);
    EXPECT_GT(timeline.shownFrom(), from);
    timeline.setView(morning());
    EXPECT_LT(span(), hours{6}) << "new data must not undo the zoom";
    QTest::keyClick(&timeline, Qt::Key_Home);
    EXPECT_EQ(span(), hours{6});
}

TEST_F(Shown, NeverLeavesTheSpanOfItsData) {
    QTest::keyClick(&timeline, Qt::Key_Plus);
    for (int i = 0; i < 30; ++i) QTest::keyClick(&timeline, Qt::Key_Left);
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

}  // namespace
}  // namespace treadwell::plots
