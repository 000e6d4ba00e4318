#include "core/intake/intake.h"

namespace treadwell::intake {

namespace {

struct Learner {
    Context& context;
    const entries::Entry& entry;
    bool voided;

    void operator()(const entries::SeasonStarted& started) const {
        if (const auto zone = FarmZone::named(started.zone)) context.zone = *zone;
    }
    void operator()(const entries::SiloDefined& defined) const { name(context.silos, defined.silo); }
    void operator()(const entries::TractorDefined& defined) const { name(context.tractors, defined.tractor); }
    void operator()(const entries::TruckDefined& defined) const { name(context.trucks, defined.truck); }
    void operator()(const entries::FieldDefined& defined) const { name(context.fields, defined.field); }
    void operator()(const entries::Load& load) const {
        if (load.evidence) context.known.insert(*load.evidence);
        if (!load.ticket) return;
        const LocalDay day = context.zone.dayOf(entry.header.happened);
        context.loads.emplace(*load.ticket, KnownLoad{entry.header.id, day, voided});
    }
    void operator()(const entries::RowSetAside& row) const {
        context.setAside[row.evidence] = KnownAside{entry.header.id, voided};
    }
    template <class Other>
    void operator()(const Other& /*saysNothingMore*/) const {}

    template <class Id, class Thing>
    void name(Names<Id>& names, const Thing& thing) const {
        if (!voided) names.add(thing.name, thing.id);
    }
};

}  // namespace

void learn(Context& context, const entries::Entry& entry, bool voided) {
    if (entry.body.index() == 0) return;  // of a kind that this version does not know
    context.known.insert(factHash(entry.body, entry.header.happened));
    std::visit(Learner{context, entry, voided}, entry.body);
}

Hash factHash(const entries::Body& body, Instant happened) {
    Sha256 hasher;
    hasher.add("treadwell fact 1").add(entries::kindOf(body).kind).add(toMicroseconds(happened));
    return hasher.add(entries::encode(body)).finish();
}

}  // namespace treadwell::intake
