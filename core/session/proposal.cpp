#include "core/session/proposal.h"

#include "core/entries/codes.h"
#include "core/session/codes.h"

#include <algorithm>

namespace treadwell::session {

namespace {

bool isVoidEntry(const entries::Body& body) {
    return std::holds_alternative<entries::VoidEntry>(body);
}

Result<season::FactPointer> factOf(const season::Season& season, entries::EntryId id) {
    auto fact = season.fact(id);
    if (fact == nullptr) return fail(code::targetMissing, "target", id.value.text());
    return fact;
}

/// The fact as it would be without one of its corrections.
season::Fact without(const season::Fact& fact, entries::EntryId correction) {
    season::Fact before{std::make_shared<const entries::Entry>(fact.stated())};
    for (const season::EntryPointer& change : fact.changes()) {
        if (change->header.id != correction) before = before.with(change);
    }
    return before;
}

}  // namespace

Result<Proposal> accepted(const season::Season& season, Proposal proposal) {
    if (auto valid = entries::validate(proposal.body); !valid) return tl::unexpected(valid.error());
    if (!proposal.target) {
        if (isVoidEntry(proposal.body)) return fail(code::targetMissing, "target", std::string{"-"});
        return proposal;
    }
    const auto fact = factOf(season, *proposal.target);
    if (!fact) return tl::unexpected(fact.error());
    if ((*fact)->isVoid()) return fail(code::entryVoided, "target", proposal.target->value.text());
    const entries::Entry& stated = (*fact)->stated();
    if (!isVoidEntry(proposal.body) && proposal.body.index() != stated.body.index()) {
        return fail(code::correctionChangesKind, "kind", stated.header.kind,
                    std::string{entries::kindOf(proposal.body).kind});
    }
    proposal.target = (*fact)->id();
    return proposal;
}

Result<Proposal> undoing(const season::Season& season, entries::EntryId id, std::string reason, Instant now) {
    const auto found = factOf(season, id);
    if (!found) return tl::unexpected(found.error());
    const season::Fact& fact = **found;
    if (id == fact.id()) return Proposal{entries::VoidEntry{std::move(reason)}, now, id};
    const auto& changes = fact.changes();
    const auto change = std::find_if(changes.begin(), changes.end(),
                                     [&](const auto& entry) { return entry->header.id == id; });
    if (isVoidEntry((*change)->body)) return Proposal{fact.body(), fact.happened(), std::nullopt};
    const season::Fact before = without(fact, id);
    return Proposal{before.body(), before.happened(), fact.id()};
}

}  // namespace treadwell::session
