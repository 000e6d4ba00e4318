#include "core/intake/row.h"

#include "core/base/codes.h"
#include "core/intake/codes.h"

#include <algorithm>
#include <cmath>

namespace treadwell::intake {

formats::CsvOptions csvOptionsOf(const ImportMap& map) {
    formats::CsvOptions options;
    if (map.delimiter) options.delimiter = signOf(*map.delimiter);
    options.decimalSign = map.decimalSign;
    options.encoding = map.encoding;
    return options;
}

Result<Sheet> Sheet::read(std::string_view bytes, const Context& context, std::span<const Column> wanted,
                          std::span<const Column> required) {
    auto table = formats::readCsv(bytes, csvOptionsOf(context.map));
    if (!table) return Unexpected{table.error()};
    auto columns = Columns::of(table->header, wanted, context.map.columns);
    if (!columns) return Unexpected{columns.error()};
    for (const Column column : required) {
        if (const auto there = columns->require(column); !there) return Unexpected{there.error()};
    }
    Sheet sheet{*std::move(table), *std::move(columns), DateOrder::dayFirst};
    const auto order = dateOrderIn(sheet.table, sheet.columns, context);
    if (!order) return Unexpected{order.error()};
    sheet.dateOrder = *order;
    return sheet;
}

Result<DateOrder> dateOrderIn(const formats::CsvTable& table, const Columns& columns,
                              const Context& context) {
    if (context.map.dateOrder) return *context.map.dateOrder;
    const auto column = columns.indexOf(columns.has(Column::date) ? Column::date : Column::time);
    return column ? dateOrderOf(table.records, *column) : DateOrder::dayFirst;
}

std::string_view Row::text(Column column) const {
    const auto index = columns().indexOf(column);
    if (!index || *index >= m_record.cells.size()) return {};
    return m_record.cells[*index];
}

Result<double> Row::number(Column column) const {
    const std::string_view cell = text(column);
    if (cell.empty()) return Unexpected{wrong(column, code::valueMissing)};
    const auto number = formats::numberFromCell(cell, m_sheet.table.decimalSign);
    if (!number) return Unexpected{wrong(column, code::numberUnreadable, std::string{cell})};
    return *number;
}

Result<std::int64_t> Row::count(Column column) const {
    return number(column).and_then([&](double value) -> Result<std::int64_t> {
        constexpr double kMost = 1e9;
        if (value != std::floor(value) || std::abs(value) > kMost)
            return Unexpected{wrong(column, code::numberUnreadable, std::string{text(column)})};
        return static_cast<std::int64_t>(value);
    });
}

Result<Length> Row::length(Column column) const {
    return number(column).map([unit = columns().unitOf(column)](double value) {
        if (unit == "mm") return Length::fromMillimetres(value);
        if (unit == "cm") return Length::fromCentimetres(value);
        if (unit == "ft") return Length::fromFeet(value);
        if (unit == "in") return Length::fromInches(value);
        return Length::fromMetres(value);
    });
}

Result<LocalDay> Row::day(Column column) const {
    if (text(column).empty()) return Unexpected{wrong(column, code::valueMissing)};
    const auto day = dayFromText(text(column), m_sheet.dateOrder);
    if (!day) return Unexpected{wrong(column, code::wallTimeUnreadable, std::string{text(column)})};
    return *day;
}

Result<FarmZone::WallInstant> Row::moment() const {
    std::string when{text(Column::time)};
    if (when.empty()) return Unexpected{wrong(Column::time, code::valueMissing)};
    if (columns().has(Column::date)) when = std::string{text(Column::date)} + ' ' + when;
    auto moment = momentFromText(when, m_sheet.dateOrder, m_context.zone);
    if (!moment) return Unexpected{placed(std::move(moment.error()), Column::time)};
    return moment;
}

Result<farm::SiloId> Row::silo() const {
    if (text(Column::silo).empty() && m_context.silo) return *m_context.silo;
    return named(Column::silo, m_context.silos);
}

Error Row::placed(Error error, std::optional<Column> column) const {
    const auto index = column ? columns().indexOf(*column) : std::nullopt;
    error.place = {{}, m_record.line, index ? static_cast<std::int64_t>(*index) + 1 : 0};
    return error;
}

Hash Row::evidence() const {
    std::vector<std::pair<std::string, std::string_view>> cells;
    for (std::size_t i = 0; i < m_record.cells.size(); ++i) {
        if (m_record.cells[i].empty()) continue;
        const auto& header = m_sheet.table.header.cells;
        cells.emplace_back(i < header.size() ? plainWords(header[i]) : std::string{}, m_record.cells[i]);
    }
    std::sort(cells.begin(), cells.end());
    Sha256 hasher;
    hasher.add("treadwell row 1");
    for (const auto& [header, cell] : cells) {
        hasher.add(static_cast<std::int64_t>(header.size())).add(header);
        hasher.add(static_cast<std::int64_t>(cell.size())).add(cell);
    }
    return hasher.finish();
}

entries::Evidence Row::kept() const {
    const formats::CsvTable& table = m_sheet.table;
    return {evidence(),
            std::string{"sep="} + table.delimiter + '\n' + table.header.raw + '\n' + m_record.raw + '\n'};
}

Result<void> Row::whole() const {
    if (!m_sheet.table.isRagged(m_record)) return {};
    Error error{{code::rowRagged,
                 {static_cast<std::int64_t>(m_record.cells.size()),
                  static_cast<std::int64_t>(m_sheet.table.header.cells.size())}},
                "row",
                {}};
    return Unexpected{placed(std::move(error), std::nullopt)};
}

void quarantine(Intake& intake, const Row& row, Error reason) {
    entries::Evidence kept = row.kept();
    const auto& setAside = row.context().setAside;
    const auto known = setAside.find(kept.hash);
    if (known != setAside.end() && known->second.voided) {
        ++intake.alreadyImported;
        return;
    }
    std::optional<Instant> happened;
    if (const auto moment = row.moment()) happened = moment->at;
    intake.quarantine.push_back(
        {std::move(reason), row.record().raw, std::move(kept), happened, known != setAside.end()});
}

void settle(Intake& intake, const Sheet& sheet, const Context& context) {
    if (context.setAside.empty()) return;
    std::set<Hash> done;
    for (const Quarantined& row : intake.quarantine) done.insert(row.evidence.hash);
    for (const formats::CsvRecord& record : sheet.table.records) {
        const auto known = context.setAside.find(Row{sheet, record, context}.evidence());
        if (known == context.setAside.end() || known->second.voided) continue;
        if (done.insert(known->first).second) intake.settled.push_back(known->second.id);
    }
}

Intake readRows(const Sheet& sheet, const Context& context, const RowReader& read) {
    Intake intake;
    intake.ignoredColumns = sheet.columns.ignored();
    std::set<Hash> seen;
    for (const formats::CsvRecord& record : sheet.table.records) {
        const Row row{sheet, record, context};
        ++intake.rows;
        auto proposal = row.whole().and_then([&] { return read(row); });
        if (!proposal) {
            quarantine(intake, row, std::move(proposal.error()));
            continue;
        }
        if (auto valid = entries::validate(proposal->body); !valid) {
            quarantine(intake, row, row.placed(std::move(valid.error()), std::nullopt));
            continue;
        }
        const Hash hash = factHash(proposal->body, proposal->happened);
        if (!seen.insert(hash).second) {
            ++intake.duplicates;
        } else if (context.known.contains(hash)) {
            ++intake.alreadyImported;
        } else {
            ++intake.used;
            proposal->line = record.line;
            intake.proposals.push_back(*std::move(proposal));
        }
    }
    settle(intake, sheet, context);
    return intake;
}

}  // namespace treadwell::intake
