#pragma once

#include "core/intake/row.h"

namespace treadwell::intake {

/// Joins what a row says with when it says it.
[[nodiscard]] Result<Proposal> proposed(const Row& row, entries::Body body);

[[nodiscard]] Result<Intake> readList(std::string_view bytes, const Context& context,
                                      std::span<const Column> wanted, std::span<const Column> required,
                                      const RowReader& read);

/// Leaves `target` alone where the cell is empty.
template <class T, class Read>
[[nodiscard]] Result<void> readIfAny(const Row& row, Column column, T& target, Read read) {
    if (row.text(column).empty()) return {};
    auto value = read(row, column);
    if (!value) return Unexpected{value.error()};
    target = *std::move(value);
    return {};
}

/// A fraction of one; 50 under a header in percent.
[[nodiscard]] Result<double> fraction(const Row& row, Column column);

[[nodiscard]] Result<DryMatter> dryMatter(const Row& row, Column column);

[[nodiscard]] Result<Length> length(const Row& row, Column column);

/// The weight of a dish or a sample; grams where the header has no unit.
[[nodiscard]] Result<double> dishKilograms(const Row& row, Column column);

/// In C or F as the header says. Error: temperatureUnitMissing.
[[nodiscard]] Result<Temperature> temperature(const Row& row, Column column);

}  // namespace treadwell::intake
