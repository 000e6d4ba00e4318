#include "core/session/carry.h"

#include "core/density/learning.h"
#include "core/session/codes.h"
#include "tests/core/session/session_fixture.h"

namespace treadwell::session {
namespace {

using namespace std::chrono_literals;
using density::DensityEvidence;
using testing_support::at;
using testing_support::someLoad;
using testing_support::someSilo;
using testing_support::someTractor;
using testing_support::someWork;

const Instant kBegins = at("2027-09-01T06:00:00Z");

entries::Core core(double density, double height) {
    entries::Core core;
    core.silo = someSilo().id;
    core.along = Length::fromMetres(1);
    core.across = Length::fromMetres(5);
    core.height = Length::fromMetres(height);
    core.density = DryDensity::fromKilogramsPerCubicMetre(density);
    return core;
}

class CarryTest : public SessionTest {
  protected:
    Session begun(const char* file, Instant begins) {
        m_clock.time = begins;
        return Session::create({m_folder / file, m_folder / "state"}, {"Two Creeks", "America/Sao_Paulo"},
                               m_author, m_clock, begins)
            .value();
    }

    void record(Session& session, const entries::Body& body, Instant when) {
        const auto recorded = session.propose(body, when, m_author);
        ASSERT_TRUE(recorded) << toText(recorded.error().code());
    }

    /// A silo filled over a day, and cores of it months later.
    void fill(Session& session, std::initializer_list<double> densities) {
        const Instant morning = m_clock.time;
        record(session, entries::SiloDefined{someSilo()}, morning);
        record(session, entries::TractorDefined{someTractor(1, 14)}, morning);
        record(session, someWork(1, farm::Activity::packing), morning);
        for (int i = 0; i < 40; ++i) record(session, someLoad(12), morning + i * 6min);
        record(session, someWork(1, farm::Activity::away), morning + 5h);
        double height = 0.1;
        for (const double density : densities)
            record(session, core(density, height += 0.1), morning + 24h * 60);
    }

    void carry(Session& session, std::initializer_list<Session*> from) {
        std::vector<std::shared_ptr<const season::Season>> seasons;
        for (const Session* each : from) seasons.push_back(each->snapshot());
        std::vector<Earlier> earlier;
        std::size_t i = 0;
        for (const Session* each : from) earlier.push_back({*seasons[i++], each->head()});
        const auto proposals = carriedFrom(earlier, m_clock.time);
        ASSERT_TRUE(proposals);
        const auto recorded = session.importAll(*proposals, m_author);
        ASSERT_TRUE(recorded) << toText(recorded.error().code()) << recorded.error().field;
    }
};

/// A file's own evidence, as of the season of that name.
std::vector<DensityEvidence> measuredIn(const Session& session, const std::string& name) {
    const auto season = session.snapshot();
    std::vector<DensityEvidence> own = density::evidenceOf(*season, season->days().back()->end).own();
    for (DensityEvidence& each : own) each.season = name;
    return own;
}

std::string nameOf(const Session& session) {
    return session.snapshot()->days().front()->facts.front()->id().value.text();
}

std::vector<DensityEvidence> both(std::vector<DensityEvidence> first,
                                  const std::vector<DensityEvidence>& second) {
    first.insert(first.end(), second.begin(), second.end());
    return first;
}

void expectSame(const density::Calibration& a, const density::Calibration& b) {
    EXPECT_EQ(a.site.mean, b.site.mean);
    EXPECT_EQ(a.site.variance, b.site.variance);
    EXPECT_EQ(a.siloVariance.scale, b.siloVariance.scale);
    EXPECT_EQ(a.placeVariance.scale, b.placeVariance.scale);
    EXPECT_EQ(a.next.level, b.next.level);
    EXPECT_EQ(a.next.varianceDoubt, b.next.varianceDoubt);
    ASSERT_EQ(a.silos.size(), b.silos.size());
    for (std::size_t i = 0; i < a.silos.size(); ++i) {
        EXPECT_EQ(a.silos[i].season, b.silos[i].season);
        EXPECT_EQ(a.silos[i].level.mean, b.silos[i].level.mean);
        EXPECT_EQ(a.silos[i].level.variance, b.silos[i].level.variance);
    }
}

TEST_F(CarryTest, ANewSeasonCarriesTheFarmAndNamesTheHeads) {
    Session session = created();
    farm::Silo silo = someSilo();
    record(session, entries::SiloDefined{silo}, m_clock.time);
    silo.name = "Long bunker";
    record(session, entries::SiloDefined{silo}, m_clock.time);
    const farm::SiloPlace place{43.52, -89.51, 30, {}};
    record(session, entries::SiloPlaced{silo.id, {43.5, -89.5, 0, {}}}, m_clock.time);
    record(session, entries::SiloPlaced{silo.id, place}, m_clock.time);
    record(session, entries::TractorDefined{someTractor(1, 14)}, m_clock.time);
    ASSERT_TRUE(load(session, 12));
    const auto season = session.snapshot();
    const std::vector<Earlier> earlier{{*season, session.head()}};
    const auto carried = carriedFrom(earlier, kBegins);
    ASSERT_TRUE(carried);
    ASSERT_EQ(carried->size(), 5u) << "the heads, a silo, its place, a tractor, the rules";
    const auto& named = std::get<entries::SeasonCarried>(carried->front().body);
    ASSERT_EQ(named.from.size(), 1u);
    EXPECT_EQ(named.from[0].head, session.head());
    EXPECT_EQ(named.from[0].farm, "Two Creeks");
    EXPECT_EQ(named.from[0].begins, m_clock.time);
    EXPECT_TRUE(named.evidence->empty()) << "nothing was measured";
    EXPECT_EQ(std::get<entries::SiloDefined>((*carried)[1].body).silo, silo);
    EXPECT_EQ(std::get<entries::SiloPlaced>((*carried)[2].body), (entries::SiloPlaced{silo.id, place}));
    for (const Proposal& proposal : *carried) {
        EXPECT_EQ(proposal.happened, kBegins);
        EXPECT_TRUE(accepted(*season, proposal));
    }
    const season::Season nothing;
    EXPECT_EQ(carriedFrom(std::vector<Earlier>{{nothing, {}}}, kBegins).error().code(), code::seasonEmpty);
}

TEST_F(CarryTest, CalibrationGoesOnAsIfTheEarlierFileLayBeside) {
    Session first = begun("2026.treadwell", at("2026-09-15T10:00:00Z"));
    fill(first, {150, 160, 155, 170});
    Session next = begun("2027.treadwell", kBegins);
    carry(next, {&first});
    const auto learnt = [&] {
        return density::learnFrom(*next.snapshot(), next.snapshot()->days().back()->end).calibration;
    };
    const auto before = learnt();
    EXPECT_LT(before.next.level, -0.05) << "before its first core the farm is known to pack loosely";
    EXPECT_EQ(before.find(someSilo().id), nullptr) << "its own silo has not been measured";
    expectSame(before, density::calibrate(measuredIn(first, nameOf(first))).value());
    // And after its own.
    fill(next, {180, 185});
    ASSERT_NE(learnt().find(someSilo().id), nullptr);
    expectSame(learnt(),
               density::calibrate(both(measuredIn(first, nameOf(first)), measuredIn(next, ""))).value());
}

TEST_F(CarryTest, AFileIsAskedBeforeThoseThatTookItsCoresOver) {
    Session first = begun("2026.treadwell", at("2026-09-15T10:00:00Z"));
    fill(first, {150, 160});
    Session second = begun("2027.treadwell", kBegins);
    carry(second, {&first});
    fill(second, {180});
    record(first, core(165, 0.4), kBegins);  // after it was carried
    const auto seasons = [](const Session& session) {
        const auto season = session.snapshot();
        std::map<std::string, int> count;
        for (const auto& each : density::evidenceOf(*season, season->days().back()->end).carried)
            ++count[each.evidence.season];
        return count;
    };
    using Count = std::map<std::string, int>;
    Session alone = begun("alone.treadwell", at("2028-09-01T06:00:00Z"));
    carry(alone, {&second});
    EXPECT_EQ(seasons(alone), (Count{{nameOf(first), 2}, {nameOf(second), 1}})) << "through the second";
    for (const bool turned : {false, true}) {
        Session third = begun(turned ? "c.treadwell" : "d.treadwell", at("2028-09-01T06:00:00Z"));
        turned ? carry(third, {&second, &first}) : carry(third, {&first, &second});
        EXPECT_EQ(seasons(third), (Count{{nameOf(first), 3}, {nameOf(second), 1}}));
    }
    Session twice = begun("twice.treadwell", at("2028-09-01T06:00:00Z"));
    carry(twice, {&first, &first});
    carry(twice, {&first});
    EXPECT_EQ(seasons(twice), (Count{{nameOf(first), 3}})) << "however often it is carried";
}

}  // namespace
}  // namespace treadwell::session
