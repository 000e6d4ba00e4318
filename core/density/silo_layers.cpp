#include "core/density/silo_layers.h"

#include <algorithm>
#include <cmath>

namespace treadwell::density {

namespace {

/// A tractor that can pack, and how long it packs each tonne now.
struct Packer {
    farm::TractorId tractor;
    double mass_kg;
    double now_min_t;
};

std::vector<Packer> packersOf(const season::Season& season, const season::Rolling& rolling,
                              const std::optional<packing::Pace>& pace) {
    std::vector<Packer> packers;
    for (const auto& [id, tractor] : season.farm().tractors)
        packers.push_back({id, tractor.mass.kilograms(), 0});
    std::stable_sort(packers.begin(), packers.end(),
                     [](const Packer& a, const Packer& b) { return a.mass_kg > b.mass_kg; });
    if (!pace) return packers;
    for (const season::TractorNow& now : rolling.tractors) {
        const auto packer = std::find_if(packers.begin(), packers.end(),
                                         [&](const Packer& each) { return each.tractor == now.tractor; });
        if (packer == packers.end() || now.silo != rolling.silo) continue;
        packer->now_min_t =
            PackingIntensity::fromSi(now.packing.fraction() / pace->delivery.si()).minutesPerTonne();
    }
    return packers;
}

/// Works out layer after layer, bottom up.
class Facts {
  public:
    Facts(const season::Season& season, const SiloLayers& layers, std::vector<Packer> packers)
        : m_farm(season.farm()), m_layers(layers), m_packers(std::move(packers)), m_fleet(m_packers.size()) {
        for (const auto& day : layers.book.days) {
            for (const season::LayerNote& note : day->layers) {
                if (note.what.silo == layers.silo.id && note.at <= layers.at) m_notes.push_back(&note);
            }
        }
    }

    LayerFacts of(std::shared_ptr<const packing::Layer> layer) {
        LayerFacts facts;
        facts.crop = m_farm.cropOf(layer->loads.back().load->load.field);
        facts.limit = limitOf(layer->dryMatter(), facts.crop);
        facts.soFar = factorOf(*layer, 0.0);
        if (m_layers.pace) facts.toCome = stillToCome(*layer, m_layers.book, *m_layers.pace);
        facts.onceBuried = facts.toCome > Share{} ? factorOf(*layer, facts.toCome.fraction()) : facts.soFar;
        while (m_seen < m_notes.size() && m_notes[m_seen]->at <= layer->end) ++m_seen;
        if (m_seen > 0) facts.seen = m_notes[m_seen - 1]->entry;
        facts.layer = std::move(layer);
        return facts;
    }

  private:
    /// With the part of the packing that is still to come.
    PackingFactor factorOf(const packing::Layer& layer, double left) {
        for (std::size_t i = 0; i < m_packers.size(); ++i) {
            const Packer& packer = m_packers[i];
            m_fleet[i] = {packer.mass_kg, left * packer.now_min_t};
            if (const auto packed = layer.packing.find(packer.tractor); packed != layer.packing.end()) {
                m_fleet[i].minutes += (packed->second / layer.mass).minutesPerTonne();
            }
        }
        return {packingFactorOf(strongestPrefix(m_fleet).value, layer.dryMatter().fraction(),
                                heldLayer(layer.thickness).centimetres())};
    }

    const season::FarmBook& m_farm;
    const SiloLayers& m_layers;
    std::vector<Packer> m_packers;
    std::vector<MachineTime> m_fleet;
    std::vector<const season::LayerNote*> m_notes;
    std::size_t m_seen = 0;
};

Result<Stack> stackedAs(const SiloLayers& layers, Filled filled) {
    const double level = std::exp(layers.residual.level);
    std::vector<LaidLayer> laid;
    laid.reserve(layers.layers.size());
    for (const LayerFacts& facts : layers.layers) {
        laid.push_back({facts.layer->dry, bracketOf(facts.packing(filled)) * level, facts.limit.density});
    }
    return stackOf(layers.silo, laid, filled);
}

}  // namespace

LayerSpan layersSince(const SiloLayers& layers, Instant from) {
    LayerSpan span{layers.layers.size(), 0, from};
    while (span.first > 0 && layers.layers[span.first - 1].layer->end >= from) {
        --span.first;
        ++span.count;
    }
    return span;
}

Result<SiloLayers> laySilo(const season::Season& season, const farm::Silo& silo, packing::LayerBook book,
                           const season::Rolling& rolling, std::optional<packing::Pace> pace,
                           const Residual& residual) {
    SiloLayers layers{.silo = silo,
                      .at = rolling.at,
                      .book = std::move(book),
                      .tractors = rolling.tractors,
                      .pace = pace,
                      .residual = residual,
                      .layers = {},
                      .whenFull = {},
                      .asItLies = {}};
    Facts facts{season, layers, packersOf(season, rolling, pace)};
    layers.layers.reserve(layers.book.layers.size());
    for (const auto& layer : layers.book.layers) layers.layers.push_back(facts.of(layer));
    for (const Filled filled : {Filled::whenFull, Filled::asItLies}) {
        auto stack = stackedAs(layers, filled);
        if (!stack) return tl::unexpected{stack.error()};
        (filled == Filled::whenFull ? layers.whenFull : layers.asItLies) = std::move(*stack);
    }
    return layers;
}

}  // namespace treadwell::density
