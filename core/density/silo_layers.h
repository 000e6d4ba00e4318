#pragma once

#include "core/density/estimate.h"
#include "core/density/stack.h"
#include "core/packing/layers.h"
#include "core/packing/pace.h"

#include <optional>
#include <vector>

namespace treadwell::density {

/// A layer with what its density rests on but for its depth.
struct LayerFacts {
    std::shared_ptr<const packing::Layer> layer;
    crop::Crop crop = crop::Crop::maize;
    Limit limit;
    PackingFactor soFar;       ///< by the minutes credited so far, rule B3
    PackingFactor onceBuried;  ///< and by those still to come while packing goes on as now, rule B4
    Share toCome;              ///< of the minutes a tonne that the pace gives
    std::optional<entries::EntryId> seen;  ///< who said how thick it is spread

    [[nodiscard]] PackingFactor packing(Filled filled) const noexcept {
        return filled == Filled::whenFull ? onceBuried : soFar;
    }
};

/// All layers of a silo at one moment, in their places. "When full" a layer has the minutes that it will have
/// got and lies under the planned depth; "as it lies" it has the minutes credited so far and lies under what
/// is there.
struct SiloLayers {
    farm::Silo silo;
    Instant at;
    packing::LayerBook book;
    std::vector<season::TractorNow> tractors;
    std::optional<packing::Pace> pace;
    Residual residual;
    std::vector<LayerFacts> layers;  ///< bottom up
    Stack whenFull;
    Stack asItLies;

    [[nodiscard]] const Stack& stack(Filled filled) const noexcept {
        return filled == Filled::whenFull ? whenFull : asItLies;
    }
};

/// Lays the layers of `book` upon each other. Tractors that the farm does not know have no mass and do not
/// count. Errors: those of stackOf().
[[nodiscard]] Result<SiloLayers> laySilo(const season::Season& season, const farm::Silo& silo,
                                         packing::LayerBook book, const season::Rolling& rolling,
                                         std::optional<packing::Pace> pace, const Residual& residual);

/// Layers that follow each other, first to last, or what was tipped of them from a moment on.
struct LayerSpan {
    std::size_t first = 0;
    std::size_t count = 0;
    Instant from = Instant::min();
};

/// How a span of layers is read by itself.
[[nodiscard]] constexpr Reading kindOf(const LayerSpan& span) noexcept {
    return span.count == 1 ? Reading::layer : Reading::day;
}

/// What was tipped from `from` on; the first layer may hold older crop, which is left out.
[[nodiscard]] LayerSpan layersSince(const SiloLayers& layers, Instant from);

/// One reading of a silo: the situation that the season gives, and its estimate or the reason why there is
/// none.
struct SiloReading {
    Situation situation;
    Options options;
    std::vector<farm::TractorId> tractors;  ///< in the order of situation.machines
    std::optional<Estimate> estimate;       ///< when full: the headline
    std::optional<Estimate> asItLies;       ///< at today's depth, less certain
    std::optional<Message> reason;

    [[nodiscard]] const std::optional<Estimate>& of(Filled filled) const noexcept {
        return filled == Filled::whenFull ? estimate : asItLies;
    }
};

/// What several layers, or one, amount to: all their dry matter over all their volume.
///
/// Their own errors shrink with the number of effective layers, (sum v)^2 / sum v^2 by volume; common ones do
/// not: a machine's mass, a share of time, a thickness seen once, the samples that several layers stand on,
/// scale and loose density (rule B10). An error of the elasticity s_k counts with v_k s_k. The packing factor
/// given is that of a layer of the mean elasticity. `kind` is Reading::layer for one layer, else
/// Reading::day. Takes a span that holds crop.
[[nodiscard]] SiloReading readingOf(const season::Season& season, const SiloLayers& layers, LayerSpan span,
                                    Reading kind);

}  // namespace treadwell::density
