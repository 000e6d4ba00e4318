#include "core/density/codes.h"
#include "core/density/grounds.h"
#include "core/density/silo_layers.h"
#include "core/farm/machine_classes.h"
#include "core/season/dry_matter.h"
#include "core/stats/square.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace treadwell::density {

namespace {

constexpr Length kDeepestMean = Length::fromMetres(20);  // that a situation may have

using stats::square;

double sdOf(packing::ThicknessBasis basis) {
    switch (basis) {
        case packing::ThicknessBasis::measured:
            return kLayerSeenLogSd;
        case packing::ThicknessBasis::loadsPerCover:
            return kLayerByLoadsLogSd;
        case packing::ThicknessBasis::assumed:
            break;
    }
    return kLayerAssumedLogSd;
}

/// Errors that several layers share: what each part counts, by what they have in common.
template <class Key>
class Shared {
  public:
    void add(const Key& key, double count) { m_counts[key] += count; }
    [[nodiscard]] double sd() const {
        double variance = 0.0;
        for (const auto& [key, count] : m_counts) variance += count * count;
        return std::sqrt(variance);
    }

  private:
    std::map<Key, double> m_counts;
};

/// Sums over the parts of layers that a reading speaks of.
class Summing {
  public:
    Summing(const season::Season& season, const SiloLayers& layers, LayerSpan span, Reading kind,
            Filled filled)
        : m_season(season), m_layers(layers), m_span(span), m_kind(kind), m_filled(filled) {
        for (std::size_t k = span.first; k < span.first + span.count; ++k) addLayer(k);
        for (Part& part : m_parts) part.weight = weightOf(part);
    }

    [[nodiscard]] Situation situation(std::vector<farm::TractorId>& tractors) const {
        Situation situation{.work = {},
                            .dryMatter = m_dry / m_mass,
                            .layer = {},
                            .meanDepth = std::min(2.0 * meanDepth(), kDeepestMean),
                            .machines = {},
                            .crop = m_parts.back().facts->crop,
                            .target = {rules().minimumDensity, rules().porosityGoal}};
        if (m_anySeen) situation.layer = m_thicknessMass / m_mass.kilograms();
        PackedMass packed{m_mass, {}, {}};
        if (m_kind == Reading::layer && m_layers.pace) packed.delivery = m_layers.pace->delivery;
        for (const season::TractorNow& now : m_layers.tractors) {
            const auto known = m_season.farm().tractors.find(now.tractor);
            if (known == m_season.farm().tractors.end()) continue;
            const Share share = shareNow(now);
            const Seconds time = packedBy(now.tractor) + Seconds{m_toCome * share.fraction()};
            if (!(time > Seconds{0}) && !(m_kind == Reading::layer && share > Share{})) continue;
            const farm::Tractor& tractor = known->second;
            situation.machines.push_back({tractor.mass,
                                          m_kind == Reading::layer ? share : Share::fromFraction(1),
                                          tractor.trackWidth, tractor.speed});
            tractors.push_back(now.tractor);
            packed.packing.push_back(time);
        }
        situation.work = std::move(packed);
        return situation;
    }

    [[nodiscard]] Options options() const {
        Options options;
        options.reading = m_kind;
        options.effectiveLayers = std::max(1.0, square(m_volume) / m_volumeSquares);
        options.residual = m_layers.residual;
        options.entries.machineMass = machineMassSd();
        options.entries.layer = thicknessSd();
        options.entries.packingTime = packingTimeSd();
        options.entries.loadMass = loadMassSd();
        options.entries.dryMatter = dryMatterSd();
        return options;
    }

    [[nodiscard]] Estimate estimate(const Situation& situation, const Options& options) const {
        Packing packed = packingOf(machineWork(situation), layerUsed(situation), situation.dryMatter);
        packed.factor = factor();
        CaseFrame frame = caseFrame(situation, options);
        frame.depthFactor = uncapped() / FieldEquation::bracket(packed.factor.si);
        const SpreadParts fixed =
            fixedParts(options.residual, options.reading, options.effectiveLayers, situation.meanDepth);
        Estimate estimate = estimateFrom(situation, options, frame, std::move(packed), fixed, grounds(frame));
        if (m_anySeen && m_anyAssumed) {
            estimate.warnings.insert(estimate.warnings.begin(),
                                     {code::layerAssumed, {kAssumedLayer.layerAmount()}});
        }
        return estimate;
    }

  private:
    /// Of all machines together; one that is known by its class alone errs by itself and more.
    [[nodiscard]] double machineMassSd() const {
        double all = 0.0;
        double guessed = 0.0;
        for (const season::TractorNow& now : m_layers.tractors) {
            const auto known = m_season.farm().tractors.find(now.tractor);
            if (known == m_season.farm().tractors.end()) continue;
            const double time = packedBy(now.tractor).count() + m_toCome * shareNow(now).fraction();
            const double counts = known->second.mass.si() * time;
            all += counts;
            if (!known->second.massKnown) guessed = std::hypot(guessed, counts * farm::kClassMassLogSd);
        }
        return all > 0.0 ? std::hypot(kMachineMassLogSd, guessed / all) : kMachineMassLogSd;
    }

    struct Part {
        const LayerFacts* facts;
        double part;    ///< of the layer
        double volume;  ///< of the part [m3]
        double elasticity;
        double toCome;  ///< share of its packing time that is still to come
        double weight;  ///< by which its errors count in the whole; the weights add up to 1
    };

    [[nodiscard]] const farm::SiteRules& rules() const { return m_season.farm().rules; }

    void addLayer(std::size_t k) {
        const LayerFacts& facts = m_layers.layers[k];
        const packing::Layer& layer = *facts.layer;
        double dry = 0.0;
        for (const packing::LayerLoad& load : layer.loads) {
            if (load.load->at < m_span.from) continue;
            dry += load.dry().si();
            // A load that two layers share is one load all the same.
            if (!m_loads.empty() && m_loads.back().load == load.load) {
                m_loads.back().mass += load.mass;
            } else {
                m_loads.push_back(load);
            }
        }
        if (!(dry > 0.0)) return;
        const StackedLayer& place = m_layers.stack(m_filled).layers[k];
        Part part{.facts = &facts,
                  .part = dry / layer.dry.si(),
                  .volume = dry / place.density.si(),
                  .elasticity = FieldEquation::elasticity(facts.packing(m_filled).si),
                  .toCome = 0.0,
                  .weight = 0.0};
        addPacking(layer, part);
        const AsFedMass mass = layer.mass * part.part;
        m_dry += DryMass::fromSi(dry);
        m_mass += mass;
        m_volume += part.volume;
        m_volumeSquares += square(part.volume);
        m_depthVolume += place.depth.si() * part.volume;
        m_elasticityVolume += part.elasticity * part.volume;
        m_thicknessMass += layer.thickness * mass.kilograms();
        (layer.basis == packing::ThicknessBasis::assumed ? m_anyAssumed : m_anySeen) = true;
        const double bracket =
            FieldEquation::bracket(facts.packing(m_filled).si) * std::exp(m_layers.residual.level);
        m_uncappedVolume += dry / (bracket * FieldEquation::factor(place.depth.si()));
        constexpr double kRounding = 1e-9;
        m_allLimited &= place.density.si() >= facts.limit.density.si() * (1.0 - kRounding);
        m_parts.push_back(part);
    }

    void addPacking(const packing::Layer& layer, Part& part) {
        for (const auto& [tractor, time] : layer.packing) m_packing[tractor] += time * part.part;
        if (m_filled != Filled::whenFull || !m_layers.pace) return;
        const double left = part.facts->toCome.fraction();
        const double seconds = layer.mass.si() * part.part * left / m_layers.pace->delivery.si();
        m_toCome += seconds;
        const double toCome = seconds * m_layers.pace->packing;
        const double whole = toCome + layer.packingTime().count() * part.part;
        if (whole > 0.0) part.toCome = toCome / whole;
    }

    [[nodiscard]] double weightOf(const Part& part) const {
        if (!(m_elasticityVolume > 0.0)) return part.volume / m_volume;
        return part.volume * part.elasticity / m_elasticityVolume;
    }

    [[nodiscard]] Length meanDepth() const { return Length::fromMetres(m_depthVolume / m_volume); }

    /// What the estimate would be without its limit, as long as that does not bind in part.
    [[nodiscard]] double uncapped() const {
        return m_dry.si() / (m_allLimited ? m_uncappedVolume : m_volume);
    }

    /// Of a layer whose elasticity is the mean one.
    [[nodiscard]] PackingFactor factor() const {
        if (m_parts.size() == 1) return m_parts.front().facts->packing(m_filled);
        const double elasticity = m_elasticityVolume / m_volume;
        return {FieldEquation::packingFactorFor(FieldEquation::kBracketConstant / (1.0 - elasticity))};
    }

    [[nodiscard]] Share shareNow(const season::TractorNow& now) const {
        return now.silo == m_layers.silo.id ? now.packing : Share{};
    }
    [[nodiscard]] Seconds packedBy(farm::TractorId tractor) const {
        const auto packed = m_packing.find(tractor);
        return packed == m_packing.end() ? Seconds{0} : packed->second;
    }

    [[nodiscard]] double thicknessSd() const {
        Shared<std::optional<entries::EntryId>> shared;
        for (const Part& part : m_parts) {
            const bool assumed = part.facts->layer->basis == packing::ThicknessBasis::assumed;
            shared.add(assumed ? std::nullopt : part.facts->seen,
                       part.weight * sdOf(part.facts->layer->basis));
        }
        return shared.sd();
    }
    [[nodiscard]] double packingTimeSd() const {
        double toCome = 0.0;
        for (const Part& part : m_parts) toCome += part.weight * part.toCome;
        return std::hypot(kPackingTimeLogSd, m_layers.pace ? toCome * m_layers.pace->logSd : 0.0);
    }
    [[nodiscard]] double loadMassSd() const {
        const auto [common, own] = packing::massSpread(m_loads, m_layers.book.weighedLoads);
        return std::hypot(common, own);
    }
    /// Of the loads' dry matter as it was carried to them, 1.5 % for the method.
    [[nodiscard]] double dryMatterSd() const {
        season::DryMatterErrors errors;
        for (const Part& part : m_parts) {
            const packing::Layer& layer = *part.facts->layer;
            const double tipped = layer.dry.si() * part.part;
            for (const packing::LayerLoad& load : layer.loads) {
                if (load.load->at < m_span.from) continue;
                const double count = part.weight * load.dry().si() / tipped;
                errors.add(*load.load, count / load.load->dryMatter.fraction());
            }
        }
        return std::hypot(kDryMatterMethodLogSd, errors.sd());
    }

    [[nodiscard]] Grounds grounds(const CaseFrame& frame) const {
        Grounds grounds;
        std::set<entries::EntryId> samples, seen;
        for (const packing::LayerLoad& load : m_loads) {
            grounds.loads.push_back(load.load->entry);
            if (const auto& sample = load.load->sample; sample && samples.insert(*sample).second)
                grounds.samples.push_back(*sample);
        }
        for (const Part& part : m_parts) {
            if (part.facts->seen && seen.insert(*part.facts->seen).second)
                grounds.layersSeen.push_back(*part.facts->seen);
        }
        grounds.work = workEntries();
        const packing::Layer& first = *m_parts.front().facts->layer;
        const bool several = m_parts.size() > 1;
        Message what{code::workingOneLayer, {first.number, m_dry.amount(), first.begin, first.end}};
        if (several) {
            what = {code::workingLayers,
                    {static_cast<std::int64_t>(m_parts.size()), m_dry.amount(),
                     Volume::fromCubicMetres(m_volume).amount(), square(m_volume) / m_volumeSquares}};
        }
        grounds.layers = {std::move(what), several ? "(sum V)^2 / sum V^2" : "sum(m)",
                          several,         m_filled,
                          meanDepth(),     frame.depthFactor / std::exp(m_layers.residual.level)};
        return grounds;
    }

    /// Of the stretches of packing from the first crop until the last layer was out of reach.
    [[nodiscard]] std::vector<entries::EntryId> workEntries() const {
        const Instant begin = m_parts.front().facts->layer->begin;
        Instant end = m_layers.at;
        AsFedMass above;
        for (std::size_t k = m_span.first + m_span.count; k < m_layers.layers.size(); ++k) {
            above += m_layers.layers[k].layer->mass;
            if (above < m_layers.book.underWheels) continue;
            end = m_layers.layers[k].layer->end;
            break;
        }
        std::vector<entries::EntryId> work;
        std::set<entries::EntryId> known;
        for (const auto& day : m_layers.book.days) {
            if (day->end <= begin || day->begin > end) continue;
            for (const season::WorkSpan& span : day->work) {
                if (span.silo != m_layers.silo.id || !(span.packing > Share{})) continue;
                if (span.begin > end || (span.end && *span.end <= begin)) continue;
                if (known.insert(span.entry).second) work.push_back(span.entry);
            }
        }
        return work;
    }

    const season::Season& m_season;
    const SiloLayers& m_layers;
    LayerSpan m_span;
    Reading m_kind;
    Filled m_filled;
    std::vector<Part> m_parts;
    std::vector<packing::LayerLoad> m_loads;
    std::map<farm::TractorId, Seconds> m_packing;
    double m_toCome = 0.0;  ///< seconds of one tractor in full, still to come
    DryMass m_dry;
    AsFedMass m_mass;
    double m_volume = 0.0;
    double m_volumeSquares = 0.0;
    double m_depthVolume = 0.0;
    double m_elasticityVolume = 0.0;
    double m_uncappedVolume = 0.0;
    Length m_thicknessMass;
    bool m_anySeen = false;
    bool m_anyAssumed = false;
    bool m_allLimited = true;
};

}  // namespace

SiloReading readingOf(const season::Season& season, const SiloLayers& layers, LayerSpan span, Reading kind) {
    SiloReading reading;
    for (const Filled filled : {Filled::asItLies, Filled::whenFull}) {
        const Summing sums{season, layers, span, kind, filled};
        reading.tractors.clear();
        reading.situation = sums.situation(reading.tractors);
        reading.options = sums.options();
        if (const auto checked = check(reading.situation, reading.options); !checked) {
            reading.reason = checked.error().message;
            continue;
        }
        (filled == Filled::whenFull ? reading.estimate : reading.asItLies) =
            sums.estimate(reading.situation, reading.options);
    }
    return reading;
}

}  // namespace treadwell::density
