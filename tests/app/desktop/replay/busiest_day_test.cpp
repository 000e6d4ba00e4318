// Plays the example's busiest day through the Fill page as fast as the page goes: 600 times the clock's pace
// or more. By default its busiest hour; TREADWELL_REPLAY=day plays the whole day.
#include "app/desktop/fill/fill_page.h"
#include "app/desktop/fill/movement_watch.h"
#include "app/desktop/fill/view_strip.h"
#include "app/desktop/plots/timeline.h"
#include "app/desktop/widgets/message_bar.h"
#include "core/session/session.h"
#include "tests/app/desktop/slow_file.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>
#include <cmath>
#include <set>

namespace treadwell::fill {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

void runCli(const QStringList& arguments) {
    QProcess program;
    program.start(QStringLiteral(TREADWELL_CLI), arguments);
    ASSERT_TRUE(program.waitForFinished(60'000));
    ASSERT_EQ(program.exitCode(), 0) << program.readAllStandardError().toStdString();
}

/// Every entry of the example, in the order of their happening.
std::vector<entries::Entry> exampleEntries() {
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("example.treadwell"));
    const auto data = [](const char* name) {
        return QStringLiteral(TREADWELL_SOURCE "/examples/") + QLatin1String{name};
    };
    runCli({QStringLiteral("new"), file, QStringLiteral("--farm"), data("farm.json")});
    runCli({QStringLiteral("import"), file, QStringLiteral("--tickets"), data("tickets.csv"),
            QStringLiteral("--tractors"), data("tractor_log.csv"), QStringLiteral("--samples"),
            data("samples.csv"), QStringLiteral("--heights"), data("heights.csv"), QStringLiteral("--layers"),
            data("layers.csv"), QStringLiteral("--sieves"), data("sieves.csv")});
    const SystemClock clock;
    const std::filesystem::path path{file.toStdString()};
    const auto session =
        session::Session::open({path, path.parent_path() / "state"}, clock, session::Purpose::reading);
    EXPECT_TRUE(session);
    std::vector<entries::Entry> all;
    if (!session) return all;
    const auto season = session->snapshot();
    for (const auto& day : season->days())
        for (const auto& fact : day->facts) all.push_back(fact->stated());
    std::stable_sort(all.begin(), all.end(),
                     [](const auto& a, const auto& b) { return a.header.happened < b.header.happened; });
    return all;
}

struct Span {
    Instant from;
    Instant to;
};

/// The stretch of this length with the most loads, by their starts.
Span busiest(const std::vector<entries::Entry>& all, std::chrono::minutes length) {
    std::vector<Instant> loads;
    for (const entries::Entry& entry : all) {
        if (std::holds_alternative<entries::Load>(entry.body)) loads.push_back(entry.header.happened);
    }
    std::pair<std::ptrdiff_t, Instant> most{0, {}};
    for (auto load = loads.begin(); load != loads.end(); ++load) {
        const auto count = std::lower_bound(load, loads.end(), *load + length) - load;
        if (count > most.first) most = {count, *load};
    }
    return {most.second - 1min, most.second + length};
}

/// A reading that moves by more than this from one look to the next has a cause that can be named.
constexpr double kUnexplained = 0.01;

/// The page's number must be a number, and a step of it must be told.
class Watcher {
  public:
    Watcher(FillPage& page, const settings::DisplayUnits& units)
        : m_gauge{page.findChild<widgets::DensityGauge*>()}, m_page{page}, m_units{units} {}

    void look(const season::Season& season, farm::SiloId silo, Instant now) {
        const density::Readings readings = m_history.at(season, silo, now);
        const auto* moved = m_gauge->findChild<QLabel*>(QStringLiteral("moved"));
        ASSERT_TRUE(readings.layer.estimate || readings.layer.reason);
        if (readings.layer.estimate) {
            const double median = readings.layer.estimate->density.median().kilogramsPerCubicMetre();
            EXPECT_TRUE(std::isfinite(median));
            EXPECT_TRUE(m_gauge->sentence().contains(
                m_units.numberText(readings.layer.estimate->density.median().amount())))
                << m_gauge->sentence().toStdString() << " at " << toIso8601(now);
            expectCause(season, silo, now, readings, moved->text());
            ++m_seen;
        }
        m_before = readings;
        EXPECT_EQ(m_page.findChild<widgets::MessageBar*>()->shownText(), QString{});
        const auto* timeline = m_page.findChild<plots::Timeline*>();
        EXPECT_LE(timeline->shownTo(), now);
        EXPECT_GT(timeline->shownTo(), now - 3min) << "live at the right edge";
    }
    [[nodiscard]] int seen() const noexcept { return m_seen; }
    [[nodiscard]] double largestJump() const noexcept { return m_largest; }

  private:
    /// From look to look, and in what the page says of the last half hour.
    void expectCause(const season::Season& season, farm::SiloId silo, Instant now,
                     const density::Readings& readings, const QString& told) {
        const auto unexplained = [](const density::Movement& movement) {
            DryDensity other;
            for (const density::Move& move : movement.moves) {
                if (move.by == density::MovedBy::other) other += move.change;
            }
            return std::abs(other / movement.after);
        };
        if (const auto step = density::movementOf(m_before, readings, &density::Readings::layer)) {
            m_largest = std::max(m_largest, std::abs(step->change() / step->before));
            EXPECT_LE(unexplained(*step), kUnexplained) << toIso8601(now);
        }
        // The page compares with what was known half an hour ago, where there was something.
        const density::Readings earlier = m_earlier.at(season, silo, now - kMovementSpan);
        if (!earlier.layer.estimate) return;
        EXPECT_TRUE(told.startsWith(QStringLiteral("Steady")) || told.contains(u':'))
            << told.toStdString() << toIso8601(now);
    }

    widgets::DensityGauge* m_gauge;
    FillPage& m_page;
    const settings::DisplayUnits& m_units;
    density::ReadingsHistory m_history;
    density::ReadingsHistory m_earlier;
    density::Readings m_before;
    double m_largest = 0.0;
    int m_seen = 0;
};

TEST(Replay, TheBusiestStretchKeepsItsInvariants) {
    const std::vector<entries::Entry> all = exampleEntries();
    ASSERT_GT(all.size(), 100u);
    const bool wholeDay = qgetenv("TREADWELL_REPLAY") == "day";
    const Span span = busiest(all, wholeDay ? 10h : 40min);

    SeasonMaker before;
    auto next = all.begin();
    for (; next != all.end() && next->header.happened < span.from; ++next) before.entries.push_back(*next);
    HandClock clock{span.from};
    settings::Appearance appearance;
    appearance.setUnits(settings::DisplayUnits{UnitSystem::metric, QLocale::c()});
    Disk disk;
    desk::SeasonDesk desk{std::make_unique<SlowFile>(disk, before), clock};
    FillPage page{desk, appearance};
    page.resize(1100, 760);
    page.show();
    const farm::SiloId silo = desk.season()->farm().silos.begin()->first;
    Watcher watcher{page, appearance.units()};
    std::size_t loads = 0;
    std::set<desk::Ticket> underway;
    QObject::connect(&desk, &desk::SeasonDesk::committed, &page,
                     [&](desk::Ticket ticket) { underway.erase(ticket); });

    for (; clock.time < span.to; clock.time += 2min) {
        for (; next != all.end() && next->header.happened <= clock.time; ++next) {
            loads += std::holds_alternative<entries::Load>(next->body);
            underway.insert(desk.propose(next->body));
        }
        ASSERT_TRUE(QTest::qWaitFor([&] { return underway.empty(); })) << toIso8601(clock.time);
        page.refresh();
        QTest::qWait(1);  // what comes after the paint
        watcher.look(*desk.season(), silo, clock.time);
    }
    EXPECT_GT(loads, wholeDay ? 40u : 6u);
    EXPECT_GT(watcher.seen(), wholeDay ? 100 : 15);
    RecordProperty("largest_jump_percent", static_cast<int>(std::lround(100 * watcher.largestJump())));
}

}  // namespace
}  // namespace treadwell::fill
