#include "core/session/carry.h"

#include "core/density/season_evidence.h"
#include "core/session/codes.h"

#include <algorithm>
#include <set>

namespace treadwell::session {

namespace {

/// The first entry, which names the season; null in an empty one.
season::FactPointer startOf(const season::Season& season) {
    for (const auto& day : season.days()) {
        for (const season::FactPointer& fact : day->facts) {
            if (std::holds_alternative<entries::SeasonStarted>(fact->stated().body)) return fact;
        }
    }
    return nullptr;
}

/// Collects what earlier seasons measured, the last of them first: each season once, as it is first told.
class Handed {
  public:
    /// What a file measured itself.
    Result<void> takeOwn(const Earlier& earlier) {
        const season::FactPointer start = startOf(earlier.season);
        const std::string farm = earlier.season.farm().farm;
        if (start == nullptr) return fail(code::seasonEmpty, "file", farm);
        if (!m_known.insert(start->id()).second) return {};
        m_from.insert(m_from.begin(), {farm, earlier.head, start->id(), start->happened()});
        auto found = density::evidenceOf(earlier.season, endOf(earlier.season));
        for (entries::DensityEvidence& each : found.own()) {
            each.season = start->id().value.text();
            m_evidence.push_back(std::move(each));
        }
        m_handed.push_back(std::move(found.carried));
        return {};
    }

    /// What the files had been handed, of seasons whose own file is not among them.
    void takeHanded() {
        for (const auto& carried : m_handed) {
            std::set<entries::EntryId> here;
            for (const density::CarriedEvidence& each : carried) {
                const bool first = here.contains(each.from.season) || m_known.insert(each.from.season).second;
                if (!first) continue;
                if (here.insert(each.from.season).second) m_from.push_back(each.from);
                m_evidence.push_back(each.evidence);
            }
        }
    }

    [[nodiscard]] entries::SeasonCarried entry() && {
        return {std::move(m_from), std::move(m_evidence), std::nullopt};
    }

  private:
    static Instant endOf(const season::Season& season) { return season.days().back()->end; }

    std::set<entries::EntryId> m_known;
    std::vector<entries::EarlierSeason> m_from;
    std::vector<entries::DensityEvidence> m_evidence;
    std::vector<std::vector<density::CarriedEvidence>> m_handed;
};

/// Mean by mass of what was sampled, however the samples reached it.
std::optional<DryMatter> dryMatterOf(const season::Season& season) {
    season::Delivered sampled;
    for (const auto& day : season.days()) {
        for (const season::LoadTipped& load : day->loads) {
            if (load.basis != season::DryMatterBasis::assumed) sampled.add(load);
        }
    }
    return sampled.dryMatter();
}

template <class Things>
void takeOver(Things& known, const Things& later) {
    for (const auto& [id, thing] : later) known[id] = thing;
}

}  // namespace

Result<std::vector<Proposal>> carriedFrom(std::span<const Earlier> earlier, Instant begins) {
    Handed handed;
    for (auto last = earlier.rbegin(); last != earlier.rend(); ++last) {
        if (auto taken = handed.takeOwn(*last); !taken) return tl::unexpected(taken.error());
    }
    handed.takeHanded();
    season::FarmBook farm;
    std::optional<DryMatter> dryMatter;
    for (const auto& [season, head] : earlier) {
        takeOver(farm.silos, season.farm().silos);
        takeOver(farm.places, season.farm().places);
        takeOver(farm.tractors, season.farm().tractors);
        takeOver(farm.trucks, season.farm().trucks);
        takeOver(farm.fields, season.farm().fields);
        farm.rules = season.farm().rules;
        if (const auto mean = dryMatterOf(season)) dryMatter = mean;
    }
    entries::SeasonCarried carried = std::move(handed).entry();
    carried.dryMatter = dryMatter;
    std::vector<Proposal> proposals{{std::move(carried), begins, std::nullopt}};
    const auto propose = [&](entries::Body body) {
        proposals.push_back({std::move(body), begins, std::nullopt});
    };
    for (const auto& [id, silo] : farm.silos) propose(entries::SiloDefined{silo});
    for (const auto& [id, place] : farm.places) propose(entries::SiloPlaced{id, place});
    for (const auto& [id, tractor] : farm.tractors) propose(entries::TractorDefined{tractor});
    for (const auto& [id, truck] : farm.trucks) propose(entries::TruckDefined{truck});
    for (const auto& [id, field] : farm.fields) propose(entries::FieldDefined{field});
    propose(entries::RulesSet{farm.rules});
    return proposals;
}

}  // namespace treadwell::session
