#include "core/session/history.h"

#include <algorithm>
#include <tuple>

namespace treadwell::session {

std::vector<season::EntryPointer> historyOf(const season::Season& season, entries::EntryId id) {
    const auto fact = season.fact(id);
    if (fact == nullptr) return {};
    std::vector<season::EntryPointer> all = fact->changes();
    all.push_back(fact->statedPointer());
    std::sort(all.begin(), all.end(), [](const auto& a, const auto& b) {
        return std::tie(a->header.lamport, a->header.device) < std::tie(b->header.lamport, b->header.device);
    });
    return all;
}

}  // namespace treadwell::session
