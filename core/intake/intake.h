#pragma once

#include "core/base/farm_zone.h"
#include "core/entries/body.h"
#include "core/entries/evidence.h"
#include "core/intake/import_map.h"
#include "core/intake/names.h"

#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace treadwell::intake {

/// A load of the season that was read from a ticket.
struct KnownLoad {
    entries::EntryId id;
    LocalDay day;  ///< numbers start anew some day, so a ticket is its number and its day
    bool voided = false;
};

/// A load of the season without a ticket's number, as it stands now.
struct TappedLoad {
    entries::EntryId id;
    Instant at;
    entries::Load load;
};

/// A row that an earlier import set aside.
struct KnownAside {
    entries::EntryId id;
    bool voided = false;  ///< settled, or not wanted
};

/// What the readers must know of the season, and what a file does not tell by itself.
struct Context {
    FarmZone zone;
    Names<farm::SiloId> silos;
    Names<farm::TractorId> tractors;
    Names<farm::TruckId> trucks;
    Names<farm::FieldId> fields;
    Names<entries::PersonId> people;              ///< their names stand beside the season, not in it
    std::set<Hash> known;                         ///< evidence and fact hashes of what is already recorded
    std::multimap<std::string, KnownLoad> loads;  ///< by ticket number
    std::vector<TappedLoad> tapped;
    std::map<Hash, KnownAside> setAside;  ///< by evidence

    std::optional<farm::SiloId> silo;  ///< for rows that name none
    ImportMap map;
    AsFedMass scaleInterval = AsFedMass::fromKilograms(20);  ///< usual for vehicle scales (common practice)
};

/// Adds what one entry of the season tells: the zone (so the season's start comes first), a name, what is
/// already recorded. A voided entry stays
/// known, so that its file does not bring it back.
void learn(Context& context, const entries::Entry& entry, bool voided = false);

/// Tells one fact from another by what it says and when it happened.
[[nodiscard]] Hash factHash(const entries::Body& body, Instant happened);

/// The load that was tapped in before its ticket came.
struct Match {
    entries::EntryId load;
    Instant at;  ///< as tapped in, with the mass
    AsFedMass mass;
    Seconds apart{};  ///< the ticket's time less the tapped one
};

/// An entry that a file asks for; nothing is recorded before somebody has agreed.
struct Proposal {
    entries::Body body;
    Instant happened;
    std::optional<entries::EntryId> target;
    std::int64_t line = 0;       ///< of the file; the first of several
    std::vector<Message> notes;  ///< what was put right or is in doubt
    std::optional<entries::Evidence> evidence = {};
    std::optional<Match> match = {};  ///< the target, where it is a tapped load
};

/// A row that could not be used: why, where, and as it stood.
struct Quarantined {
    Error reason;
    std::string raw;
    entries::Evidence evidence;
    std::optional<Instant> happened;  ///< where the row's time can be read
    bool isKnown = false;             ///< set aside by an earlier import
};

/// Every row of the file is counted once: rows = used + quarantine + duplicates + alreadyImported + voided +
/// totals.
struct Intake {
    std::vector<Proposal> proposals;
    std::vector<Quarantined> quarantine;
    std::vector<entries::EntryId> settled;    ///< rows set aside earlier that are read now
    std::vector<Message> remarks;             ///< on the file as a whole
    std::vector<std::string> ignoredColumns;  ///< headers that say nothing to this reader
    std::int64_t rows = 0;
    std::int64_t used = 0;             ///< rows behind the proposals
    std::int64_t duplicates = 0;       ///< the same as an earlier row of the file
    std::int64_t alreadyImported = 0;  ///< recorded before, or set aside and taken back
    std::int64_t voided = 0;           ///< voided tickets, and the rows that void them
    std::int64_t totals = 0;           ///< sums at the foot
};

}  // namespace treadwell::intake
