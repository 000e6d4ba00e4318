#include "core/density/weak_places.h"

#include "core/density/codes.h"
#include "core/season/rolling.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace treadwell::density {

namespace {

constexpr double kLeastCause = 0.01;  ///< of ln(density)

/// What makes a layer's density, as logarithms; of several layers the means by dry matter.
struct Factors {
    double dry_kg = 0.0;
    double packed_kg = 0.0;  ///< dry matter of layers that somebody packed; the next two are of these
    double minutes = 0.0;    ///< ln(min/t)
    double machines = 0.0;   ///< ln(kg)
    double thickness = 0.0;  ///< ln(cm)
    double dryMatter = 0.0;
    double depthFactor = 0.0;
    double elasticity = 0.0;
    double depth_m = 0.0;

    void add(const Factors& other) {
        const auto mean = [](double& mine, double weight, double theirs, double more) {
            if (more > 0.0) mine = (mine * weight + theirs * more) / (weight + more);
        };
        mean(minutes, packed_kg, other.minutes, other.packed_kg);
        mean(machines, packed_kg, other.machines, other.packed_kg);
        mean(thickness, dry_kg, other.thickness, other.dry_kg);
        mean(dryMatter, dry_kg, other.dryMatter, other.dry_kg);
        mean(depthFactor, dry_kg, other.depthFactor, other.dry_kg);
        mean(elasticity, dry_kg, other.elasticity, other.dry_kg);
        mean(depth_m, dry_kg, other.depth_m, other.dry_kg);
        dry_kg += other.dry_kg;
        packed_kg += other.packed_kg;
    }
};

class Weighing {
  public:
    Weighing(const season::Season& season, const SiloLayers& layers, Filled filled)
        : m_season(season), m_layers(layers), m_filled(filled) {
        for (std::size_t k = 0; k < layers.layers.size(); ++k) m_silo.add(factorsOf(k));
    }

    /// Runs of the loosest layers.
    [[nodiscard]] std::vector<LayerSpan> spans() const {
        const std::vector<StackedLayer>& stacked = m_layers.stack(m_filled).layers;
        std::vector<std::size_t> order(stacked.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            return stacked[a].density < stacked[b].density;
        });
        std::vector<bool> weak(stacked.size(), false);
        double left_kg = m_silo.dry_kg * kWeakShare.fraction();
        for (const std::size_t k : order) {
            if (!(left_kg > 0.0)) break;
            weak[k] = true;
            left_kg -= m_layers.layers[k].layer->dry.kilograms();
        }
        std::vector<LayerSpan> spans;
        for (std::size_t k = 0; k < weak.size(); ++k) {
            if (!weak[k]) continue;
            if (k == 0 || !weak[k - 1]) spans.push_back({k, 0});
            ++spans.back().count;
        }
        return spans;
    }

    [[nodiscard]] std::vector<WeakPlace> places(std::span<const LayerSpan> spans) const {
        std::vector<WeakPlace> places;
        for (const LayerSpan& span : spans) {
            if (auto found = place(span)) places.push_back(std::move(*found));
        }
        return places;
    }

  private:
    [[nodiscard]] std::optional<WeakPlace> place(const LayerSpan& span) const {
        const SiloReading reading = readingOf(m_season, m_layers, span, kindOf(span));
        const auto& estimate = reading.of(m_filled);
        if (!estimate) return std::nullopt;
        const std::size_t last = span.first + span.count - 1;
        const packing::Layer& top = *m_layers.layers[last].layer;
        WeakPlace place{
            .layers = span,
            .begin = m_layers.layers[span.first].layer->begin,
            .end = last + 1 < m_layers.layers.size() ? m_layers.layers[last + 1].layer->begin : top.end,
            .mass = {},
            .dry = {},
            .lower = m_layers.stack(m_filled).layers[span.first].lower,
            .upper = m_layers.stack(m_filled).layers[last].upper,
            .density = estimate->density,
            .causes = {}};
        Factors factors;
        for (std::size_t k = span.first; k <= last; ++k) {
            factors.add(factorsOf(k));
            place.mass += m_layers.layers[k].layer->mass;
            place.dry += m_layers.layers[k].layer->dry;
        }
        addStretch(place);
        addCauses(place, factors);
        return place;
    }

    [[nodiscard]] Factors factorsOf(std::size_t k) const {
        const LayerFacts& facts = m_layers.layers[k];
        const StackedLayer& place = m_layers.stack(m_filled).layers[k];
        const double factor = facts.packing(m_filled).si;
        Factors factors{.dry_kg = facts.layer->dry.kilograms(),
                        .thickness = std::log(heldLayer(facts.layer->thickness).centimetres()),
                        .dryMatter = std::log(facts.layer->dryMatter().fraction()),
                        .depthFactor = std::log(FieldEquation::factor(place.depth.metres())),
                        .elasticity = FieldEquation::elasticity(factor),
                        .depth_m = place.depth.metres()};
        const double minutes = minutesPerTonne(facts);
        if (!(factor > 0.0 && minutes > 0.0)) return factors;
        factors.packed_kg = factors.dry_kg;
        factors.minutes = std::log(minutes);
        // What is left of the packing factor: the machines' mean mass, as far as they count.
        factors.machines = std::log(factor) + factors.thickness - 0.5 * (factors.minutes + factors.dryMatter);
        return factors;
    }

    [[nodiscard]] double minutesPerTonne(const LayerFacts& facts) const {
        PackingIntensity time = facts.layer->intensity();
        if (m_filled == Filled::whenFull && m_layers.pace)
            time += m_layers.pace->intensity * facts.toCome.fraction();
        return time.minutesPerTonne();
    }

    /// "32 min at 210 t/h, tractors packing: 2"; of a single load nothing can be said.
    void addStretch(WeakPlace& place) const {
        const Seconds time{place.end - place.begin};
        if (!(time > Seconds{0})) return;
        const auto packing = season::packingOf(m_season, m_layers.silo.id, place.begin, place.end);
        place.causes.push_back(
            {code::weakStretch, {durationAmount(time), (place.mass / time).amount(), std::ssize(packing)}});
    }

    void addCauses(WeakPlace& place, const Factors& own) const {
        if (!(own.packed_kg > 0.0)) {
            place.causes.push_back({code::weakNotPacked, {}});
            return;
        }
        const auto minutes = [](double log) {
            return PackingIntensity::fromMinutesPerTonne(std::exp(log)).amount();
        };
        const auto mass = [](double log) { return MachineMass::fromKilograms(std::exp(log)).amount(); };
        const auto thickness = [](double log) {
            return Length::fromCentimetres(std::exp(log)).layerAmount();
        };
        const auto dryMatter = [](double log) { return DryMatter::fromFraction(std::exp(log)).amount(); };
        const double s = m_silo.elasticity;
        std::vector<std::pair<double, Message>> causes{
            {0.5 * s * (own.minutes - m_silo.minutes),
             {code::weakFewMinutes, {minutes(own.minutes), minutes(m_silo.minutes)}}},
            {s * (own.machines - m_silo.machines),
             {code::weakLightTractors, {mass(own.machines), mass(m_silo.machines)}}},
            {s * (m_silo.thickness - own.thickness),
             {code::weakThickLayer, {thickness(own.thickness), thickness(m_silo.thickness)}}},
            {0.5 * s * (own.dryMatter - m_silo.dryMatter),
             {code::weakWetCrop, {dryMatter(own.dryMatter), dryMatter(m_silo.dryMatter)}}},
            {own.depthFactor - m_silo.depthFactor,
             {code::weakNearSurface, {Length::fromMetres(own.depth_m).amount()}}}};
        std::stable_sort(causes.begin(), causes.end(),
                         [](const auto& a, const auto& b) { return a.first < b.first; });
        for (auto& [effect, cause] : causes) {
            if (effect <= -kLeastCause) place.causes.push_back(std::move(cause));
        }
    }

    const season::Season& m_season;
    const SiloLayers& m_layers;
    Filled m_filled;
    Factors m_silo;
};

}  // namespace

std::optional<Field> fieldOf(const season::Season& season, const SiloLayers& layers, Filled filled) {
    std::vector<FieldLayer> fieldLayers;
    const double level = std::exp(layers.residual.level);
    for (std::size_t k = 0; k < layers.layers.size(); ++k) {
        const SiloReading reading = readingOf(season, layers, {k, 1}, Reading::layer);
        const auto& estimate = reading.of(filled);
        if (!estimate) return std::nullopt;
        const LayerFacts& facts = layers.layers[k];
        const double own = estimate->spread[SpreadPart::place];
        fieldLayers.push_back({{bracketOf(facts.packing(filled)).si() * level, facts.limit.density.si()},
                               facts.limit.density,
                               estimate->spread.total() - own - estimate->spread[SpreadPart::depthSlope],
                               own});
    }
    return Field{layers.silo, layers.stack(filled), std::move(fieldLayers), layers.residual};
}

std::vector<WeakPlace> placesOf(const season::Season& season, const SiloLayers& layers, Filled filled,
                                std::span<const LayerSpan> spans) {
    return Weighing{season, layers, filled}.places(spans);
}

std::vector<WeakPlace> weakestPlaces(const season::Season& season, const SiloLayers& layers, Filled filled,
                                     std::size_t most) {
    const Weighing weighing{season, layers, filled};
    std::vector<WeakPlace> places = weighing.places(weighing.spans());
    std::stable_sort(places.begin(), places.end(), [](const WeakPlace& a, const WeakPlace& b) {
        return a.density.median() < b.density.median();
    });
    if (places.size() > most) places.erase(places.begin() + static_cast<std::ptrdiff_t>(most), places.end());
    return places;
}

}  // namespace treadwell::density
