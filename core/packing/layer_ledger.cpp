#include "core/packing/layer_ledger.h"

#include "core/farm/geometry.h"

#include <algorithm>

namespace treadwell::packing {

namespace {

/// Parts this small, against the whole they are cut from, are rounding.
constexpr double kRounding = 1e-9;

ThicknessBasis basisOf(entries::LayerMethod method) {
    return method == entries::LayerMethod::measured ? ThicknessBasis::measured
                                                    : ThicknessBasis::loadsPerCover;
}

}  // namespace

void LayerLedger::take(const season::Day& day, Instant now) {
    const std::vector<Stretch> stretches = stretchesOn(day, now);
    const DryDensity filling = day.farm().rules.usualFilling();
    const auto carried = day.before.layers.find(m_silo.id);
    const season::LayerNote* seen = carried == day.before.layers.end() ? nullptr : &carried->second;
    auto nextSeen = day.layers.begin();
    auto nextSurvey = day.surveys.begin();
    Instant from = day.begin;
    for (const season::LoadTipped& load : day.loads) {
        if (load.load.silo != m_silo.id || load.at > now) continue;
        roll(stretches, from, load.at);
        from = load.at;
        for (; nextSeen != day.layers.end() && nextSeen->at <= load.at; ++nextSeen) {
            if (nextSeen->what.silo == m_silo.id) seen = &*nextSeen;
        }
        for (; nextSurvey != day.surveys.end() && nextSurvey->at <= load.at; ++nextSurvey) see(*nextSurvey);
        place(load, spreadOf(day, load, seen, filling), filling);
    }
    roll(stretches, from, std::min(day.end, now));
    for (; nextSurvey != day.surveys.end() && nextSurvey->at <= now; ++nextSurvey) see(*nextSurvey);
}

std::vector<LayerLedger::Stretch> LayerLedger::stretchesOn(const season::Day& day, Instant now) {
    std::vector<Stretch> stretches;
    for (const season::WorkSpan& span : day.work) {
        if (span.silo != m_silo.id || !(span.packing > Share{})) continue;
        const Instant end = day.endOf(span.begin, span.end, now);
        if (end > span.begin)
            stretches.push_back({indexOf(span.tractor), span.packing.fraction(), span.begin, end});
    }
    return stretches;
}

std::size_t LayerLedger::indexOf(farm::TractorId tractor) {
    const auto known = std::find(m_tractors.begin(), m_tractors.end(), tractor);
    const auto index = static_cast<std::size_t>(known - m_tractors.begin());
    if (known == m_tractors.end()) m_tractors.push_back(tractor);
    return index;
}

void LayerLedger::see(const season::Survey& survey) {
    if (survey.what.silo != m_silo.id) return;
    m_seenHeight = Length{};
    for (const entries::HeightReading& reading : survey.what.readings)
        m_seenHeight = std::max(m_seenHeight, reading.height);
    m_rampVolume = farm::risingRampVolume(m_silo, m_seenHeight);
}

void LayerLedger::roll(const std::vector<Stretch>& stretches, Instant from, Instant to) {
    std::vector<Seconds> packing(m_tractors.size(), Seconds{0});
    bool rolled = false;
    for (const Stretch& stretch : stretches) {
        const Seconds time{std::min(stretch.end, to) - std::max(stretch.begin, from)};
        if (!(time > Seconds{0})) continue;
        packing[stretch.tractor] += time * stretch.share;
        rolled = true;
    }
    if (!rolled) return;
    if (m_loads > 0) return credit(packing);
    for (std::size_t i = 0; i < packing.size(); ++i) {
        if (packing[i] > Seconds{0}) m_beforeFirstLoad[m_tractors[i]] += packing[i];
    }
}

void LayerLedger::credit(const std::vector<Seconds>& packing) {
    const auto within = [&](const Growing& growing) {
        return std::max(0.0, growing.upper_kg - std::max(growing.lower_kg, m_bottom_kg));
    };
    double whole_kg = 0.0;
    for (const Growing& growing : m_growing) whole_kg += within(growing);
    for (Growing& growing : m_growing) {
        growing.packing.resize(m_tractors.size(), Seconds{0});
        const double part = within(growing) / whole_kg;
        for (std::size_t i = 0; i < packing.size(); ++i) growing.packing[i] += packing[i] * part;
    }
}

LayerLedger::Spread LayerLedger::spreadOf(const season::Day& day, const season::LoadTipped& load,
                                          const season::LayerNote* seen, DryDensity filling) {
    m_rampVolume = m_rampVolume + load.dryMass() / filling;
    const Length height = std::max(m_seenHeight, farm::rampHeight(m_silo, m_rampVolume));
    return {crop::looseAsFed(day.farm().cropOf(load.load.field), load.dryMatter),
            farm::workingArea(m_silo, height), seen == nullptr ? kAssumedThickness : seen->what.thickness,
            seen == nullptr ? ThicknessBasis::assumed : basisOf(seen->what.method)};
}

void LayerLedger::place(const season::LoadTipped& load, const Spread& spread, DryDensity filling) {
    const double mass_kg = load.load.mass.kilograms();
    const double layer_kg = (spread.loose * (spread.area * spread.thickness)).kilograms();
    std::rotate(m_lastLoads.begin(), m_lastLoads.begin() + 1, m_lastLoads.end());
    m_lastLoads.back() = m_placed_kg;
    const double middle_kg = m_placed_kg + mass_kg / 2.0;
    ++m_loads;
    if (load.load.source == entries::MassSource::weighed) ++m_weighed;
    for (double rest_kg = mass_kg; rest_kg > 0.0;) {
        if (m_growing.empty() || m_growing.back().layer.closed) {
            Growing next;
            next.lower_kg = next.upper_kg = m_placed_kg;
            next.layer.number = ++m_layers;
            next.layer.begin = load.at;
            m_growing.push_back(std::move(next));
        }
        const double room_kg = (1.0 - m_growing.back().covered) * layer_kg;
        const bool fits = rest_kg < room_kg * (1.0 + kRounding) + mass_kg * kRounding;
        const double part_kg = fits ? rest_kg : room_kg;
        m_growing.back().layer.closed = rest_kg >= room_kg * (1.0 - kRounding);
        fill(m_growing.back(), load, spread, part_kg, middle_kg);
        rest_kg -= part_kg;
    }
    moveReach((filling * (spread.area * kPackingReach) / load.dryMatter).kilograms());
}

void LayerLedger::fill(Growing& growing, const season::LoadTipped& load, const Spread& spread, double part_kg,
                       double loadMiddle_kg) {
    Layer& layer = growing.layer;
    const LayerLoad part{&load, AsFedMass::fromKilograms(part_kg)};
    const Volume volume = part.mass / spread.loose;
    const double covered = volume / (spread.area * spread.thickness);
    layer.end = load.at;
    layer.loads.push_back(part);
    layer.mass += part.mass;
    layer.dry += part.dry();
    layer.spread += volume;
    // What the parts cover, each with its own surface and thickness, adds up to one cover.
    const double before = growing.covered;
    growing.covered += covered;
    layer.area = (layer.area * before + spread.area * covered) / growing.covered;
    layer.thickness = layer.spread / (layer.area * growing.covered);
    layer.basis = std::max(layer.basis, spread.basis);
    m_placed_kg += part_kg;
    growing.upper_kg = m_placed_kg;
    growing.lying.push_back({m_placed_kg, loadMiddle_kg});
}

void LayerLedger::moveReach(double reach_kg) {
    const double lastLoads_kg = m_loads < kFewestLoadsUnderWheels ? 0.0 : m_lastLoads.front();
    m_bottom_kg = std::max(m_bottom_kg, std::min(m_placed_kg - reach_kg, lastLoads_kg));
    m_reach_kg = std::max(reach_kg, m_placed_kg - lastLoads_kg);
    const auto settled = [&](const Growing& growing) {
        return growing.layer.closed && growing.upper_kg <= m_bottom_kg;
    };
    const auto first = std::find_if_not(m_growing.begin(), m_growing.end(), settled);
    for (auto each = m_growing.begin(); each != first; ++each) {
        m_settled.push_back(std::make_shared<const Layer>(published(*each)));
    }
    m_growing.erase(m_growing.begin(), first);
}

double LayerLedger::reach_kg() const noexcept {
    return m_bottom_kg > 0.0 ? m_placed_kg - m_bottom_kg : m_reach_kg;
}

Layer LayerLedger::published(const Growing& growing) const {
    Layer layer = growing.layer;
    for (std::size_t i = 0; i < growing.packing.size(); ++i) {
        if (growing.packing[i] > Seconds{0}) layer.packing[m_tractors[i]] = growing.packing[i];
    }
    // The mean over the layer of the part of the reach that lies above the middle of its loads, since all of
    // a load comes at once; what is out of reach counts in full.
    double left_kg = 0.0, lower_kg = growing.lower_kg;
    for (const auto& [upper_kg, loadMiddle_kg] : growing.lying) {
        const double inReach_kg = std::max(0.0, upper_kg - std::max(lower_kg, m_bottom_kg));
        left_kg += inReach_kg * std::clamp(1.0 - (m_placed_kg - loadMiddle_kg) / reach_kg(), 0.0, 1.0);
        lower_kg = upper_kg;
    }
    const double left = left_kg / (growing.upper_kg - growing.lower_kg);
    layer.buried = Share::fromFraction(std::clamp(1.0 - left, 0.0, 1.0));
    return layer;
}

std::vector<std::shared_ptr<const Layer>> LayerLedger::takeSettled() {
    return std::exchange(m_settled, {});
}

void LayerLedger::addTo(LayerBook& book) const {
    for (const Growing& growing : m_growing)
        book.layers.push_back(std::make_shared<const Layer>(published(growing)));
    book.beforeFirstLoad = m_beforeFirstLoad;
    book.weighedLoads = m_weighed;
    book.underWheels = AsFedMass::fromKilograms(m_placed_kg - m_bottom_kg);
    book.reach = AsFedMass::fromKilograms(m_loads > 0 ? reach_kg() : 0.0);
}

}  // namespace treadwell::packing
