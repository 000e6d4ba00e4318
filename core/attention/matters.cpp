#include "core/attention/matters.h"

#include "core/attention/codes.h"
#include "core/density/delivery_limit.h"
#include "core/farm/geometry.h"
#include "core/samples/codes.h"
#include "core/season/sampled.h"

#include <algorithm>

namespace treadwell::attention {

namespace {

class MatterCollector final {
  public:
    MatterCollector(const season::Season& season, const density::Readings& readings)
        : m_season{season}, m_readings{readings}, m_rolling{readings.rolling} {}

    std::vector<MatterNow> collect() {
        if (m_rolling.todayIn.loads > 0) {
            addPacking();
            addLayer();
            addDryMatter();
            addChop();
            addFull();
            addSample();
        }
        addShift();
        addCover();
        return std::move(m_found);
    }

  private:
    [[nodiscard]] const farm::SiteRules& rules() const { return m_season.farm().rules; }
    [[nodiscard]] const farm::Silo* silo() const {
        const auto known = m_season.farm().silos.find(m_rolling.silo);
        return known == m_season.farm().silos.end() ? nullptr : &known->second;
    }

    template <class... Arguments>
    void add(Matter matter, Code code, Arguments... arguments) {
        m_found.push_back({matter, {code, {Argument{arguments}...}}});
    }

    /// Packing goes on in a gap, and is behind nothing that comes.
    [[nodiscard]] bool trucksStopped() const {
        const packing::Pace& pace = *m_readings.pace;
        const Seconds gap = season::unpaused(m_season, m_rolling.silo, m_rolling.siloIn.last, m_rolling.at);
        return pace.delivery * gap > pace.lastLoad * kStoppedLoads;
    }

    void addPacking() {
        if (m_rolling.paused || !m_readings.pace || !m_readings.layer.estimate) return;
        if (m_readings.layer.estimate->chance >= rules().wantedChance || trucksStopped()) return;
        const auto limit = density::deliveryLimit(m_readings.layer.situation, m_readings.layer.options,
                                                  rules().wantedChance);
        if (!limit || limit->outcome == density::DeliveryLimit::Outcome::anyDelivery) return;
        const AsFedRate delivery = m_readings.pace->delivery;
        if (limit->rate < delivery)
            add(Matter::packingBehind, code::packingBehind, delivery.amount(), limit->rate.amount());
    }

    void addLayer() {
        if (!m_rolling.layer || m_rolling.layer->what.thickness <= rules().maximumLayer) return;
        add(Matter::layerThick, code::layerThick, m_rolling.layer->what.thickness.layerAmount(),
            rules().maximumLayer.layerAmount());
    }

    /// As it is believed of the last load; one that nobody has sampled is not judged.
    void addDryMatter() {
        const auto loads = season::loadsOf(m_season, m_rolling.silo, m_rolling.siloIn.last,
                                           m_rolling.at + std::chrono::microseconds{1});
        if (loads.empty() || loads.back()->basis == season::DryMatterBasis::assumed) return;
        const auto warning =
            samples::goalWarning(loads.back()->dryMatter, rules().dryMatterLow, rules().dryMatterHigh);
        if (warning) m_found.push_back({Matter::dryMatterOff, *warning});
    }

    /// By the newest tests of today.
    void addChop() {
        const season::Day* day = m_season.day(m_season.zone().dayOf(m_rolling.at));
        if (day == nullptr) return;
        const auto chops = season::chopOf(m_season, *day, m_rolling.at);
        if (chops.empty()) return;
        for (const Message& advice : chops.back().advice()) {
            if (advice.code != code::chopWithin) m_found.push_back({Matter::chopOff, advice});
        }
    }

    /// By the dry matter that lies in it, at the density that the site usually reaches.
    void addFull() {
        if (silo() == nullptr || m_rolling.siloIn.loads == 0) return;
        const Volume planned = farm::levelVolume(*silo(), silo()->plannedDepth);
        if (!(planned > Volume{})) return;
        const double part = m_rolling.siloIn.dry / rules().usualFilling() / planned;
        if (part < kNearlyFull) return;
        add(Matter::siloNearlyFull, code::siloNearlyFull, Share::fromFraction(part).amount());
    }

    void addSample() {
        if (!m_rolling.lastSample) return add(Matter::sampleOverdue, code::sampleMissing);
        const Seconds age = m_rolling.at - m_rolling.lastSample->at;
        if (age > rules().sampleInterval)
            add(Matter::sampleOverdue, code::sampleOverdue, durationAmount(age));
    }

    void addShift() {
        const auto longest = season::longestShift(m_season, m_rolling.at);
        if (longest && *longest >= kLongShift)
            add(Matter::hoursOnShift, code::hoursOnShift, durationAmount(*longest));
    }

    /// A wedge that has reached its depth moves on; what lies behind its ramp stays as it is.
    void addCover() {
        if (silo() == nullptr || silo()->filling != farm::FillingWay::wedge) return;
        const Volume lies = m_rolling.siloIn.dry / rules().usualFilling();
        const Volume behind = lies - farm::risingRampVolume(*silo(), silo()->plannedDepth);
        const Length length = behind / (silo()->width * silo()->plannedDepth);
        if (length >= kWorthCovering)
            add(Matter::readyToCover, code::readyToCover, std::min(length, silo()->length).amount());
    }

    const season::Season& m_season;
    const density::Readings& m_readings;
    const season::Rolling& m_rolling;
    std::vector<MatterNow> m_found;
};

}  // namespace

std::vector<MatterNow> mattersAt(const season::Season& season, const density::Readings& readings) {
    return MatterCollector{season, readings}.collect();
}

}  // namespace treadwell::attention
