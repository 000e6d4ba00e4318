#include "core/session/carry.h"

#include "core/session/codes.h"

namespace treadwell::session {

namespace {

/// The first entry, which names the season.
std::optional<entries::EntryId> startOf(const season::Season& season) {
    for (const auto& day : season.days()) {
        for (const season::FactPointer& fact : day->facts) {
            if (std::holds_alternative<entries::SeasonStarted>(fact->stated().body)) return fact->id();
        }
    }
    return std::nullopt;
}

template <class Things>
void takeOver(Things& known, const Things& later) {
    for (const auto& [id, thing] : later) known[id] = thing;
}

}  // namespace

Result<std::vector<Proposal>> carriedFrom(std::span<const Earlier> earlier, Instant begins) {
    entries::SeasonCarried carried;
    season::FarmBook farm;
    for (const auto& [season, head] : earlier) {
        const auto start = startOf(season);
        if (!start) return fail(code::seasonEmpty, "file", season.farm().farm);
        carried.from.push_back({season.farm().farm, head, *start});
        takeOver(farm.silos, season.farm().silos);
        takeOver(farm.tractors, season.farm().tractors);
        takeOver(farm.trucks, season.farm().trucks);
        takeOver(farm.fields, season.farm().fields);
        farm.rules = season.farm().rules;
    }
    std::vector<Proposal> proposals{{std::move(carried), begins, std::nullopt}};
    const auto propose = [&](entries::Body body) {
        proposals.push_back({std::move(body), begins, std::nullopt});
    };
    for (const auto& [id, silo] : farm.silos) propose(entries::SiloDefined{silo});
    for (const auto& [id, tractor] : farm.tractors) propose(entries::TractorDefined{tractor});
    for (const auto& [id, truck] : farm.trucks) propose(entries::TruckDefined{truck});
    for (const auto& [id, field] : farm.fields) propose(entries::FieldDefined{field});
    propose(entries::RulesSet{farm.rules});
    return proposals;
}

}  // namespace treadwell::session
