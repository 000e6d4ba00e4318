#pragma once

#include "core/density/readings.h"
#include "core/density/weak_places.h"
#include "core/review/closing.h"
#include "core/review/day_sheet.h"

#include <map>
#include <optional>
#include <string>

namespace treadwell::review {

inline constexpr Seconds kHour = std::chrono::hours{1};

/// One day as it is looked at from one moment, for the sections of its sheet.
struct DayView {
    const season::Season& season;
    const season::Day& day;
    Instant until;                                            ///< the moment; within the day
    std::map<farm::SiloId, density::Readings> readings = {};  ///< of the silos that got a load, for the sheet
    SheetOrigin origin = {};
};

/// A farm's own name of a thing, or nothing where the id is missing or not defined.
template <class Map, class IdType>
[[nodiscard]] Cell nameIn(const Map& things, const std::optional<IdType>& id) {
    if (!id) return std::monostate{};
    const auto found = things.find(*id);
    return found == things.end() ? Cell{std::monostate{}} : Cell{found->second.name};
}

/// The same as text; empty where there is none.
template <class Map, class IdType>
[[nodiscard]] std::string nameText(const Map& things, const IdType& id) {
    const auto found = things.find(id);
    return found == things.end() ? std::string{} : found->second.name;
}

/// A quantity, or nothing.
template <class Q>
[[nodiscard]] Cell amountOf(const std::optional<Q>& quantity) {
    return quantity ? Cell{quantity->amount()} : Cell{};
}

/// A table, or that nothing was recorded where it has no row.
[[nodiscard]] Block orNothing(Table table);

/// What a tractor did of a day.
struct Worked {
    Seconds packing{};
    Seconds spreading{};  ///< at work and not packing
    [[nodiscard]] Seconds all() const noexcept { return packing + spreading; }
};
[[nodiscard]] std::map<farm::TractorId, Worked> workedIn(const DayView& view);

/// A day in one row: loads, masses, dry matter, packing; what a day without loads has not is left empty.
[[nodiscard]] Table dayFiguresTable(std::string_view key);
[[nodiscard]] std::vector<Cell> dayFiguresOf(const DayView& view, std::string name);

/// A weak place with crop of this day in it, of one silo.
struct WeakPlaceOfDay {
    std::string silo;
    density::WeakPlace place;
    bool isWeakest;  ///< of its silo
};
/// Silo by silo, the weakest first.
[[nodiscard]] std::vector<WeakPlaceOfDay> weakPlacesOn(const DayView& view);

/// What the day would leave open if it were closed now.
[[nodiscard]] std::vector<OpenPoint> questionsBeforeClosing(const DayView& view);

/// How many questions the day leaves open.
[[nodiscard]] std::int64_t openQuestions(const DayView& view);

// The sections, in the order of the sheet.
[[nodiscard]] Section summaryOf(const DayView& view);
[[nodiscard]] Section deliveriesOf(const DayView& view);
[[nodiscard]] Section dryMatterOf(const DayView& view);
[[nodiscard]] Section chopOf(const DayView& view);
[[nodiscard]] Section tractorsOf(const DayView& view);
[[nodiscard]] Section densityOf(const DayView& view);
[[nodiscard]] Section laidLayersOf(const DayView& view);
[[nodiscard]] Section weakPlacesOf(const DayView& view);
[[nodiscard]] Section limitedOf(const DayView& view);
[[nodiscard]] Section furtherOf(const DayView& view);
[[nodiscard]] Section dayBeforeOf(const DayView& view);
[[nodiscard]] Section againstPlanOf(const DayView& view);
[[nodiscard]] Section adviceOf(const DayView& view);
[[nodiscard]] Section pausesOf(const DayView& view);
[[nodiscard]] Section layersOf(const DayView& view);
[[nodiscard]] Section heightsOf(const DayView& view);
[[nodiscard]] Section additivesOf(const DayView& view);
[[nodiscard]] Section coverOf(const DayView& view);
[[nodiscard]] Section weatherOf(const DayView& view);
[[nodiscard]] Section incidentsOf(const DayView& view);
[[nodiscard]] Section shiftsOf(const DayView& view);
[[nodiscard]] Section handOverOf(const DayView& view);
[[nodiscard]] Section feedingOf(const DayView& view);
[[nodiscard]] Section notesOf(const DayView& view);
[[nodiscard]] Section cautionsOf(const DayView& view);
[[nodiscard]] Section questionsOf(const DayView& view);

}  // namespace treadwell::review
