#include "core/packing/layers.h"

#include "core/packing/layer_ledger.h"

namespace treadwell::packing {

Seconds Layer::packingTime() const noexcept {
    Seconds total{0};
    for (const auto& [tractor, time] : packing) total += time;
    return total;
}

LayerBook layersOf(const season::Season& season, const farm::Silo& silo, Instant now) {
    LayerBook book;
    LayerLedger ledger{silo};
    for (const auto& day : season.days()) {
        if (day->begin > now) break;
        ledger.take(*day, now);
        for (auto& layer : ledger.takeSettled()) book.layers.push_back(std::move(layer));
        book.days.push_back(day);
    }
    ledger.addTo(book);
    return book;
}

}  // namespace treadwell::packing
