#include "core/intake/from_season.h"

namespace treadwell::intake {

Context contextOf(const season::Season& season) {
    Context context;
    for (const auto& day : season.days()) {
        for (const season::FactPointer& fact : day->facts) {
            learn(context, fact->stated(), fact->isVoid());
            for (const season::EntryPointer& change : fact->changes())
                learn(context, *change, fact->isVoid());
        }
        for (const season::LoadTipped& tipped : day->loads) {
            if (!tipped.load.ticket) context.tapped.push_back({tipped.entry, tipped.at, tipped.load});
        }
    }
    const auto& silos = season.farm().silos;
    if (silos.size() == 1) context.silo = silos.begin()->first;
    return context;
}

}  // namespace treadwell::intake
