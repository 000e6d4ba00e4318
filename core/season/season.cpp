#include "core/season/season.h"

#include <algorithm>

namespace treadwell::season {

namespace {

using Stated = std::pair<entries::EntryId, FactPointer>;

bool pointerBefore(const FactPointer& a, const FactPointer& b) {
    return factBefore(*a, *b);
}

/// The zone in which local days lie: that of the last standing statement of it, or UTC.
FarmZone zoneOf(const std::vector<FactPointer>& ordered) {
    FarmZone zone;
    for (const FactPointer& fact : ordered) {
        const auto* started = std::get_if<entries::SeasonStarted>(&fact->body());
        if (started == nullptr || fact->isVoid()) continue;
        if (const auto named = FarmZone::named(started->zone)) zone = *named;
    }
    return zone;
}

bool setsZone(const Fact& fact) {
    return std::holds_alternative<entries::SeasonStarted>(fact.stated().body);
}

std::shared_ptr<const Day> folded(const FarmZone& zone, LocalDay date, std::vector<FactPointer> facts,
                                  const Carry& before) {
    return std::make_shared<const Day>(
        foldDay(date, zone.startOf(date), zone.startOf(dayAfter(date)), std::move(facts), before));
}

}  // namespace

Season Season::fold(std::span<const entries::Entry> entries) {
    std::vector<EntryPointer> pointers;
    pointers.reserve(entries.size());
    for (const entries::Entry& entry : entries) {
        pointers.push_back(std::make_shared<const entries::Entry>(entry));
    }
    return foldPointers(std::move(pointers));
}

Season Season::foldPointers(std::vector<EntryPointer> entries) {
    std::vector<Stated> stated;
    std::vector<EntryPointer> changes;
    stated.reserve(entries.size());
    for (EntryPointer& entry : entries) {
        if (entry->header.target) {
            changes.push_back(std::move(entry));
        } else {
            const auto id = entry->header.id;
            stated.emplace_back(id, std::make_shared<const Fact>(std::move(entry)));
        }
    }
    const auto idBefore = [](const Stated& a, const Stated& b) { return a.first < b.first; };
    const auto sameId = [](const Stated& a, const Stated& b) { return a.first == b.first; };
    if (!std::is_sorted(stated.begin(), stated.end(), idBefore)) {
        std::stable_sort(stated.begin(), stated.end(), idBefore);
    }
    stated.erase(std::unique(stated.begin(), stated.end(), sameId), stated.end());
    Season season;
    for (EntryPointer& change : changes) {
        const auto target =
            std::lower_bound(stated.begin(), stated.end(), Stated{*change->header.target, nullptr}, idBefore);
        if (target == stated.end() || target->first != *change->header.target) {
            season.m_waiting.push_back(std::move(change));
        } else {
            target->second = std::make_shared<const Fact>(target->second->with(std::move(change)));
        }
    }
    std::vector<FactPointer> all;
    all.reserve(stated.size());
    for (auto& [id, fact] : stated) all.push_back(std::move(fact));
    season.refoldAll(std::move(all));
    return season;
}

Season Season::withAll(std::span<const EntryPointer> entries) const {
    if (entries.empty()) return *this;
    if (entries.size() == 1) return with(entries.front());
    std::vector<EntryPointer> all = m_waiting;
    for (const FactPointer& fact : allFacts()) {
        all.push_back(fact->statedPointer());
        all.insert(all.end(), fact->changes().begin(), fact->changes().end());
    }
    all.insert(all.end(), entries.begin(), entries.end());
    return foldPointers(std::move(all));
}

Season Season::with(const entries::Entry& entry) const {
    return with(std::make_shared<const entries::Entry>(entry));
}

Season Season::with(EntryPointer pointer) const {
    Season season = *this;
    if (pointer->header.target) {
        const auto found = season.find(*pointer->header.target);
        if (!found) {
            season.m_waiting.push_back(std::move(pointer));
            return season;
        }
        const FactPointer old = season.m_days[found->day]->facts[found->fact];
        const auto changed = std::make_shared<const Fact>(old->with(std::move(pointer)));
        season.removeFact(*found);
        season.place(changed);
        return season;
    }
    if (season.find(pointer->header.id)) return season;
    Fact fact{std::move(pointer)};
    std::erase_if(season.m_waiting, [&](const EntryPointer& change) {
        if (*change->header.target != fact.id()) return false;
        fact = fact.with(change);
        return true;
    });
    season.place(std::make_shared<const Fact>(std::move(fact)));
    return season;
}

std::optional<Season::Found> Season::find(entries::EntryId id) const {
    // From the end: what is corrected, taken back or repeated is most often recent.
    for (std::size_t day = m_days.size(); day-- > 0;) {
        const auto& byId = m_days[day]->factsById;
        const auto at = std::lower_bound(byId.begin(), byId.end(), std::pair{id, std::size_t{0}});
        if (at != byId.end() && at->first == id) return Found{day, at->second};
    }
    return std::nullopt;
}

void Season::place(FactPointer fact) {
    if (setsZone(*fact)) {
        std::vector<FactPointer> all = allFacts();
        all.push_back(std::move(fact));
        refoldAll(std::move(all));
        return;
    }
    const LocalDay date = m_zone.dayOf(fact->happened());
    const auto at = std::lower_bound(m_days.begin(), m_days.end(), date,
                                     [](const auto& day, LocalDay wanted) { return day->date < wanted; });
    const auto index = static_cast<std::size_t>(at - m_days.begin());
    const bool exists = at != m_days.end() && (*at)->date == date;
    std::vector<FactPointer> facts = exists ? (*at)->facts : std::vector<FactPointer>{};
    facts.insert(std::upper_bound(facts.begin(), facts.end(), fact, pointerBefore), fact);
    auto day = folded(m_zone, date, std::move(facts), handedTo(index));
    if (exists) {
        m_days[index] = std::move(day);
    } else {
        m_days.insert(m_days.begin() + static_cast<std::ptrdiff_t>(index), std::move(day));
    }
    refoldFrom(index + 1);
}

void Season::removeFact(Found found) {
    const Day& old = *m_days[found.day];
    std::vector<FactPointer> facts = old.facts;
    facts.erase(facts.begin() + static_cast<std::ptrdiff_t>(found.fact));
    if (facts.empty()) {
        m_days.erase(m_days.begin() + static_cast<std::ptrdiff_t>(found.day));
        refoldFrom(found.day);
        return;
    }
    m_days[found.day] = folded(m_zone, old.date, std::move(facts), old.before);
    refoldFrom(found.day + 1);
}

const Carry& Season::handedTo(std::size_t index) const {
    static const Carry kNothing;
    return index == 0 ? kNothing : m_days[index - 1]->after;
}

/// Folds on from `first` until a day is handed what it was handed before.
void Season::refoldFrom(std::size_t first) {
    for (std::size_t index = first; index < m_days.size(); ++index) {
        if (m_days[index]->before == handedTo(index)) return;
        m_days[index] = folded(m_zone, m_days[index]->date, m_days[index]->facts, handedTo(index));
    }
}

void Season::refoldAll(std::vector<FactPointer> facts) {
    if (!std::is_sorted(facts.begin(), facts.end(), pointerBefore)) {
        std::sort(facts.begin(), facts.end(), pointerBefore);
    }
    m_zone = zoneOf(facts);
    m_days.clear();
    Carry before;
    for (auto next = facts.begin(); next != facts.end();) {
        const LocalDay date = m_zone.dayOf((*next)->happened());
        const Instant end = m_zone.startOf(dayAfter(date));
        const auto last =
            std::find_if(next, facts.end(), [&](const auto& fact) { return fact->happened() >= end; });
        m_days.push_back(folded(m_zone, date, {next, last}, before));
        before = m_days.back()->after;
        next = last;
    }
}

std::vector<FactPointer> Season::allFacts() const {
    std::vector<FactPointer> all;
    for (const auto& day : m_days) all.insert(all.end(), day->facts.begin(), day->facts.end());
    return all;
}

const Day* Season::day(LocalDay date) const noexcept {
    const auto at =
        std::find_if(m_days.begin(), m_days.end(), [&](const auto& day) { return day->date == date; });
    return at == m_days.end() ? nullptr : at->get();
}

const FarmBook& Season::farm() const noexcept {
    static const FarmBook kNothing;
    return m_days.empty() ? kNothing : m_days.back()->farm();
}

FactPointer Season::fact(entries::EntryId id) const {
    if (const auto found = find(id)) return m_days[found->day]->facts[found->fact];
    for (const auto& day : m_days) {
        for (const FactPointer& fact : day->facts) {
            for (const EntryPointer& change : fact->changes()) {
                if (change->header.id == id) return fact;
            }
        }
    }
    return nullptr;
}

std::int64_t Season::unknownKinds() const noexcept {
    std::int64_t count = 0;
    for (const auto& day : m_days) count += day->unknownKinds;
    return count;
}

}  // namespace treadwell::season
