#include "core/intake/records.h"

namespace treadwell::intake {

std::vector<Proposal> recordsOf(const Intake& intake, const std::string& file, std::string_view list,
                                Instant now, const Wording& wording) {
    std::vector<Proposal> records = intake.proposals;
    std::set<Hash> once;
    for (const Quarantined& row : intake.quarantine) {
        if (row.isKnown || !once.insert(row.evidence.hash).second) continue;
        const Place& place = row.reason.place;
        entries::RowSetAside aside{file,
                                   std::string{list},
                                   place.line,
                                   place.column,
                                   row.reason.field,
                                   std::string{toText(row.reason.code())},
                                   wording(row.reason),
                                   row.evidence.hash};
        const Instant happened = row.happened && *row.happened < now ? *row.happened : now;
        records.push_back({std::move(aside), happened, {}, place.line, {}, row.evidence, {}});
    }
    for (const entries::EntryId& id : intake.settled)
        records.push_back({entries::VoidEntry{file}, now, id, 0, {}, {}, {}});
    return records;
}

}  // namespace treadwell::intake
