#include "core/density/readings.h"

#include "core/farm/geometry.h"

#include <algorithm>
#include <cmath>

namespace treadwell::density {

namespace {

using season::LoadTipped;

/// Collects what every reading of a silo needs.
class Reader {
  public:
    Reader(const season::Season& season, const farm::Silo& silo, Instant now)
        : m_season(season),
          m_silo(silo),
          m_now(now),
          m_readings{season::rollingAt(season, silo.id, now), {}, {}, {}, {}} {
        m_readings.pace = packing::paceAt(season, m_readings.rolling);
    }

    Readings read() {
        readLayer(m_readings.layer);
        const season::Rolling& rolling = m_readings.rolling;
        readPacked(m_readings.today, Reading::day, rolling.todayIn);
        readPacked(m_readings.silo, Reading::silo, rolling.siloIn);
        m_readings.today.options.effectiveLayers = layersIn(rolling.todayIn, m_readings.today.situation);
        for (SiloReading* reading : {&m_readings.layer, &m_readings.today, &m_readings.silo})
            finish(*reading);
        return std::move(m_readings);
    }

  private:
    void readLayer(SiloReading& reading) {
        const auto& pace = m_readings.pace;
        const season::Delivered& today = m_readings.rolling.todayIn;
        if (!pace) {
            reading.reason = Message{Code::tooFewLoads, {today.loads, packing::kFewestPaceLoads}};
            return;
        }
        prepare(reading, Reading::layer, today);
        // The layer under way is of the crop that came last.
        const LoadTipped& last = *season::loadsOf(m_season, m_silo.id, today.last, m_now + kTick).back();
        reading.situation.dryMatter = last.dryMatter;
        reading.situation.work = pace->delivery;
        for (const season::TractorNow& tractor : m_readings.rolling.tractors) {
            if (tractor.silo != m_silo.id || !(tractor.packing > Share{})) continue;
            addMachine(reading, tractor.tractor, tractor.packing);
        }
        reading.options.entries.packingTime = std::hypot(kPackingTimeLogSd, pace->logSd);
        reading.options.entries.dryMatter = dryMatterLogSd(last.dryMatter, last.samples);
    }

    void readPacked(SiloReading& reading, Reading kind, const season::Delivered& delivered) {
        if (delivered.loads == 0) {
            reading.reason = Message{Code::noLoads, {}};
            return;
        }
        prepare(reading, kind, delivered);
        PackedMass packed{delivered.mass, {}};
        for (const auto& [tractor, time] : delivered.packing) {
            if (!addMachine(reading, tractor, Share::fromFraction(1))) continue;
            packed.packing.push_back(time);
        }
        reading.situation.work = std::move(packed);
    }

    void prepare(SiloReading& reading, Reading kind, const season::Delivered& delivered) {
        const farm::SiteRules& rules = m_season.farm().rules;
        Situation& situation = reading.situation;
        situation.dryMatter = *delivered.dryMatter();
        situation.meanDepth = m_silo.plannedDepth;
        situation.target = {rules.minimumDensity, rules.porosityGoal};
        situation.crop = cropOf(delivered);
        if (const auto& layer = m_readings.rolling.layer) {
            situation.layer = layer->what.thickness;
            reading.options.entries.layer =
                layer->what.method == entries::LayerMethod::measured ? kLayerSeenLogSd : kLayerByLoadsLogSd;
        }
        reading.options.reading = kind;
        reading.options.entries.dryMatter = dryMatterLogSd(
            situation.dryMatter, static_cast<double>(std::max<std::int64_t>(1, delivered.samples)));
    }

    /// That of the last load's field; maize where no field is named.
    [[nodiscard]] crop::Crop cropOf(const season::Delivered& delivered) const {
        const auto& fields = m_season.farm().fields;
        for (const LoadTipped* load :
             season::loadsOf(m_season, m_silo.id, delivered.last, delivered.last + kTick)) {
            if (!load->load.field) continue;
            if (const auto field = fields.find(*load->load.field); field != fields.end())
                return field->second.crop;
        }
        return crop::Crop::maize;
    }

    bool addMachine(SiloReading& reading, farm::TractorId id, Share share) {
        const auto& tractors = m_season.farm().tractors;
        const auto known = tractors.find(id);
        if (known == tractors.end()) return false;
        const farm::Tractor& tractor = known->second;
        reading.situation.machines.push_back({tractor.mass, share, tractor.trackWidth, tractor.speed});
        reading.tractors.push_back(id);
        return true;
    }

    /// How many layers the day's crop makes on the surface as planned, at the loose density of its crop.
    [[nodiscard]] double layersIn(const season::Delivered& delivered, const Situation& situation) const {
        if (delivered.loads == 0) return 1.0;
        const Volume spread = delivered.mass / crop::looseAsFed(situation.crop, situation.dryMatter);
        const Volume layer = farm::workingArea(m_silo, m_silo.wallHeight) * layerUsed(situation);
        return std::max(1.0, spread / layer);
    }

    static void finish(SiloReading& reading) {
        if (reading.reason) return;
        auto estimated = estimate(reading.situation, reading.options);
        if (estimated) {
            reading.estimate = std::move(*estimated);
        } else {
            reading.reason = estimated.error().message;
        }
    }

    static constexpr std::chrono::microseconds kTick{1};

    const season::Season& m_season;
    const farm::Silo& m_silo;
    Instant m_now;
    Readings m_readings;
};

}  // namespace

Readings readingsAt(const season::Season& season, farm::SiloId silo, Instant now) {
    const auto& silos = season.farm().silos;
    if (const auto known = silos.find(silo); known != silos.end())
        return Reader{season, known->second, now}.read();
    Readings readings;
    readings.rolling = season::rollingAt(season, silo, now);
    for (SiloReading* reading : {&readings.layer, &readings.today, &readings.silo}) {
        reading->reason = Message{Code::siloUnknown, {}};
    }
    return readings;
}

Doubts doubtsOf(const Readings& readings, const SiloReading& reading) {
    if (!reading.estimate) return {};
    EntriesBehind behind;
    if (readings.rolling.lastSample) behind.sample = readings.rolling.lastSample->at;
    if (readings.rolling.layer) behind.layer = readings.rolling.layer->at;
    return doubtsOf(reading.situation, reading.options, *reading.estimate, behind);
}

}  // namespace treadwell::density
