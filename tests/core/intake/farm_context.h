#pragma once

#include "core/intake/intake.h"

namespace treadwell::intake {

template <class Id>
Id idOf(std::uint8_t number) {
    Id id;
    id.value.bytes[15] = number;
    return id;
}

/// A small invented farm: one silo, two tractors, two trucks, two fields, in the zone given.
inline Context farmContext(const std::string& zone = "Europe/Berlin") {
    Context context;
    context.zone = *FarmZone::named(zone);
    context.silos.add("Long bunker", idOf<farm::SiloId>(1));
    context.silo = idOf<farm::SiloId>(1);
    context.tractors.add("Bison", idOf<farm::TractorId>(2));
    context.tractors.add("Widder", idOf<farm::TractorId>(3));
    context.trucks.add("Amsel", idOf<farm::TruckId>(4));
    context.trucks.add("K\u00E4fer", idOf<farm::TruckId>(5));
    context.fields.add("Quornstieg", idOf<farm::FieldId>(6));
    context.fields.add("Vellerbruch", idOf<farm::FieldId>(7));
    return context;
}

inline std::int64_t accountedFor(const Intake& intake) {
    return intake.used + static_cast<std::int64_t>(intake.quarantine.size()) + intake.duplicates +
           intake.alreadyImported + intake.voided + intake.totals;
}

/// Records the proposals as the session would, and learns them.
inline void record(Context& context, const Intake& intake) {
    static std::uint8_t number = 100;
    for (const Proposal& proposal : intake.proposals) {
        entries::Entry entry;
        entry.header.id = idOf<entries::EntryId>(++number);
        entry.header.happened = proposal.happened;
        entry.body = proposal.body;
        learn(context, entry);
    }
}

inline Instant utc(const char* text) {
    return *instantFromIso8601(text);
}

}  // namespace treadwell::intake
