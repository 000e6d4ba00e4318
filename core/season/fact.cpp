#include "core/season/fact.h"

#include <algorithm>
#include <tuple>

namespace treadwell::season {

Fact::Fact(EntryPointer stated) : m_stated(std::move(stated)), m_speaking(m_stated) {}

Fact Fact::with(EntryPointer change) const {
    Fact fact = *this;
    const auto same = [&](const EntryPointer& known) { return known->header.id == change->header.id; };
    if (std::any_of(m_changes.begin(), m_changes.end(), same)) return fact;
    fact.m_changes.push_back(change);
    if (std::holds_alternative<entries::VoidEntry>(change->body)) {
        fact.m_void = true;
        return fact;
    }
    // A correction of another kind cannot replace the fact; it stays in the history.
    if (change->body.index() != m_stated->body.index()) return fact;
    const auto weight = [](const entries::Entry& entry) {
        return std::tie(entry.header.lamport, entry.header.device);
    };
    if (!isCorrected() || weight(*m_speaking) < weight(*change)) fact.m_speaking = std::move(change);
    return fact;
}

bool factBefore(const Fact& a, const Fact& b) noexcept {
    const auto key = [](const Fact& fact) {
        const entries::Header& stated = fact.stated().header;
        return std::tie(stated.lamport, stated.device, stated.deviceSequence);
    };
    if (a.happened() != b.happened()) return a.happened() < b.happened();
    return key(a) < key(b);
}

}  // namespace treadwell::season
