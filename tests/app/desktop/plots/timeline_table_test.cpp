#include "app/desktop/plots/timeline_table.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QSignalSpy>

namespace treadwell::plots {
namespace {

using std::chrono::minutes;

TimelineView hourWith(int loads) {
    TimelineView view;
    view.zone = FarmZone::named("America/Sao_Paulo").value();  // three hours behind UTC
    view.from = instantFromIso8601("2026-02-10T09:00:00Z").value();
    view.to = view.from + minutes{10 * loads};
    for (int i = 0; i < loads; ++i) {
        const Instant at = view.from + minutes{10 * i};
        view.deliveries.push_back({at, AsFedMass::fromTonnes(12)});
        view.rates.push_back({at, AsFedRate::fromTonnesPerHour(72), AsFedRate::fromTonnesPerHour(60)});
        view.densities.push_back({at, DryDensity::fromKilogramsPerCubicMetre(212),
                                  DryDensity::fromKilogramsPerCubicMetre(177),
                                  DryDensity::fromKilogramsPerCubicMetre(254)});
    }
    view.samples.push_back({view.from + minutes{5}, DryMatter::fromPercent(34)});
    view.advice.push_back({view.from + minutes{25}, entries::AdviceDecision::accepted});
    return view;
}

struct Table : testing::Test {
    Table() { appearance.setUnits(settings::DisplayUnits{UnitSystem::metric, QLocale::c()}); }
    [[nodiscard]] QString cell(int row, int column) const {
        return table.index(row, column).data().toString();
    }
    settings::Appearance appearance;
    TimelineTable table{appearance};
    QAbstractItemModelTester tester{&table, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

TEST_F(Table, HasARowForEachMomentWithWhatThePlotShows) {
    table.setView(hourWith(3));
    ASSERT_EQ(table.rowCount(), 5) << "three loads, a sample, a decision";
    EXPECT_EQ(cell(0, TimelineTable::time), QStringLiteral("06:00"));
    EXPECT_TRUE(cell(0, TimelineTable::what).contains(appearance.units().text(AsFedMass::fromTonnes(12))));
    EXPECT_EQ(cell(0, TimelineTable::delivered), QStringLiteral("72"));
    EXPECT_EQ(cell(0, TimelineTable::capacity), QStringLiteral("60"));
    EXPECT_EQ(cell(0, TimelineTable::density), QStringLiteral("212"));
    EXPECT_EQ(cell(0, TimelineTable::band), QStringLiteral("177–254"));
    EXPECT_EQ(cell(1, TimelineTable::time), QStringLiteral("06:05"));
    EXPECT_TRUE(cell(1, TimelineTable::what).contains(appearance.units().text(DryMatter::fromPercent(34))));
    EXPECT_EQ(cell(4, TimelineTable::what), adviceName(entries::AdviceDecision::accepted));
    for (int column = 0; column < table.columnCount(); ++column)
        EXPECT_FALSE(table.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().isEmpty());
}

TEST_F(Table, GrowsAtItsEndAndKeepsWhatIsThere) {
    table.setView(hourWith(3));
    const QPersistentModelIndex reader = table.index(2, 0);
    QSignalSpy inserted{&table, &QAbstractItemModel::rowsInserted};
    QSignalSpy removed{&table, &QAbstractItemModel::rowsRemoved};
    QSignalSpy reset{&table, &QAbstractItemModel::modelReset};
    table.setView(hourWith(5));
    EXPECT_EQ(inserted.count(), 1);
    EXPECT_EQ(reset.count(), 0);
    EXPECT_TRUE(reader.isValid());
    EXPECT_EQ(reader.row(), 2);
    table.setView(hourWith(5));
    EXPECT_EQ(inserted.count(), 1) << "nothing new, nothing told";
    EXPECT_EQ(removed.count(), 0);
    table.setView(hourWith(2));
    EXPECT_EQ(table.rowCount(), 4);
}

TEST_F(Table, FollowsTheUnits) {
    table.setView(hourWith(1));
    const QString metric =
        table.headerData(TimelineTable::density, Qt::Horizontal, Qt::DisplayRole).toString();
    appearance.setUnits(settings::DisplayUnits{UnitSystem::us, QLocale::c()});
    EXPECT_NE(table.headerData(TimelineTable::density, Qt::Horizontal, Qt::DisplayRole).toString(), metric);
    EXPECT_NE(cell(0, TimelineTable::density), QStringLiteral("212"));
}

}  // namespace
}  // namespace treadwell::plots
