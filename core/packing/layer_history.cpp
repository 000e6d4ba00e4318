#include "core/packing/layer_history.h"

namespace treadwell::packing {

/// Keeps the leading days that are the season's still and were over at `now`.
void LayerHistory::forgetFrom(const season::Season& season, const farm::Silo& silo, Instant now) {
    if (m_silo != silo) m_past.clear();
    m_silo = silo;
    const auto days = season.days();
    std::size_t same = 0;
    while (same < m_past.size() && same < days.size() && m_past[same].day == days[same] &&
           days[same]->end <= now) {
        ++same;
    }
    m_past.erase(m_past.begin() + static_cast<std::ptrdiff_t>(same), m_past.end());
}

LayerBook LayerHistory::at(const season::Season& season, const farm::Silo& silo, Instant now) {
    forgetFrom(season, silo, now);
    LayerBook book;
    for (const PastDay& past : m_past) {
        book.days.push_back(past.day);
        book.layers.insert(book.layers.end(), past.settled.begin(), past.settled.end());
    }
    LayerLedger ledger = m_past.empty() ? LayerLedger{silo} : m_past.back().after;
    for (const auto& day : season.days().subspan(m_past.size())) {
        if (day->begin > now) break;
        ledger.take(*day, now);
        auto settled = ledger.takeSettled();
        book.days.push_back(day);
        book.layers.insert(book.layers.end(), settled.begin(), settled.end());
        if (day->end <= now) m_past.push_back({day, std::move(settled), ledger});
    }
    ledger.addTo(book);
    return book;
}

}  // namespace treadwell::packing
