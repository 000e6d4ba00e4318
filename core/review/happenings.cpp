// The sections about what happened around the packing: what was put on the crop, cover, weather, incidents
// and shifts.
#include "core/attention/cautions.h"
#include "core/review/codes.h"
#include "core/review/day_view.h"

#include <algorithm>

namespace treadwell::review {

namespace {

template <class Kind, class Cells>
void addRows(const DayView& view, Table& table, const Cells& cellsOf) {
    for (const auto& record : view.day.records.of<Kind>()) {
        if (record.at <= view.until) table.rows.push_back(cellsOf(record));
    }
}

Cell siloOf(const DayView& view, const std::optional<farm::SiloId>& silo) {
    return nameIn(view.day.farm().silos, silo);
}

AsFedMass placedIn(const DayView& view, farm::SiloId silo) {
    return season::deliveredOn(view.day, silo, view.until).mass;
}

/// Of a product on what came into its silo that day; none without a load.
Cell perTonne(double amount, AsFedMass crop) {
    return crop > AsFedMass{} ? Cell{amount / crop.tonnes()} : Cell{};
}

struct Used {
    ProductMass mass;
    ProductVolume volume;
};

Table dosage(const DayView& view) {
    std::map<std::pair<farm::SiloId, std::string>, Used> used;
    for (const auto& record : view.day.records.of<entries::Additive>()) {
        if (record.at > view.until) continue;
        Used& sum = used[{record.what.silo, record.what.dose.product}];
        sum.mass += record.what.dose.mass.value_or(ProductMass{});
        sum.volume += record.what.dose.volume.value_or(ProductVolume{});
    }
    Table table{"dosage",
                {{"silo", code::columnSilo},
                 {"product", code::columnProduct},
                 {"gramsPerTonne", code::columnGramsPerTonne},
                 {"litresPerTonne", code::columnLitresPerTonne}},
                {}};
    for (const auto& [key, sum] : used) {
        const AsFedMass crop = placedIn(view, key.first);
        table.rows.push_back(
            {siloOf(view, key.first), key.second,
             sum.mass > ProductMass{} ? perTonne(sum.mass.kilograms() * 1000.0, crop) : Cell{},
             sum.volume > ProductVolume{} ? perTonne(sum.volume.litres(), crop) : Cell{}});
    }
    return table;
}

/// Cautions about the longest shift of the day, as long as it had become by then.
void addCaution(const DayView& view, Section& section) {
    attention::CautionSituation situation;
    for (const season::ShiftSpan& shift : view.day.shifts) {
        if (shift.begin > view.until) continue;
        const Seconds length = std::min(shift.end.value_or(view.until), view.until) - shift.onShiftSince;
        situation.longestShift = std::max(situation.longestShift.value_or(Seconds{}), length);
    }
    for (const attention::CautionNow& caution : attention::cautionsFor(farm::Silo{}, situation, view.until)) {
        if (caution.caution == attention::Caution::shiftHours) section.blocks.emplace_back(caution.message);
    }
}

}  // namespace

Section additivesOf(const DayView& view) {
    Table table{"additives",
                {{"at", code::columnTime},
                 {"silo", code::columnSilo},
                 {"product", code::columnProduct},
                 {"mass", code::columnProductMass},
                 {"volume", code::columnProductVolume}},
                {}};
    const auto cells = [&](const auto& record) -> std::vector<Cell> {
        return {record.at, siloOf(view, record.what.silo), record.what.dose.product,
                amountOf(record.what.dose.mass), amountOf(record.what.dose.volume)};
    };
    addRows<entries::Additive>(view, table, cells);
    const bool mixedIn = !table.rows.empty();
    addRows<entries::SurfaceTreatment>(view, table, cells);
    Section section{"additives", code::reviewAdditives, {orNothing(std::move(table))}};
    if (mixedIn) section.blocks.emplace_back(dosage(view));
    return section;
}

Section coverOf(const DayView& view) {
    Table table{"cover",
                {{"at", code::columnTime},
                 {"silo", code::columnSilo},
                 {"step", code::columnStep},
                 {"from", code::columnFrom},
                 {"to", code::columnTo}},
                {}};
    addRows<entries::Cover>(view, table, [&](const auto& record) -> std::vector<Cell> {
        return {record.at, siloOf(view, record.what.silo), Word{enumText(record.what.step)},
                amountOf(record.what.stretch.begin), amountOf(record.what.stretch.end)};
    });
    return {"cover", code::reviewCover, {orNothing(std::move(table))}};
}

Section weatherOf(const DayView& view) {
    Table table{"weather",
                {{"at", code::columnTime},
                 {"sky", code::columnSky},
                 {"rain", code::columnRain},
                 {"temperature", code::columnTemperature},
                 {"wind", code::columnWind}},
                {}};
    addRows<entries::WeatherSeen>(view, table, [](const auto& record) -> std::vector<Cell> {
        return {record.at, Word{enumText(record.what.sky)},
                record.what.rain ? Cell{record.what.rain->chopAmount()} : Cell{},
                amountOf(record.what.temperature), amountOf(record.what.wind)};
    });
    return {"weather", code::reviewWeather, {orNothing(std::move(table))}};
}

Section incidentsOf(const DayView& view) {
    Table table{"incidents",
                {{"at", code::columnTime},
                 {"sort", code::columnSort},
                 {"silo", code::columnSilo},
                 {"tractor", code::columnTractor},
                 {"text", code::columnWhatHappened}},
                {}};
    addRows<entries::Incident>(view, table, [&](const auto& record) -> std::vector<Cell> {
        return {record.at, Word{enumText(record.what.sort)}, siloOf(view, record.what.silo),
                nameIn(view.day.farm().tractors, record.what.tractor), record.what.text};
    });
    return {"incidents", code::reviewIncidents, {orNothing(std::move(table))}};
}

// Without names: the sheet goes from hand to hand, and a name could not be erased from it.
Section shiftsOf(const DayView& view) {
    Table table{"shifts",
                {{"begin", code::columnBegin},
                 {"end", code::columnEnd},
                 {"duty", code::columnDuty},
                 {"tractor", code::columnTractor},
                 {"tablet", code::columnTablet},
                 {"hours", code::columnHoursOnShift}},
                {}};
    for (const season::ShiftSpan& shift : view.day.shifts) {
        if (shift.begin > view.until) continue;
        const bool over = shift.end && *shift.end <= view.until;
        const Seconds length = (over ? *shift.end : view.until) - shift.onShiftSince;
        table.rows.push_back({shift.begin, over ? Cell{*shift.end} : Cell{Message{code::reviewGoesOn, {}}},
                              Word{enumText(shift.duty)}, nameIn(view.day.farm().tractors, shift.tractor),
                              Word{shift.holdsTablet ? "yes" : "no"},
                              length / Seconds{std::chrono::hours{1}}});
    }
    Section section{"shifts", code::reviewShifts, {orNothing(std::move(table))}};
    addCaution(view, section);
    return section;
}

}  // namespace treadwell::review
