#include "core/advice/look_back.h"

#include <algorithm>

namespace treadwell::advice {

std::vector<LookedBack> lookBack(const season::Season& season, farm::SiloId silo, Instant now,
                                 density::ReadingsHistory& history) {
    std::vector<LookedBack> found;
    const season::Day* day = season.day(season.zone().dayOf(now));
    if (day == nullptr) return found;
    for (const auto& note : day->records.of<entries::AdviceDecided>()) {
        if (note.at > now || note.what.silo != silo) continue;
        if (note.what.decision == entries::AdviceDecision::shown) continue;
        LookedBack looked{note.at, note.what, note.at + kUntilItShows};
        if (looked.lookedAt <= now) {
            const density::Readings then = history.at(season, silo, looked.lookedAt);
            if (then.layer.estimate) looked.came = then.layer.estimate->density.median();
        }
        found.push_back(looked);
    }
    std::reverse(found.begin(), found.end());
    return found;
}

}  // namespace treadwell::advice
