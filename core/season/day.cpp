#include "core/season/day.h"

#include "core/season/dry_matter.h"

#include <algorithm>

namespace treadwell::season {

namespace {

/// Takes the facts one by one; what they say of the farm and of the machines is carried along.
class DayFold {
  public:
    explicit DayFold(Day& day) : m_day(day), m_carry(day.after) {}

    void take(const Fact& fact) {
        m_fact = &fact;
        std::visit(*this, fact.body());
    }

    void operator()(const std::monostate& /*unknown*/) { ++m_day.unknownKinds; }

    void operator()(const entries::SeasonStarted& started) {
        book().farm = started.farm;
        // The entry was validated when it was made; a zone that this machine does not know leaves UTC.
        if (const auto zone = FarmZone::named(started.zone)) book().zone = *zone;
    }
    void operator()(const entries::SiloDefined& defined) { book().silos[defined.silo.id] = defined.silo; }
    void operator()(const entries::SiloPlaced& placed) { book().places[placed.silo] = placed.place; }
    void operator()(const entries::TractorDefined& defined) {
        book().tractors[defined.tractor.id] = defined.tractor;
    }
    void operator()(const entries::TruckDefined& defined) { book().trucks[defined.truck.id] = defined.truck; }
    void operator()(const entries::FieldDefined& defined) { book().fields[defined.field.id] = defined.field; }
    void operator()(const entries::RulesSet& set) { book().rules = set.rules; }
    void operator()(const entries::SeasonCarried& carried) {
        if (carried.dryMatter) book().lastSeasonsDryMatter = carried.dryMatter;
        m_day.records.add(dated(carried));
    }

    void operator()(const entries::Load& load) {
        LoadTipped tipped;
        tipped.entry = m_fact->id();
        tipped.at = m_fact->happened();
        tipped.load = load;
        m_day.loads.push_back(std::move(tipped));
    }

    void operator()(const entries::DryMatterSample& reading) {
        m_day.samples.push_back({m_fact->id(), m_fact->happened(), reading, {}});
    }

    void operator()(const entries::TractorWork& work) {
        closeWork(work.tractor, m_fact->happened());
        if (work.activity == farm::Activity::away) return;
        WorkSpan span{work.tractor,       work.activity, work.silo,   Share{},
                      m_fact->happened(), std::nullopt,  m_fact->id()};
        if (work.activity == farm::Activity::packing) span.packing = work.packingShare;
        m_carry.working[work.tractor] = span;
    }

    void operator()(const entries::LayerSeen& seen) {
        m_day.layers.push_back(dated(seen));
        m_carry.layers[seen.silo] = dated(seen);
    }
    void operator()(const entries::HeightSurvey& survey) { m_day.surveys.push_back(dated(survey)); }
    void operator()(const entries::VoidEntry& /*without a target*/) {}
    void operator()(const entries::DayClosed& closed) { m_day.closed = dated(closed); }
    void operator()(const entries::PlanAdopted& plan) {
        m_day.records.add(dated(plan));
        m_carry.plan = std::make_shared<const Dated<entries::PlanAdopted>>(dated(plan));
    }
    template <RecordKind Kind>
    void operator()(const Kind& record) {
        m_day.records.add(dated(record));
    }

    void operator()(const entries::Shift& shift) {
        const Instant at = m_fact->happened();
        Instant since = at;
        if (const auto open = m_carry.shifts.find(shift.person); open != m_carry.shifts.end()) {
            since = open->second.onShiftSince;
            open->second.end = at;
            m_day.shifts.push_back(open->second);
            m_carry.shifts.erase(open);
        } else if (!shift.begins) {
            m_day.shiftsNeverBegun.push_back(dated(shift));
        }
        if (!shift.begins) return;
        m_carry.shifts[shift.person] = {shift.person, shift.duty, shift.holdsTablet, shift.tractor,
                                        since,        at,         std::nullopt};
    }

    void operator()(const entries::Pause& pause) {
        const auto same = [&](const PauseSpan& open) { return open.silo == pause.silo; };
        const auto open = std::find_if(m_carry.pauses.begin(), m_carry.pauses.end(), same);
        if (pause.begins) {
            if (open == m_carry.pauses.end()) {
                m_carry.pauses.push_back({pause.silo, pause.reason, m_fact->happened(), std::nullopt});
            }
        } else if (open != m_carry.pauses.end()) {
            open->end = m_fact->happened();
            m_day.pauses.push_back(std::move(*open));
            m_carry.pauses.erase(open);
        }
    }

    /// What still goes on at the day's end is cut there and handed on.
    void finish() {
        for (auto& [tractor, span] : m_carry.working) m_day.work.push_back(span);
        m_day.pauses.insert(m_day.pauses.end(), m_carry.pauses.begin(), m_carry.pauses.end());
        for (const auto& [person, span] : m_carry.shifts) m_day.shifts.push_back(span);
        const auto byBegin = [](const auto& a, const auto& b) { return a.begin < b.begin; };
        std::stable_sort(m_day.work.begin(), m_day.work.end(), byBegin);
        std::stable_sort(m_day.shifts.begin(), m_day.shifts.end(), byBegin);
    }

  private:
    FarmBook& book() {
        if (!m_ownBook) {
            m_ownBook = std::make_shared<FarmBook>(*m_carry.farm);
            m_carry.farm = m_ownBook;
        }
        return *m_ownBook;
    }

    void closeWork(farm::TractorId tractor, Instant at) {
        const auto open = m_carry.working.find(tractor);
        if (open == m_carry.working.end()) return;
        open->second.end = at;
        if (at > open->second.begin) m_day.work.push_back(open->second);
        m_carry.working.erase(open);
    }

    template <class Kind>
    [[nodiscard]] Dated<Kind> dated(const Kind& kind) const {
        return {m_fact->id(), m_fact->happened(), kind};
    }

    Day& m_day;
    Carry& m_carry;
    std::shared_ptr<FarmBook> m_ownBook;
    const Fact* m_fact = nullptr;
};

Delivered loadsOn(const Day& day, farm::SiloId silo, Instant now) {
    Delivered delivered;
    for (const LoadTipped& load : day.loads) {
        if (load.load.silo == silo && load.at <= now) delivered.add(load);
    }
    return delivered;
}

}  // namespace

void Delivered::add(const LoadTipped& load) {
    if (loads == 0) first = load.at;
    ++loads;
    mass += load.load.mass;
    dry += load.dryMass();
    last = load.at;
}

std::optional<DryMatter> Delivered::dryMatter() const noexcept {
    if (!(mass > AsFedMass{})) return std::nullopt;
    return dry / mass;
}

PackingIntensity Delivered::intensity() const noexcept {
    Seconds total{0};
    for (const auto& [tractor, time] : packing) total += time;
    return mass > AsFedMass{} ? total / mass : PackingIntensity{};
}

Delivered& Delivered::operator+=(const Delivered& later) {
    if (loads == 0) first = later.first;
    if (later.loads > 0) last = later.last;
    loads += later.loads;
    mass += later.mass;
    dry += later.dry;
    for (const auto& [tractor, time] : later.packing) packing[tractor] += time;
    return *this;
}

std::map<farm::TractorId, Seconds> packingOn(const Day& day, farm::SiloId silo, Instant from, Instant now) {
    std::map<farm::TractorId, Seconds> packing;
    for (const WorkSpan& span : day.work) {
        if (span.silo != silo || !(span.packing > Share{})) continue;
        const Seconds time{day.endOf(span.begin, span.end, now) - std::max(span.begin, from)};
        if (time > Seconds{0}) packing[span.tractor] += time * span.packing.fraction();
    }
    return packing;
}

Delivered deliveredOn(const Day& day, farm::SiloId silo, Instant now) {
    Delivered delivered = loadsOn(day, silo, now);
    if (day.before.begun.contains(silo)) {
        delivered.packing = packingOn(day, silo, day.begin, now);
    } else if (delivered.loads > 0) {
        delivered.packing = packingOn(day, silo, delivered.first, now);
    }
    return delivered;
}

Delivered sinceFirstLoadOn(const Day& day, farm::SiloId silo, Instant now) {
    Delivered delivered = loadsOn(day, silo, now);
    if (delivered.loads > 0) delivered.packing = packingOn(day, silo, delivered.first, now);
    return delivered;
}

bool operator==(const Carry& a, const Carry& b) {
    return (a.farm == b.farm || *a.farm == *b.farm) && a.working == b.working && a.layers == b.layers &&
           a.fieldSamples == b.fieldSamples && a.allSamples == b.allSamples && a.meterPairs == b.meterPairs &&
           a.lastSample == b.lastSample && a.pauses == b.pauses && a.shifts == b.shifts &&
           a.begun == b.begun && (a.plan == b.plan || (a.plan && b.plan && *a.plan == *b.plan));
}

Day foldDay(LocalDay date, Instant begin, Instant end, std::vector<FactPointer> facts, const Carry& before) {
    Day day;
    day.date = date;
    day.begin = begin;
    day.end = end;
    day.facts = std::move(facts);
    day.factsById.reserve(day.facts.size());
    for (std::size_t i = 0; i < day.facts.size(); ++i) day.factsById.emplace_back(day.facts[i]->id(), i);
    std::sort(day.factsById.begin(), day.factsById.end());
    day.before = before;
    day.after = before;
    for (auto& [tractor, span] : day.after.working) span.begin = begin;
    DayFold fold{day};
    for (const FactPointer& fact : day.facts) {
        if (!fact->isVoid()) fold.take(*fact);
    }
    fold.finish();
    carryDryMatter(day);
    for (const LoadTipped& load : day.loads) day.after.begun.insert(load.load.silo);
    for (const farm::SiloId silo : day.after.begun) day.placed[silo] = deliveredOn(day, silo, end);
    return day;
}

}  // namespace treadwell::season
