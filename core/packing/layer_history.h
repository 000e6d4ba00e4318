#pragma once

#include "core/packing/layer_ledger.h"

namespace treadwell::packing {

/// layersOf for one who asks again and again: keeps the layers of days that are past, as long as the season
/// hands out the same days, so that one more entry costs its own day. Gives what layersOf gives. Not for
/// several threads at once.
class LayerHistory {
  public:
    [[nodiscard]] LayerBook at(const season::Season& season, const farm::Silo& silo, Instant now);

  private:
    struct PastDay {
        std::shared_ptr<const season::Day> day;
        std::vector<std::shared_ptr<const Layer>> settled;  ///< on that day
        LayerLedger after;
    };

    void forgetFrom(const season::Season& season, const farm::Silo& silo, Instant now);

    std::optional<farm::Silo> m_silo;
    std::vector<PastDay> m_past;
};

}  // namespace treadwell::packing
