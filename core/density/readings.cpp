#include "core/density/readings.h"

#include "core/density/calibration_gain.h"
#include "core/density/codes.h"

#include <cmath>

namespace treadwell::density {

namespace {

void setReason(Readings& readings, const Message& reason) {
    for (SiloReading* reading : {&readings.layer, &readings.today, &readings.silo}) reading->reason = reason;
}

void read(Readings& readings, const season::Season& season, const SiloLayers& layers) {
    const std::size_t count = layers.layers.size();
    if (readings.pace && count > 0) {
        readings.layer = readingOf(season, layers, {count - 1, 1, Instant::min()}, Reading::layer);
    } else {
        readings.layer.reason =
            Message{code::tooFewLoads, {readings.rolling.todayIn.loads, packing::kFewestPaceLoads}};
    }
    const Message noLoads{code::noLoads, {}};
    const Instant midnight = season.zone().startOf(season.zone().dayOf(layers.at));
    if (const LayerSpan today = layersSince(layers, midnight); today.count > 0) {
        readings.today = readingOf(season, layers, today, Reading::day);
    } else {
        readings.today.reason = noLoads;
    }
    if (count > 0) {
        readings.silo = readingOf(season, layers, {0, count, Instant::min()}, Reading::day);
    } else {
        readings.silo.reason = noLoads;
    }
}

/// What moved the silo's reading, and what that did to its band.
void tellLearnt(Readings& readings, const Learnt& learnt, farm::SiloId silo) {
    if (!readings.silo.estimate || learnt.calibration.silos.empty()) return;
    const Distribution& density = readings.silo.estimate->density;
    const double level = readings.silo.options.residual.level;
    const DryDensity before = std::min(density.limit(), density.median() * std::exp(-level));
    const SiloPosterior* own = learnt.calibration.find(silo);
    if (own == nullptr) {
        readings.learnt.push_back({code::learntFromFarm, {before.amount(), density.median().amount()}});
        return;
    }
    if (readings.surveyed && readings.surveyed->newest) {
        readings.learnt.push_back({code::learntFromHeights,
                                   {*readings.surveyed->newest, before.amount(), density.median().amount()}});
    }
    readings.learnt.push_back(messageOf(gainOf(*own)));
    if (readings.surveyed && readings.surveyed->slope) {
        const DepthSlope& slope = *readings.surveyed->slope;
        readings.learnt.push_back(
            {code::learntSlope,
             {Share::fromFraction(slope.perMetre).amount(), Share::fromFraction(slope.sd).amount(),
              Share::fromFraction(FieldEquation::kFactorSlope).amount(),
              Share::fromFraction(slope.priorSd).amount()}});
    }
}

}  // namespace

Readings readingsAt(const season::Season& season, farm::SiloId silo, Instant now) {
    return ReadingsHistory{}.at(season, silo, now);
}

Readings ReadingsHistory::at(const season::Season& season, farm::SiloId silo, Instant now) {
    Readings readings;
    readings.rolling = season::rollingAt(season, silo, now);
    readings.pace = packing::paceAt(season, readings.rolling);
    const auto known = season.farm().silos.find(silo);
    if (known == season.farm().silos.end()) {
        setReason(readings, {code::siloUnknown, {}});
        return readings;
    }
    const Learnt& learnt = m_learning.at(season, now);
    readings.surveyed = learnt.find(silo);
    auto layers = laySilo(season, known->second, m_layers.at(season, known->second, now), readings.rolling,
                          readings.pace, learnt.calibration.residualOf(silo));
    if (!layers) {
        setReason(readings, layers.error().message);
        return readings;
    }
    readings.layers = std::move(*layers);
    read(readings, season, *readings.layers);
    tellLearnt(readings, learnt, silo);
    return readings;
}

Doubts doubtsOf(const Readings& readings, const SiloReading& reading) {
    if (!reading.estimate) return {};
    EntriesBehind behind;
    if (readings.rolling.lastSample) behind.sample = readings.rolling.lastSample->at;
    if (readings.rolling.layer) behind.layer = readings.rolling.layer->at;
    if (readings.layers) behind.height = readings.layers->asItLies.meanDepth;
    behind.heightsRead = readings.surveyed && readings.surveyed->newest >= readings.rolling.siloIn.last;
    return doubtsOf(reading.situation, reading.options, *reading.estimate, behind);
}

}  // namespace treadwell::density
