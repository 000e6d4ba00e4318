#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/formats/csv_record.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace treadwell::intake {

/// What a column can tell.
enum class Column : std::uint8_t {
    ticket,
    date,
    time,
    truck,
    field,
    silo,
    gross,
    tare,
    net,
    unit,
    status,
    tractor,
    activity,
    share,
    wet,
    dry,
    dryMatter,
    method,
    along,
    across,
    height,
    thickness,
    depth,
    origin,
    sampleMass,
    volume,
    diameter,
    length,
    density,
    sieves,
    sieveMasses,
    sieveParts,
    before,
    topLength,
    rainWet,
    material,
    kernels,
    whole,
    coarse,
    wholeStarch,
    coarseStarch,
    low,
    high,
    planted,
    silked,
    hybrid,
    hybridDays,
    milkLine,
    cutLength,
    rollGap,
    cuttingHeight,
    processor,
    scale,
    behindFace,
    core,
    face
};

inline constexpr std::size_t kColumnCount = 56;

constexpr std::array<std::string_view, kColumnCount> enumTexts(Column /*column*/) noexcept {
    return {
        "ticket",    "date",          "time",        "truck",      "field",       "silo",         "gross",
        "tare",      "net",           "unit",        "status",     "tractor",     "activity",     "share",
        "wet",       "dry",           "dryMatter",   "method",     "along",       "across",       "height",
        "thickness", "depth",         "origin",      "mass",       "volume",      "diameter",     "length",
        "density",   "sieves",        "sieveMasses", "sieveParts", "before",      "topLength",    "rainWet",
        "material",  "kernels",       "whole",       "coarse",     "wholeStarch", "coarseStarch", "low",
        "high",      "planted",       "silked",      "hybrid",     "hybridDays",  "milkLine",     "cutLength",
        "rollGap",   "cuttingHeight", "processor",   "scale",      "behindFace",  "core",         "face"};
}

/// What one file calls a column.
struct ColumnName {
    Column column = Column::ticket;
    std::string header;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("column", self.column);
        visit("header", self.header);
    }
    friend bool operator==(const ColumnName&, const ColumnName&) = default;
};

/// Where the columns of a file stand.
class Columns {
  public:
    /// Finds the wanted columns by the words of the header, in English, German and Portuguese; a unit at a
    /// header's end (`net_kg`, `Netto [t]`) is its column's. A column that is named is looked for under that
    /// header alone. Errors: columnTwice, columnNotThere.
    [[nodiscard]] static Result<Columns> of(const formats::CsvRecord& header, std::span<const Column> wanted,
                                            std::span<const ColumnName> named = {});

    [[nodiscard]] std::optional<std::size_t> indexOf(Column column) const {
        return m_places[static_cast<std::size_t>(column)].index;
    }
    /// None for a header that none of the wanted columns took.
    [[nodiscard]] std::optional<Column> meaningOf(std::size_t index) const;
    [[nodiscard]] bool has(Column column) const { return indexOf(column).has_value(); }
    /// Empty where the header gives none.
    [[nodiscard]] std::string_view unitOf(Column column) const {
        return m_places[static_cast<std::size_t>(column)].unit;
    }
    /// Headers that none of the wanted columns took.
    [[nodiscard]] const std::vector<std::string>& ignored() const noexcept { return m_ignored; }
    /// Errors: columnMissing.
    [[nodiscard]] Result<void> require(Column column) const;

  private:
    Result<void> takeNamed(const formats::CsvRecord& header, std::span<const Column> wanted,
                           std::span<const ColumnName> named);

    struct ColumnPlace {
        std::optional<std::size_t> index;
        std::string_view unit;
    };

    std::array<ColumnPlace, kColumnCount> m_places;
    std::vector<std::string> m_ignored;
    std::string m_headers;
    std::int64_t m_line = 0;
};

}  // namespace treadwell::intake
