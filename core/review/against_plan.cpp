// The day beside what the season's plan had for it.
#include "core/review/codes.h"
#include "core/review/day_view.h"

#include <algorithm>
#include <cmath>

namespace treadwell::review {

namespace {

using Plan = season::Dated<entries::PlanAdopted>;

/// The last one adopted by then; null without one.
const Plan* planAt(const DayView& view) {
    const Plan* plan = view.day.before.plan.get();
    for (const Plan& adopted : view.day.records.of<entries::PlanAdopted>()) {
        if (adopted.at <= view.until) plan = &adopted;
    }
    return plan;
}

/// What a day came to, as far as it can be said.
struct Was {
    season::Delivered delivered;
    std::optional<AsFedRate> delivery;
    Seconds packing{};
    std::optional<Length> layer;
};

Seconds pausedBetween(const DayView& view, Instant first, Instant last) {
    Seconds paused{};
    for (const season::PauseSpan& pause : view.day.pauses) {
        const Instant begin = std::max(pause.begin, first);
        const Instant end = std::min(pause.end.value_or(last), last);
        if (end > begin) paused += end - begin;
    }
    return paused;
}

Was wasOf(const DayView& view) {
    constexpr std::int64_t kFewest = 3;  // fewer loads have no rate
    Was was;
    for (const season::LoadTipped& load : view.day.loads) {
        if (load.at <= view.until) was.delivered.add(load);
    }
    for (const auto& [tractor, worked] : workedIn(view)) was.packing += worked.packing;
    const season::Delivered& came = was.delivered;
    if (came.loads >= kFewest) {
        const Seconds time = Seconds{came.last - came.first} - pausedBetween(view, came.first, came.last);
        const double intervals = static_cast<double>(came.loads - 1) / static_cast<double>(came.loads);
        if (time > Seconds{}) was.delivery = came.mass * intervals / time;
    }
    Length sum;
    double seen = 0.0;
    for (const season::LayerNote& layer : view.day.layers) {
        if (layer.at > view.until) continue;
        sum += layer.what.thickness;
        seen += 1.0;
    }
    if (seen > 0.0) was.layer = sum / seen;
    return was;
}

constexpr double kWorthNaming = 0.05;

/// A sentence where one is more than a twentieth off the other.
template <class Q>
void addDifference(Section& section, Q was, Q planned, Code less, Code more) {
    if (std::abs(was.si() - planned.si()) <= kWorthNaming * planned.si()) return;
    section.blocks.emplace_back(Message{was < planned ? less : more, {was.amount(), planned.amount()}});
}

template <class Q>
Cell cellOf(const std::optional<Q>& quantity) {
    return quantity ? Cell{quantity->amount()} : Cell{};
}

Cell layerCell(const std::optional<Length>& layer) {
    return layer ? Cell{layer->layerAmount()} : Cell{};
}

Table figuresTable(const entries::PlanAdopted& plan, const entries::PlannedDay& planned, const Was& was) {
    Table table{"figures",
                {{"which", code::columnDay},
                 {"mass", code::columnMass},
                 {"delivery", code::columnDelivery},
                 {"packingHours", code::columnPackingHours},
                 {"packing", code::columnPackingTime},
                 {"layer", code::columnThickness}},
                {}};
    table.rows.push_back({Message{code::planRowPlanned, {}}, planned.mass.amount(), planned.delivery.amount(),
                          planned.packing / kHour, (planned.packing / planned.mass).amount(),
                          plan.layer.layerAmount()});
    const bool any = was.delivered.mass > AsFedMass{};
    table.rows.push_back({Message{code::planRowWas, {}}, was.delivered.mass.amount(), cellOf(was.delivery),
                          was.packing / kHour,
                          any ? Cell{(was.packing / was.delivered.mass).amount()} : Cell{},
                          layerCell(was.layer)});
    return table;
}

Table densityTable(const DayView& view, const entries::PlannedDay& planned) {
    Table table{"density",
                {{"silo", code::columnSilo},
                 {"which", code::columnDay},
                 {"median", code::columnMedian},
                 {"low80", code::columnLow},
                 {"high80", code::columnHigh}},
                {},
                2};
    for (const auto& [silo, readings] : view.readings) {
        if (!readings.today.estimate) continue;
        const density::Distribution& density = readings.today.estimate->density;
        const std::string name = nameText(view.day.farm().silos, silo);
        table.rows.push_back({name, Message{code::planRowPlanned, {}}, planned.density.amount(),
                              planned.low80.amount(), planned.high80.amount()});
        table.rows.push_back({name, Message{code::planRowWas, {}}, density.median().amount(),
                              density.low80().amount(), density.high80().amount()});
    }
    return table;
}

void addSentences(const DayView& view, const entries::PlanAdopted& plan, const entries::PlannedDay& planned,
                  const Was& was, Section& section) {
    const std::size_t before = section.blocks.size();
    addDifference(section, was.delivered.mass, planned.mass, code::planMassLess, code::planMassMore);
    if (was.delivery)
        addDifference(section, *was.delivery, planned.delivery, code::planRateLess, code::planRateMore);
    if (std::abs(was.packing / planned.packing - 1.0) > kWorthNaming) {
        section.blocks.emplace_back(
            Message{was.packing < planned.packing ? code::planPackingLess : code::planPackingMore,
                    {durationAmount(was.packing), durationAmount(planned.packing)}});
    }
    if (was.layer && std::abs(*was.layer / plan.layer - 1.0) > kWorthNaming) {
        section.blocks.emplace_back(
            Message{*was.layer < plan.layer ? code::planLayerThinner : code::planLayerThicker,
                    {was.layer->layerAmount(), plan.layer.layerAmount()}});
    }
    for (const auto& [silo, readings] : view.readings) {
        if (!readings.today.estimate) continue;
        const density::Distribution& density = readings.today.estimate->density;
        if (std::abs(density.median() / planned.density - 1.0) <= kWorthNaming) continue;
        section.blocks.emplace_back(
            Message{density.median() < planned.density ? code::planDensityLess : code::planDensityMore,
                    {nameText(view.day.farm().silos, silo), density.median().amount(),
                     density.low80().amount(), density.high80().amount(), planned.density.amount(),
                     planned.low80.amount(), planned.high80.amount()}});
    }
    if (section.blocks.size() == before) section.blocks.emplace_back(Message{code::planKept, {}});
}

/// All that came in since the plan's first day beside all that was to come by this one.
void addSoFar(const DayView& view, const entries::PlanAdopted& plan, Section& section) {
    using std::chrono::local_days;
    AsFedMass planned, came;
    for (const entries::PlannedDay& day : plan.days) {
        if (local_days{day.day} <= local_days{view.day.date}) planned += day.mass;
    }
    if (!(planned > AsFedMass{})) return;
    for (const auto& day : view.season.days()) {
        if (local_days{day->date} < local_days{plan.days.front().day}) continue;
        for (const season::LoadTipped& load : day->loads) {
            if (load.at <= view.until) came += load.load.mass;
        }
    }
    section.blocks.emplace_back(
        Message{code::planSoFar, {toIso8601(plan.days.front().day), came.amount(), planned.amount()}});
}

}  // namespace

Section againstPlanOf(const DayView& view) {
    Section section{"plan", code::reviewPlan, {}};
    const Plan* adopted = planAt(view);
    if (adopted == nullptr) {
        section.blocks.emplace_back(Message{code::planNone, {}});
        return section;
    }
    const entries::PlanAdopted& plan = adopted->what;
    section.blocks.emplace_back(
        Message{code::planInForce, {plan.name, toIso8601(view.season.zone().dayOf(adopted->at))}});
    const auto planned = std::ranges::find(plan.days, view.day.date, &entries::PlannedDay::day);
    if (planned == plan.days.end()) {
        section.blocks.emplace_back(Message{code::planNotThisDay, {}});
    } else {
        const Was was = wasOf(view);
        addSentences(view, plan, *planned, was, section);
        section.blocks.emplace_back(figuresTable(plan, *planned, was));
        if (Table density = densityTable(view, *planned); !density.rows.empty())
            section.blocks.emplace_back(std::move(density));
    }
    addSoFar(view, plan, section);
    return section;
}

}  // namespace treadwell::review
