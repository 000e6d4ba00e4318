#pragma once

#include "app/desktop/fill/cautions.h"
#include "app/desktop/widgets/attention_panel.h"
#include "core/advice/look_back.h"
#include "core/attention/matters.h"

#include <set>

namespace treadwell::fill {

/// All that the panel beside the gauge says: what matters now, what would make the answer surer, what is
/// missing or assumed, what came of advice, the cautions, and what is known.
class Notices final {
  public:
    /// Stays away until the matter has gone and comes again.
    void putAway(const QString& key) { m_putAway.insert(key); }
    [[nodiscard]] std::vector<widgets::NoticeSection> at(const season::Season& season,
                                                         const density::Readings& readings,
                                                         const std::vector<attention::CautionNow>& cautions,
                                                         const Speech& speech);

  private:
    [[nodiscard]] std::vector<widgets::Notice> matters(const season::Season& season,
                                                       const density::Readings& readings,
                                                       const Speech& speech);
    [[nodiscard]] std::vector<widgets::Notice> adviceToday(const season::Season& season,
                                                           const season::Rolling& rolling,
                                                           const Speech& speech);

    std::set<QString> m_putAway;
    density::ReadingsHistory m_history;
    // What came of advice is looked up once a minute, and when more is decided.
    std::vector<advice::LookedBack> m_lookedBack;
    std::optional<farm::SiloId> m_lookedFor;
    Instant m_lookedAt;
    std::size_t m_decided = 0;
};

}  // namespace treadwell::fill
