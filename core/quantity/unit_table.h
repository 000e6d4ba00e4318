#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"

#include <array>
#include <span>
#include <string>
#include <string_view>

namespace treadwell {

enum class UnitSystem : std::uint8_t { metric, us };

constexpr std::array<std::string_view, 2> enumTexts(UnitSystem /*system*/) noexcept {
    return {"metric", "us"};
}

/// One unit of a dimension: `value in SI = (value + offset) * factor`.
struct Unit {
    std::string_view symbol;  ///< as typed and as printed: `t/h`, `kg DM/m3`
    std::string_view key;     ///< as part of a JSON key or CSV header: `t_per_h`, `kg_dm_m3`
    double factor;
    int decimals;         ///< what a person is shown
    double offset = 0.0;  ///< only scales of temperature have one

    [[nodiscard]] constexpr double fromSi(double si) const noexcept { return si / factor - offset; }
    [[nodiscard]] constexpr double toSi(double value) const noexcept { return (value + offset) * factor; }
};

/// The units of one dimension. Screens, the command line, CSV headers and reports all read this table.
struct UnitRow {
    Dimension dimension;
    std::string_view name;  ///< the dimension's own name: `packing time`
    Unit metric;
    Unit us;
    std::span<const Unit> also;  ///< further units that are understood when typed
};

[[nodiscard]] const UnitRow& unitsOf(Dimension dimension);
[[nodiscard]] std::span<const UnitRow> unitTable();

[[nodiscard]] inline const Unit& unitOf(Dimension dimension, UnitSystem system) {
    const UnitRow& row = unitsOf(dimension);
    return system == UnitSystem::metric ? row.metric : row.us;
}

/// Number and unit with the table's decimals, '.' as decimal sign: `236 kg DM/m3`.
[[nodiscard]] std::string amountText(Amount amount, UnitSystem system);

/// Reads `14t`, `6 in`, `35%` into SI. The unit must be there and must be one of the dimension's.
/// Errors: textEmpty, textNotNumber, unitMissing, unitUnknown, each naming `field`, the text and what is
/// understood.
[[nodiscard]] Result<double> siFromText(Dimension dimension, std::string_view text, std::string_view field);

template <class Q>
[[nodiscard]] Result<Q> quantityFromText(std::string_view text, std::string_view field) {
    return siFromText(Q::kDimension, text, field).map([](double si) { return Q::fromSi(si); });
}

}  // namespace treadwell
