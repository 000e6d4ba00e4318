// A scale's export as it may arrive: whatever the bytes, every row is accounted for once, what is proposed is
// valid, and reading again what was recorded proposes no load twice and sets no row aside twice. A row that
// is set aside is a file of its own, and a preview is what reading gives.
#include "core/intake/preview.h"
#include "core/intake/tickets.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

using namespace treadwell;

namespace {

void require(bool holds) {
    if (!holds) std::abort();
}

template <class Id>
Id idOf(std::uint8_t number) {
    Id id;
    id.value.bytes[15] = number;
    return id;
}

intake::Context farmContext() {
    intake::Context context;
    context.zone = *FarmZone::named("Europe/Berlin");
    context.silo = idOf<farm::SiloId>(1);
    context.trucks.add("Amsel", idOf<farm::TruckId>(2));
    context.fields.add("Quornstieg", idOf<farm::FieldId>(3));
    context.map.massUnit = formats::MassUnit::kg;
    return context;
}

void check(const intake::Intake& intake) {
    require(intake.rows == intake.used + static_cast<std::int64_t>(intake.quarantine.size()) +
                               intake.duplicates + intake.alreadyImported + intake.voided + intake.totals);
    require(intake.used == static_cast<std::int64_t>(intake.proposals.size()));
    for (const intake::Proposal& proposal : intake.proposals)
        require(entries::validate(proposal.body).has_value());
    for (const intake::Quarantined& row : intake.quarantine)
        require(row.reason.place.line > 0 && !row.raw.empty());
}

void checkKept(const intake::Quarantined& row, const intake::Context& context) {
    const auto alone = intake::readTickets(row.evidence.content, context);
    require(alone && alone->rows == 1);
    for (const intake::Quarantined& same : alone->quarantine) require(same.evidence == row.evidence);
}

entries::Entry entryOf(entries::Body body, Instant happened) {
    entries::Entry entry;
    entry.header.happened = happened;
    entry.body = std::move(body);
    return entry;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    intake::Context context = farmContext();
    for (const auto sign : {formats::DecimalSign::point, formats::DecimalSign::comma}) {
        context.map.decimalSign = sign;
        context.map.dateOrder = intake::DateOrder::dayFirst;
        const auto first = intake::readTickets(bytes, context);
        const intake::Preview preview = intake::previewOf(intake::fileKindCalled("tickets"), bytes, context);
        require(preview.intake.has_value() == first.has_value());
        require(preview.open.empty() == first.has_value());
        if (!first) continue;
        check(*first);
        intake::Context later = context;
        for (const intake::Proposal& proposal : first->proposals)
            intake::learn(later, entryOf(proposal.body, proposal.happened));
        for (const intake::Quarantined& row : first->quarantine) {
            checkKept(row, context);
            entries::RowSetAside aside;
            aside.evidence = row.evidence.hash;
            intake::learn(later, entryOf(aside, {}));
        }
        const auto again = intake::readTickets(bytes, later);
        require(again.has_value());
        check(*again);
        require(again->used == 0);
        for (const intake::Quarantined& row : again->quarantine) require(row.isKnown);
    }
    return 0;
}
