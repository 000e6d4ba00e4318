// What any assignment of loads and minutes to layers must obey, whatever the season.
#include "core/packing/layer_history.h"
#include "core/season/rolling.h"
#include "tests/support/season_maker.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace treadwell::packing {
namespace {

using namespace testing_support;
using namespace std::chrono_literals;

constexpr int kDays = 3;
const Instant kStart = at("2026-02-10T00:00:00Z");

double between(double lowest, double highest) {
    return lowest + (highest - lowest) * *rc::gen::inRange(0, 10'001) / 10'000;
}

Instant sometime() {
    return kStart + 1h + std::chrono::minutes{*rc::gen::inRange(0, kDays * 24 * 60 - 60)};
}

std::uint8_t oneOf(int count) {
    return static_cast<std::uint8_t>(*rc::gen::inRange(1, count + 1));
}

entries::Body generatedBody() {
    const auto silo = idOf<farm::SiloTag>(oneOf(2));
    switch (*rc::gen::inRange(0, 10)) {
        case 0:
            return someWork(oneOf(3), farm::Activity::away);
        case 1:
        case 2:
            return someWork(oneOf(3), farm::Activity::packing, between(0, 1), oneOf(2));
        case 3:
            return entries::LayerSeen{
                silo, Length::fromMetres(between(0.02, 1)),
                *rc::gen::element(entries::LayerMethod::measured, entries::LayerMethod::loadsPerCover)};
        case 4:
            return entries::HeightSurvey{
                silo, {{Length::fromMetres(5), Length::fromMetres(7), Length::fromMetres(between(0, 5))}}};
        case 5:
            return entries::DryMatterSample{DryMatter::fromPercent(between(20, 60)), {}, {}, {}, {}};
        default:
            entries::Load load = someLoad(between(0.1, 30), oneOf(2));
            load.source = *rc::gen::element(entries::MassSource::weighed, entries::MassSource::usual,
                                            entries::MassSource::box);
            return load;
    }
}

farm::Silo siloNumber(std::uint8_t number) {
    farm::Silo silo = someSilo(number);
    silo.filling = number == 1 ? farm::FillingWay::wedge : farm::FillingWay::lifts;
    silo.length = Length::fromMetres(20);
    return silo;
}

SeasonMaker generatedSeason() {
    SeasonMaker maker;
    for (std::uint8_t silo = 1; silo <= 2; ++silo) maker.add(entries::SiloDefined{siloNumber(silo)}, kStart);
    for (std::uint8_t tractor = 1; tractor <= 3; ++tractor)
        maker.add(entries::TractorDefined{someTractor(tractor, 12)}, kStart);
    const int count = *rc::gen::inRange(0, 60);
    for (int i = 0; i < count; ++i) maker.add(generatedBody(), sometime());
    return maker;
}

bool sameLayer(const Layer& a, const Layer& b) {
    const auto facts = [](const Layer& layer) {
        return std::tie(layer.number, layer.begin, layer.end, layer.mass, layer.dry, layer.spread, layer.area,
                        layer.thickness, layer.basis, layer.packing, layer.buried, layer.closed);
    };
    const auto sameLoad = [](const LayerLoad& one, const LayerLoad& other) {
        return one.load->entry == other.load->entry && one.mass == other.mass;
    };
    return facts(a) == facts(b) &&
           std::equal(a.loads.begin(), a.loads.end(), b.loads.begin(), b.loads.end(), sameLoad);
}

bool sameBook(const LayerBook& a, const LayerBook& b) {
    const auto same = [](const auto& one, const auto& other) { return sameLayer(*one, *other); };
    return std::equal(a.layers.begin(), a.layers.end(), b.layers.begin(), b.layers.end(), same) &&
           a.beforeFirstLoad == b.beforeFirstLoad && a.underWheels == b.underWheels &&
           a.weighedLoads == b.weighedLoads;
}

bool near(double a, double b) {
    return std::abs(a - b) <= 1e-9 * std::max({1.0, std::abs(a), std::abs(b)});
}

RC_GTEST_PROP(LayersProperty, MassDryMassAndMinutesAreConserved, ()) {
    const auto season = season::Season::fold(generatedSeason().entries);
    const Instant now = sometime();
    const farm::Silo silo = siloNumber(oneOf(2));
    const LayerBook book = layersOf(season, silo, now);
    const season::Delivered placed = season::rollingAt(season, silo.id, now).siloIn;
    double mass = 0, dry = 0;
    std::map<entries::EntryId, double> loads;
    std::map<farm::TractorId, double> packing;
    for (const auto& layer : book.layers) {
        mass += layer->mass.si();
        dry += layer->dry.si();
        for (const LayerLoad& load : layer->loads) loads[load.load->entry] += load.mass.si();
        for (const auto& [tractor, time] : layer->packing) packing[tractor] += time.count();
    }
    RC_ASSERT(near(mass, placed.mass.si()));
    RC_ASSERT(near(dry, placed.dry.si()));
    RC_ASSERT(std::ssize(loads) == placed.loads);
    for (const season::LoadTipped* load : season::loadsOf(season, silo.id, kStart, now + 1us))
        RC_ASSERT(near(loads.at(load->entry), load->load.mass.si()));
    RC_ASSERT(packing.size() == placed.packing.size());
    for (const auto& [tractor, time] : placed.packing) RC_ASSERT(near(packing.at(tractor), time.count()));
    for (const auto& [tractor, time] : season::packingOf(season, silo.id, kStart, now)) {
        const auto listed = book.beforeFirstLoad.find(tractor);
        const double bare = listed == book.beforeFirstLoad.end() ? 0.0 : listed->second.count();
        RC_ASSERT(near(packing[tractor] + bare, time.count()));
    }
}

RC_GTEST_PROP(LayersProperty, LayersFollowOneAnotherAndAreFinite, ()) {
    const auto season = season::Season::fold(generatedSeason().entries);
    const LayerBook book = layersOf(season, siloNumber(oneOf(2)), sometime());
    double buried = 1.0;
    for (std::size_t i = 0; i < book.layers.size(); ++i) {
        const Layer& layer = *book.layers[i];
        RC_ASSERT(layer.number == static_cast<std::int64_t>(i) + 1);
        RC_ASSERT(layer.closed || i + 1 == book.layers.size());
        RC_ASSERT(layer.begin <= layer.end && layer.mass > AsFedMass{} && !layer.loads.empty());
        const double cover = layer.spread / (layer.area * layer.thickness);
        RC_ASSERT(!layer.closed || near(cover, 1.0));
        RC_ASSERT(cover > 0.0 && cover < 1.0 + 1e-6);
        RC_ASSERT(layer.buried.fraction() >= 0.0 && layer.buried.fraction() <= buried + 1e-9);
        buried = layer.buried.fraction();
        const double passes = passesOn(layer, season.farm());
        RC_ASSERT(std::isfinite(passes) && passes >= 0.0);
        const MassSpread spread = massSpread(layer.loads, book.weighedLoads);
        RC_ASSERT(spread.common >= 0.0 && spread.common < 0.1 && spread.own >= 0.0 && spread.own < 0.1);
    }
}

RC_GTEST_PROP(LayersProperty, TheOrderOfEntriesDoesNotMatter, ()) {
    SeasonMaker maker = generatedSeason();
    const Instant now = sometime();
    const farm::Silo silo = siloNumber(oneOf(2));
    const auto season = season::Season::fold(maker.entries);
    std::shuffle(maker.entries.begin(), maker.entries.end(), std::mt19937{*rc::gen::arbitrary<unsigned>()});
    RC_ASSERT(
        sameBook(layersOf(season, silo, now), layersOf(season::Season::fold(maker.entries), silo, now)));
}

RC_GTEST_PROP(LayersProperty, GoingOnWithAHistoryEqualsStartingAnew, ()) {
    SeasonMaker maker = generatedSeason();
    auto season = season::Season::fold(maker.entries);
    const farm::Silo silo = siloNumber(oneOf(2));
    LayerHistory history;
    for (int step = 0; step < 4; ++step) {
        const Instant now = sometime();
        RC_ASSERT(sameBook(history.at(season, silo, now), layersOf(season, silo, now)));
        maker.add(generatedBody(), sometime());
        season = season.with(maker.entries.back());
    }
}

}  // namespace
}  // namespace treadwell::packing
