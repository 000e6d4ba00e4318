#include "core/attention/codes.h"
#include "core/attention/matters.h"

#include <algorithm>

namespace treadwell::attention {

namespace {

class Grounds final {
  public:
    Grounds(const season::Season& season, const density::Readings& readings)
        : m_season{season}, m_rolling{readings.rolling}, m_readings{readings} {}

    std::vector<GroundNow> collect() {
        addPace();
        addHeights();
        addDryMatter();
        addLayer();
        addLoads();
        addMasses();
        std::stable_sort(m_found.begin(), m_found.end(),
                         [](const GroundNow& a, const GroundNow& b) { return a.standing < b.standing; });
        return std::move(m_found);
    }

  private:
    template <class... Arguments>
    void add(Standing standing, Code code, Arguments... arguments) {
        m_found.push_back({standing, {code, {Argument{arguments}...}}});
    }

    [[nodiscard]] std::vector<const season::LoadTipped*> loads() const {
        return season::loadsOf(m_season, m_rolling.silo, Instant::min(),
                               m_rolling.at + std::chrono::microseconds{1});
    }

    void addPace() {
        if (m_readings.pace) return;
        add(Standing::missing, code::missingPace, m_rolling.todayIn.loads, packing::kFewestPaceLoads);
    }

    void addHeights() {
        std::optional<Instant> read;
        for (const auto& day : m_season.days()) {
            for (const season::Survey& survey : day->surveys) {
                if (survey.what.silo == m_rolling.silo && survey.at <= m_rolling.at) read = survey.at;
            }
        }
        if (read) {
            add(Standing::known, code::knownHeights, *read);
        } else {
            add(Standing::missing, code::missingHeights);
        }
    }

    /// As the last load has it; before the first, as the next one would.
    void addDryMatter() {
        const season::FarmBook& farm = m_season.farm();
        const auto tipped = loads();
        const season::LoadTipped* last = tipped.empty() ? nullptr : tipped.back();
        if (!m_rolling.lastSample || (last != nullptr && last->basis == season::DryMatterBasis::assumed)) {
            add(Standing::assumed,
                farm.lastSeasonsDryMatter ? code::carriedDryMatter : code::assumedDryMatter,
                farm.unsampledDryMatter().amount());
            return;
        }
        const season::Sample& sample = *m_rolling.lastSample;
        const bool other = last != nullptr && last->load.field && sample.reading.field &&
                           last->basis == season::DryMatterBasis::otherSample;
        add(other ? Standing::assumed : Standing::known,
            other ? code::otherFieldsDryMatter : code::knownDryMatter,
            last != nullptr ? last->dryMatter.amount() : sample.reading.dryMatter.amount(), sample.at);
    }

    void addLayer() {
        if (!m_rolling.layer) {
            add(Standing::assumed, code::assumedLayer, density::kAssumedLayer.layerAmount());
        } else {
            add(Standing::known, code::knownLayer, m_rolling.layer->what.thickness.layerAmount(),
                m_rolling.layer->at);
        }
    }

    void addLoads() {
        const auto tipped = loads();
        if (tipped.empty()) return;
        const auto all = static_cast<std::int64_t>(tipped.size());
        const std::int64_t usual = std::count_if(tipped.begin(), tipped.end(), [](const auto* each) {
            return each->load.source == entries::MassSource::usual;
        });
        if (usual > 0) {
            add(Standing::assumed, code::assumedLoads, usual, all);
        } else {
            add(Standing::known, code::knownLoads, all);
        }
    }

    void addMasses() {
        bool working = false;
        bool guessed = false;
        for (const season::TractorNow& now : m_rolling.tractors) {
            if (now.activity == farm::Activity::away || now.silo != m_rolling.silo) continue;
            const farm::Tractor& tractor = m_season.farm().tractors.at(now.tractor);
            working = true;
            if (tractor.massKnown) continue;
            guessed = true;
            add(Standing::assumed, code::assumedMasses, tractor.name, tractor.mass.amount());
        }
        if (working && !guessed) add(Standing::known, code::knownMasses);
    }

    const season::Season& m_season;
    const season::Rolling& m_rolling;
    const density::Readings& m_readings;
    std::vector<GroundNow> m_found;
};

}  // namespace

std::vector<GroundNow> groundsAt(const season::Season& season, const density::Readings& readings) {
    return Grounds{season, readings}.collect();
}

}  // namespace treadwell::attention
