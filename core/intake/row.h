#pragma once

#include "core/base/codes.h"
#include "core/intake/codes.h"
#include "core/intake/columns.h"
#include "core/intake/intake.h"

#include <functional>

namespace treadwell::intake {

[[nodiscard]] formats::CsvOptions csvOptionsOf(const ImportMap& map);

/// A file with its columns found and its dates understood.
struct Sheet {
    formats::CsvTable table;
    Columns columns;
    DateOrder dateOrder = DateOrder::dayFirst;

    /// Errors: those of readCsv, columnTwice, columnNotThere, columnMissing, dateOrderAmbiguous.
    [[nodiscard]] static Result<Sheet> read(std::string_view bytes, const Context& context,
                                            std::span<const Column> wanted, std::span<const Column> required);
};

/// As the caller says, or else as the cells tell; day first where there is no such column. Errors:
/// dateOrderAmbiguous.
[[nodiscard]] Result<DateOrder> dateOrderIn(const formats::CsvTable& table, const Columns& columns,
                                            const Context& context);

/// One row, read cell by cell; each error says the line, the column and the field.
class Row {
  public:
    Row(const Sheet& sheet, const formats::CsvRecord& record, const Context& context)
        : m_sheet(sheet), m_record(record), m_context(context) {}

    [[nodiscard]] const formats::CsvRecord& record() const noexcept { return m_record; }
    [[nodiscard]] const Columns& columns() const noexcept { return m_sheet.columns; }
    [[nodiscard]] const Context& context() const noexcept { return m_context; }
    [[nodiscard]] auto decimalSign() const noexcept { return m_sheet.table.decimalSign; }

    /// Empty where the file has no such column.
    [[nodiscard]] std::string_view text(Column column) const;
    /// Errors: valueMissing, numberUnreadable.
    [[nodiscard]] Result<double> number(Column column) const;
    /// A whole number. Errors: valueMissing, numberUnreadable.
    [[nodiscard]] Result<std::int64_t> count(Column column) const;
    /// A length in the header's unit, metres where it has none.
    [[nodiscard]] Result<Length> length(Column column) const;
    /// From the date and time columns, or from the time column alone. Errors: valueMissing,
    /// wallTimeUnreadable.
    [[nodiscard]] Result<FarmZone::WallInstant> moment() const;
    /// The day of a column that holds one. Errors: valueMissing, wallTimeUnreadable.
    [[nodiscard]] Result<LocalDay> day(Column column) const;
    /// The silo that the row names, or the context's. Errors: valueMissing, nameUnknown, nameShared.
    [[nodiscard]] Result<farm::SiloId> silo() const;
    /// Errors: valueMissing, nameUnknown, nameShared.
    template <class Id>
    [[nodiscard]] Result<Id> named(Column column, const Names<Id>& names) const {
        if (text(column).empty()) return Unexpected{wrong(column, code::valueMissing)};
        auto id = names.find(text(column), std::string{enumText(column)});
        if (!id) return Unexpected{placed(std::move(id.error()), column)};
        return id;
    }
    /// None for an empty cell.
    template <class Id>
    [[nodiscard]] Result<std::optional<Id>> namedIfAny(Column column, const Names<Id>& names) const {
        if (text(column).empty()) return std::optional<Id>{};
        return named(column, names).map([](Id id) { return std::optional{id}; });
    }
    /// One of the stable names of an enumeration, whatever its case. Errors: valueMissing, wordUnknown.
    template <NamedEnum E>
    [[nodiscard]] Result<E> word(Column column) const {
        std::string known;
        for (const std::string_view name : enumTexts(E{})) {
            if (plainWords(name) == plainWords(text(column))) return *enumFromText<E>(name);
            known += (known.empty() ? "" : ", ") + std::string{name};
        }
        if (text(column).empty()) return Unexpected{wrong(column, code::valueMissing)};
        return Unexpected{wrong(column, code::wordUnknown, std::string{text(column)}, std::move(known))};
    }

    template <class... Arguments>
    [[nodiscard]] Error wrong(Column column, Code code, Arguments&&... arguments) const {
        Error error{
            {code, {Argument{std::forward<Arguments>(arguments)}...}}, std::string{enumText(column)}, {}};
        return placed(std::move(error), column);
    }
    [[nodiscard]] Error placed(Error error, std::optional<Column> column) const;

    /// The row with its header, a file of its own that is read as this one is.
    [[nodiscard]] entries::Evidence kept() const;
    /// SHA-256 of what the row says, whatever the file's delimiter, encoding or order of columns.
    [[nodiscard]] Hash evidence() const;
    /// Errors: rowRagged.
    [[nodiscard]] Result<void> whole() const;

  private:
    const Sheet& m_sheet;
    const formats::CsvRecord& m_record;
    const Context& m_context;
};

/// Makes an entry of each row; rows that cannot be used, that stand twice or that are known are told apart.
using RowReader = std::function<Result<Proposal>(const Row&)>;
[[nodiscard]] Intake readRows(const Sheet& sheet, const Context& context, const RowReader& read);

/// A row that an earlier import set aside and somebody took back is only counted.
void quarantine(Intake& intake, const Row& row, Error reason);

/// Finds the rows that were set aside earlier and are not in quarantine now.
void settle(Intake& intake, const Sheet& sheet, const Context& context);

}  // namespace treadwell::intake
