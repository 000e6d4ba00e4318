#include "core/review/codes.h"
#include "core/review/day_view.h"

namespace treadwell::review {

namespace {

/// The last day before this one on which a load came in.
const season::Day* dayBefore(const DayView& view) {
    const season::Day* before = nullptr;
    for (const auto& day : view.season.days()) {
        if (day->begin >= view.day.begin) break;
        if (!day->loads.empty()) before = day.get();
    }
    return before;
}

struct Minus {
    Cell operator()(const Amount& a, const Amount& b) const { return Amount{a.dimension, a.si - b.si}; }
    Cell operator()(std::int64_t a, std::int64_t b) const { return a - b; }
    Cell operator()(double a, double b) const { return a - b; }
    template <class A, class B>
    Cell operator()(const A& /*a*/, const B& /*b*/) const {
        return {};
    }
};

/// Each number of a row less that of another, from a column on.
std::vector<Cell> difference(std::vector<Cell> row, const std::vector<Cell>& other, std::size_t from) {
    for (std::size_t i = from; i < row.size(); ++i) row[i] = std::visit(Minus{}, row[i], other[i]);
    row[from - 1] = Message{code::reviewDifference, {}};
    return row;
}

Table figuresTable(const DayView& view, const season::Day& before) {
    Table table = dayFiguresTable("days");
    const DayView whole{
        .season = view.season, .day = before, .until = before.end - std::chrono::microseconds{1}};
    table.rows.push_back(dayFiguresOf(view, toIso8601(view.day.date)));
    table.rows.push_back(dayFiguresOf(whole, toIso8601(before.date)));
    table.rows.push_back(difference(table.rows[0], table.rows[1], 1));
    return table;
}

std::vector<Cell> densityRow(const DayView& view, const density::SiloLayers& layers, const std::string& silo,
                             LocalDay day, density::LayerSpan span) {
    const auto reading = readingOf(view.season, layers, span, density::Reading::day);
    std::vector<Cell> row{silo, toIso8601(day)};
    if (reading.estimate) {
        const density::Estimate& estimate = *reading.estimate;
        for (const Amount amount : {estimate.density.median().amount(), estimate.density.low80().amount(),
                                    estimate.density.high80().amount()}) {
            row.emplace_back(amount);
        }
    }
    row.resize(5);
    return row;
}

/// Both days' layers as all that is known now has them.
Table densityTable(const DayView& view, const season::Day& before) {
    Table table{"density",
                {{"silo", code::columnSilo},
                 {"day", code::columnDay},
                 {"median", code::columnMedian},
                 {"low80", code::columnLow},
                 {"high80", code::columnHigh}},
                {},
                2};
    for (const auto& [silo, readings] : view.readings) {
        if (!readings.layers) continue;
        const density::SiloLayers& layers = *readings.layers;
        const density::LayerSpan own = layersSince(layers, view.day.begin);
        density::LayerSpan older = layersSince(layers, before.begin);
        older.count = own.first - std::min(older.first, own.first);
        if (own.count == 0 || older.count == 0) continue;
        const std::string name = nameText(view.day.farm().silos, silo);
        const auto now = densityRow(view, layers, name, view.day.date, own);
        const auto then = densityRow(view, layers, name, before.date, older);
        auto change = difference(now, then, 2);
        change.resize(3);  // a difference of bands' ends says nothing
        change.resize(5);
        for (const auto& row : {now, then, change}) table.rows.push_back(row);
    }
    return table;
}

}  // namespace

Table dayFiguresTable(std::string_view key) {
    return {key,
            {{"day", code::columnDay},
             {"loads", code::columnLoads},
             {"mass", code::columnMass},
             {"dryMass", code::columnDryMass},
             {"dryMatter", code::columnDryMatter},
             {"packingHours", code::columnPackingHours},
             {"packing", code::columnPackingTime}},
            {}};
}

std::vector<Cell> dayFiguresOf(const DayView& view, std::string name) {
    season::Delivered delivered;
    for (const season::LoadTipped& load : view.day.loads) {
        if (load.at <= view.until) delivered.add(load);
    }
    Seconds packing{};
    for (const auto& [tractor, worked] : workedIn(view)) packing += worked.packing;
    const auto dryMatter = delivered.dryMatter();
    return {std::move(name),
            delivered.loads,
            delivered.mass.amount(),
            delivered.dry.amount(),
            dryMatter ? Cell{dryMatter->amount()} : Cell{},
            packing / Seconds{std::chrono::hours{1}},
            dryMatter ? Cell{(packing / delivered.mass).amount()} : Cell{}};
}

Section dayBeforeOf(const DayView& view) {
    Section section{"dayBefore", code::reviewBefore, {}};
    const season::Day* before = dayBefore(view);
    if (before == nullptr) {
        section.blocks.emplace_back(Message{code::reviewNoDayBefore, {}});
        return section;
    }
    section.blocks.emplace_back(figuresTable(view, *before));
    Table density = densityTable(view, *before);
    if (!density.rows.empty()) section.blocks.emplace_back(std::move(density));
    return section;
}

}  // namespace treadwell::review
