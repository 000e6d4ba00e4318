#include "core/intake/tickets.h"

#include "core/base/codes.h"
#include "core/intake/codes.h"
#include "core/intake/match.h"
#include "core/intake/row.h"
#include "core/samples/codes.h"

#include <algorithm>
#include <cmath>

namespace treadwell::intake {

namespace {

constexpr std::array kWeights{Column::gross, Column::tare, Column::net};

bool isWord(std::string_view words, std::initializer_list<std::string_view> list) {
    return std::find(list.begin(), list.end(), words) != list.end();
}

std::optional<formats::MassUnit> massUnitFromText(std::string_view text) {
    return formats::massUnitFromWord(plainWords(text));
}

// A sum at the foot: a word for a sum, and no time at which a truck was weighed.
bool isTotals(const Row& row) {
    if (!row.text(Column::time).empty()) return false;
    const auto& cells = row.record().cells;
    return std::any_of(cells.begin(), cells.end(), [](const std::string& cell) {
        return isWord(plainWords(cell), {"total", "totals", "grand total", "sub total", "subtotal", "sum",
                                         "summe", "gesamt", "gesamtsumme", "soma", "total geral"});
    });
}

Result<bool> isVoid(const Row& row) {
    const std::string words = plainWords(row.text(Column::status));
    if (isWord(words, {"void", "voided", "v", "x", "yes", "true", "1", "storno", "storniert", "ja",
                       "cancelled", "canceled", "cancelado", "anulado", "sim"})) {
        return true;
    }
    if (isWord(words, {"", "ok", "valid", "gultig", "gueltig", "valido", "no", "nein", "nao", "false", "0"}))
        return false;
    return Unexpected{row.wrong(Column::status, code::wordUnknown, std::string{row.text(Column::status)},
                                std::string{"void, ok"})};
}

struct Ticket {
    const formats::CsvRecord* record;
    std::string number;
    FarmZone::WallInstant moment;
    LocalDay day;
    bool isVoid;

    [[nodiscard]] std::pair<std::string, LocalDay> key() const { return {number, day}; }
};

/// A row that states a sum, and how many tickets stand above it.
struct Sum {
    const formats::CsvRecord* record;
    std::size_t tickets;
};

struct Weight {
    AsFedMass net;
    std::optional<Message> note;
};

class TicketReader {
  public:
    TicketReader(const Sheet& sheet, const Context& context) : m_sheet(sheet), m_context(context) {
        m_intake.ignoredColumns = sheet.columns.ignored();
    }

    Intake read() {
        for (const formats::CsvRecord& record : m_sheet.table.records) {
            ++m_intake.rows;
            sort(record);
        }
        for (const Ticket& ticket : m_tickets) place(ticket);
        checkSums();
        meetTapped();
        settle(m_intake, m_sheet, m_context);
        std::stable_sort(m_intake.quarantine.begin(), m_intake.quarantine.end(),
                         [](const Quarantined& a, const Quarantined& b) {
                             return a.reason.place.line < b.reason.place.line;
                         });
        return std::move(m_intake);
    }

  private:
    // Puts a row where it belongs; what remains are tickets, to be seen together.
    void sort(const formats::CsvRecord& record) {
        const Row row{m_sheet, record, m_context};
        if (isTotals(row)) {
            ++m_intake.totals;
            m_sums.push_back({&record, m_tickets.size()});
            return;
        }
        if (const auto whole = row.whole(); !whole) return quarantine(m_intake, row, whole.error());
        if (!m_seen.insert(row.evidence()).second) {
            ++m_intake.duplicates;
            return;
        }
        auto ticket = ticketOf(row);
        if (!ticket) return quarantine(m_intake, row, std::move(ticket.error()));
        if (ticket->isVoid) {
            m_voids.insert(ticket->key());
        } else {
            m_first.try_emplace(ticket->key(), &record);
        }
        m_tickets.push_back(*std::move(ticket));
    }

    Result<Ticket> ticketOf(const Row& row) const {
        const auto voided = isVoid(row);
        if (!voided) return Unexpected{voided.error()};
        const auto moment = row.moment();
        if (!moment) return Unexpected{moment.error()};
        std::string number{row.text(Column::ticket)};
        if (*voided && number.empty()) return Unexpected{row.wrong(Column::ticket, code::valueMissing)};
        // Two scales number their tickets each for itself.
        if (const auto scale = row.text(Column::scale); !scale.empty() && !number.empty())
            number = std::string{scale} + '/' + number;
        return Ticket{&row.record(), std::move(number), *moment, m_context.zone.dayOf(moment->at), *voided};
    }

    void place(const Ticket& ticket) {
        const Row row{m_sheet, *ticket.record, m_context};
        if (ticket.isVoid) return placeVoid(ticket, row);
        if (m_context.known.contains(row.evidence())) {
            ++m_intake.alreadyImported;
            return;
        }
        if (m_voids.contains(ticket.key())) {
            ++m_intake.voided;
            return;
        }
        if (isRepeated(ticket))
            return quarantine(m_intake, row, row.wrong(Column::ticket, code::ticketRepeated, ticket.number));
        auto load = loadOf(ticket, row);
        if (!load) return quarantine(m_intake, row, std::move(load.error()));
        use(*std::move(load));
    }

    void placeVoid(const Ticket& ticket, const Row& row) {
        const auto [first, last] = m_context.loads.equal_range(ticket.number);
        const auto known =
            std::find_if(first, last, [&](const auto& load) { return load.second.day == ticket.day; });
        if (known == last) {
            ++m_intake.voided;
        } else if (known->second.voided || !m_voidedNow.insert(known->second.id).second) {
            ++m_intake.alreadyImported;
        } else {
            const std::string reason = std::string{row.text(Column::status)} + " (" + ticket.number + ')';
            use({entries::VoidEntry{reason}, ticket.moment.at, known->second.id, row.record().line, {}});
        }
    }

    // The first of several on one day counts, here or in the season.
    bool isRepeated(const Ticket& ticket) const {
        const auto [first, last] = m_context.loads.equal_range(ticket.number);
        const bool known =
            std::any_of(first, last, [&](const auto& load) { return load.second.day == ticket.day; });
        return known || isLaterOfTwo(ticket);
    }

    bool isLaterOfTwo(const Ticket& ticket) const {
        return !ticket.number.empty() && m_first.at(ticket.key()) != ticket.record;
    }

    // A sum at the foot is of all tickets above it, or of those since the sum before it.
    void checkSums() {
        AsFedMass all{};
        auto next = m_tickets.begin();
        for (const Sum& sum : m_sums) {
            AsFedMass part{};
            const auto end = m_tickets.begin() + static_cast<std::ptrdiff_t>(sum.tickets);
            for (; next != end; ++next) part += netOf(*next);
            all += part;
            const auto stated = statedBy(sum);
            if (!stated || agrees(*stated, part) || agrees(*stated, all)) continue;
            m_intake.remarks.push_back({code::ticketSumDiffers,
                                        {sum.record->line, stated->amount(), all.amount(),
                                         (*stated < all ? all - *stated : *stated - all).amount()}});
        }
    }

    AsFedMass netOf(const Ticket& ticket) const {
        if (ticket.isVoid || m_voids.contains(ticket.key()) || isLaterOfTwo(ticket)) return {};
        const auto weight = weightOf(Row{m_sheet, *ticket.record, m_context});
        return weight ? weight->net : AsFedMass{};
    }

    // Nothing where it gives no net weight; its unit is often left out and is then that of the tickets.
    std::optional<AsFedMass> statedBy(const Sum& sum) const {
        const Row row{m_sheet, *sum.record, m_context};
        if (row.text(Column::net).empty() || m_tickets.empty()) return std::nullopt;
        const Row ticket{m_sheet, *m_tickets.front().record, m_context};
        const auto stated = mass(row, Column::net, ticket.text(Column::unit));
        return stated ? std::optional{*stated} : std::nullopt;
    }

    Result<Proposal> loadOf(const Ticket& ticket, const Row& row) const {
        entries::Load load;
        const auto silo = row.silo();
        if (!silo) return Unexpected{silo.error()};
        const auto truck = row.namedIfAny(Column::truck, m_context.trucks);
        if (!truck) return Unexpected{truck.error()};
        const auto field = row.namedIfAny(Column::field, m_context.fields);
        if (!field) return Unexpected{field.error()};
        const auto weight = weightOf(row);
        if (!weight) return Unexpected{weight.error()};
        load.silo = *silo;
        load.truck = *truck;
        load.field = *field;
        load.mass = weight->net;
        load.source = entries::MassSource::weighed;
        if (!ticket.number.empty()) load.ticket = ticket.number;
        load.evidence = row.evidence();
        if (auto valid = entries::validate(load); !valid)
            return Unexpected{row.placed(std::move(valid.error()), Column::net)};
        Proposal proposal{std::move(load), ticket.moment.at, {}, row.record().line, {}, row.kept(), {}};
        if (weight->note) proposal.notes.push_back(*weight->note);
        if (ticket.moment.ambiguous) proposal.notes.push_back({code::clockChanged, {ticket.moment.at}});
        return proposal;
    }

    // The tickets' loads correct those that were tapped in before; a tapped load without a ticket is told.
    void meetTapped() {
        std::vector<TappedLoad> tapped;
        for (const TappedLoad& load : m_context.tapped) {
            const bool isOfThisFile = load.load.evidence && m_seen.contains(*load.load.evidence);
            if (!isOfThisFile) tapped.push_back(load);
        }
        std::vector<TicketLoad> tickets;
        std::vector<Proposal*> proposals;
        for (Proposal& proposal : m_intake.proposals) {
            const auto* load = std::get_if<entries::Load>(&proposal.body);
            if (load == nullptr) continue;
            tickets.push_back({proposal.happened, *load});
            proposals.push_back(&proposal);
        }
        const auto found = matchLoads(tickets, tapped, m_context.scaleInterval);
        std::set<std::size_t> met;
        for (std::size_t i = 0; i < found.size(); ++i) {
            if (!found[i]) continue;
            met.insert(*found[i]);
            correct(tapped[*found[i]], *proposals[i]);
        }
        for (std::size_t i = 0; i < tapped.size(); ++i) {
            const bool isWeighed = tapped[i].load.source == entries::MassSource::weighed;
            if (!met.contains(i) && !isWeighed && isWithinTickets(tapped[i].at))
                m_intake.remarks.push_back(
                    {code::loadWithoutTicket, {tapped[i].at, tapped[i].load.mass.amount()}});
        }
    }

    static void correct(const TappedLoad& tap, Proposal& proposal) {
        auto& load = std::get<entries::Load>(proposal.body);
        const Seconds apart{proposal.happened - tap.at};
        proposal.match = Match{tap.id, tap.at, tap.load.mass, apart};
        proposal.notes.push_back(
            {code::ticketMeetsLoad,
             {tap.at, tap.load.mass.amount(), load.mass.amount(), durationAmount(std::chrono::abs(apart))}});
        proposal.target = tap.id;
        if (!load.truck) load.truck = tap.load.truck;
        if (!load.field) load.field = tap.load.field;
        if (!tap.load.timeSpread) proposal.happened = tap.at;
    }

    bool isWithinTickets(Instant at) const {
        const auto before = [](const Ticket& a, const Ticket& b) { return a.moment.at < b.moment.at; };
        const auto [first, last] = std::minmax_element(m_tickets.begin(), m_tickets.end(), before);
        return first != m_tickets.end() && at >= first->moment.at && at <= last->moment.at;
    }

    Result<AsFedMass> mass(const Row& row, Column column, std::string_view usualUnit = {}) const {
        const auto value = row.number(column);
        if (!value) return Unexpected{value.error()};
        std::string_view unit = row.columns().unitOf(column);
        if (unit.empty()) unit = row.text(Column::unit);
        if (unit.empty()) unit = usualUnit;
        if (unit.empty() && m_context.map.massUnit) return massOf(*value, *m_context.map.massUnit);
        if (unit.empty()) return Unexpected{row.wrong(Column::unit, code::massUnitMissing)};
        const auto known = massUnitFromText(unit);
        if (!known) return Unexpected{row.wrong(column, code::massUnitUnknown, std::string{unit})};
        return massOf(*value, *known);
    }

    Result<Weight> weightOf(const Row& row) const {
        const bool hasBoth = !row.text(Column::gross).empty() && !row.text(Column::tare).empty();
        const bool hasNet = !row.text(Column::net).empty();
        if (!hasBoth) return mass(row, Column::net).map([](AsFedMass net) { return Weight{net, {}}; });
        const auto gross = mass(row, Column::gross);
        if (!gross) return Unexpected{gross.error()};
        const auto tare = mass(row, Column::tare);
        if (!tare) return Unexpected{tare.error()};
        const AsFedMass difference = *gross - *tare;
        const bool isSwapped = difference < AsFedMass{};
        if (!hasNet && !isSwapped) return Weight{difference, {}};
        const Error swapped = row.wrong(Column::gross, code::grossBelowTare, gross->amount(), tare->amount());
        if (!hasNet) return Unexpected{swapped};
        const auto net = mass(row, Column::net);
        if (!net) return Unexpected{net.error()};
        if (!agrees(*net, isSwapped ? -difference : difference)) {
            if (isSwapped) return Unexpected{swapped};
            return Unexpected{row.wrong(Column::net, code::netDisagrees, net->amount(), difference.amount())};
        }
        if (!isSwapped) return Weight{*net, {}};
        return Weight{*net, Message{code::weighingsSwapped, {gross->amount(), tare->amount()}}};
    }

    // The net weight may have been rounded apart; a millionth is for the arithmetic.
    [[nodiscard]] bool agrees(AsFedMass net, AsFedMass difference) const {
        return std::abs((net - difference).si()) <= m_context.scaleInterval.si() * (1 + 1e-6);
    }

    void use(Proposal proposal) {
        ++m_intake.used;
        m_intake.proposals.push_back(std::move(proposal));
    }

    const Sheet& m_sheet;
    const Context& m_context;
    Intake m_intake;
    std::set<Hash> m_seen;
    std::set<entries::EntryId> m_voidedNow;
    std::vector<Ticket> m_tickets;
    std::vector<Sum> m_sums;
    std::set<std::pair<std::string, LocalDay>> m_voids;
    std::map<std::pair<std::string, LocalDay>, const formats::CsvRecord*> m_first;
};

// The weights' units must be given somewhere: in each header, in the rows, or by the caller.
Result<void> checkUnits(const Columns& columns, const Context& context) {
    for (const Column column : kWeights) {
        if (!columns.has(column)) continue;
        const std::string_view unit = columns.unitOf(column);
        const auto place = static_cast<std::int64_t>(*columns.indexOf(column)) + 1;
        if (unit.empty() && !columns.has(Column::unit) && !context.map.massUnit) {
            return Unexpected{
                Error{{code::massUnitMissing, {}}, std::string{enumText(column)}, {{}, 0, place}}};
        }
        if (!unit.empty() && !massUnitFromText(unit)) {
            return Unexpected{Error{
                {code::massUnitUnknown, {std::string{unit}}}, std::string{enumText(column)}, {{}, 0, place}}};
        }
    }
    return {};
}

}  // namespace

std::vector<Error> openTicketQuestions(const Columns& columns, const formats::CsvTable& table,
                                       const Context& context) {
    std::vector<Error> open;
    const auto ask = [&open](const auto& result) {
        if (!result) open.push_back(result.error());
    };
    ask(columns.require(Column::time));
    const bool hasBoth = columns.has(Column::gross) && columns.has(Column::tare);
    if (!hasBoth) ask(columns.require(Column::net));
    ask(checkUnits(columns, context));
    ask(dateOrderIn(table, columns, context));
    return open;
}

Result<Intake> readTickets(std::string_view bytes, const Context& context) {
    const auto sheet = Sheet::read(bytes, context, kTicketColumns, {});
    if (!sheet) return Unexpected{sheet.error()};
    const auto open = openTicketQuestions(sheet->columns, sheet->table, context);
    if (!open.empty()) return Unexpected{open.front()};
    return TicketReader{*sheet, context}.read();
}

}  // namespace treadwell::intake
