#pragma once

#include "core/base/error.h"
#include "core/base/farm_zone.h"
#include "core/quantity/unit_table.h"

#include <functional>
#include <string>

namespace treadwell::words {

/// Finds the translation of an English text; the contexts are kPhraseContext and kUnitContext.
using Lookup = std::function<std::string(const char* context, const char* english)>;

inline constexpr const char* kUnitContext = "Unit";

/// How the core's messages are put into words.
struct Style {
    UnitSystem units = UnitSystem::metric;
    char decimalSign = '.';
    Lookup translate = {};  ///< English where there is none
    FarmZone zone = {};     ///< whose clock the times follow
};

/// A plain number, to three digits that say something.
[[nodiscard]] std::string inWords(double number, const Style& style);

/// Signs of a ratio stand close to their number (`3.0:1`, `66.00/h`), units and words apart.
[[nodiscard]] bool standsApart(std::string_view symbol);

/// `236 kg DM/m3`, with the unit table's decimals. A chance that is not quite 0 or 1 is never rounded to it.
[[nodiscard]] std::string inWords(Amount amount, const Style& style);

/// `2026-09-15 14:25`, on the farm's clock.
[[nodiscard]] std::string inWords(Instant at, const Style& style);

/// The sentence. Where rounding would make two amounts of one dimension look the same, or one look like 0,
/// those get more decimals.
[[nodiscard]] std::string inWords(const Message& message, const Style& style);

/// One line: where (`tickets.csv:12:4`, as far as known), which field, and the sentence.
[[nodiscard]] std::string inWords(const Error& error, const Style& style);

/// `machines[1].trackWidth` becomes `machines 2 track width`.
[[nodiscard]] std::string fieldInWords(std::string_view field);

}  // namespace treadwell::words
