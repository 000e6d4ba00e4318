#include "app/cli/plan.h"
#include "core/plan/codes.h"
#include "core/plan/flows.h"

namespace treadwell::cli {

namespace {

PlanTable chainTable(const plan::Inputs& inputs, const plan::Flow& flow) {
    PlanTable result{"chain", "The chain from each field", {}};
    result.table.columns = {{"field", "Field"},
                            {"crop", "Crop", Dimension::asFedMass},
                            {"round", "Round", Dimension::duration},
                            {"fill", "Fill", Dimension::duration},
                            {"trucks_to_keep_up", "Trucks: fixed times"},
                            {"trucks_wanted", "random times"},
                            {"match", "Match"},
                            {"slowest", "Slowest link"},
                            {"delivery", "Delivery", Dimension::asFedRate},
                            {"harvest_days", "Days"}};
    for (std::size_t i = 0; i < flow.fields.size(); ++i) {
        const plan::FieldFlow& field = flow.fields[i];
        const plan::Chain& chain = field.chain;
        auto& row = result.table.rows.emplace_back();
        row = {Name{field.field},
               inputs.grounds[i].crop.amount(),
               durationAmount(chain.round),
               durationAmount(chain.fill),
               std::int64_t{chain.trucksToKeepUp},
               std::monostate{},
               chain.match,
               std::string{enumText(chain.slowest)},
               chain.delivery.amount(),
               field.harvestDays};
        if (field.trucksWanted) row[5] = std::int64_t{*field.trucksWanted};
        if (chain.slowest == plan::Link::packing)
            result.remarks.push_back({code::planPackingSlowest,
                                      {field.field, chain.delivery.amount(), flow.packing.rate.amount()}});
    }
    return result;
}

PlanTable linkTable(const plan::Flow& flow) {
    PlanTable result{"links", "What each link carries alone", {}};
    result.table.columns = {{"field", "Field"}, {"link", "Link"}, {"rate", "Rate", Dimension::asFedRate}};
    for (const plan::FieldFlow& field : flow.fields) {
        for (std::size_t link = 0; link < plan::kLinks; ++link)
            result.table.rows.push_back({Name{field.field}, std::string{enumText(plan::Link(link))},
                                         field.chain.rates[link].amount()});
    }
    return result;
}

void addBands(Table& table, const std::string& field, int trucks, const plan::DaysBand& days) {
    const auto add = [&](const char* what, const plan::Band& band) {
        table.rows.push_back(
            {Name{field}, std::int64_t{trucks}, std::string{what}, band.low80, band.median, band.high80});
    };
    add("loads_per_h", days.loadsPerHour);
    add("harvester_waiting_share", days.harvesterWaiting);
    add("truck_waiting_min", days.truckWaiting_min);
    add("packing_min_per_t", days.minutesPerTonne);
    add("density_kg_dm_m3", days.density_kg_dm_m3);
    add("passes", days.passes);
}

PlanTable daysTable(const plan::Inputs& inputs, const plan::Flow& flow) {
    PlanTable result{
        "days", "Simulated days, with all trucks and with one fewer; the density by the days alone", {}};
    result.table.columns = {{"field", "Field"}, {"trucks", "Trucks"}, {"what", "What"},
                            {"low80", "Low"},   {"median", "Median"}, {"high80", "High"}};
    for (const plan::FieldFlow& field : flow.fields) {
        addBands(result.table, field.field, inputs.haulage.trucks, field.days);
        if (field.oneFewer) addBands(result.table, field.field, inputs.haulage.trucks - 1, *field.oneFewer);
        if (field.days.daysWithoutLoad > 0)
            result.remarks.push_back(
                {code::planDaysWithoutLoad, {field.field, std::int64_t{field.days.daysWithoutLoad}}});
    }
    return result;
}

PlanTable densityTable(const plan::Flow& flow) {
    PlanTable result{"density", "Density at the simulated delivery", {}};
    result.table.columns = {{"field", "Field"},
                            {"density_low80", "Low", Dimension::dryDensity},
                            {"density_median", "Median", Dimension::dryDensity},
                            {"density_high80", "High", Dimension::dryDensity},
                            {"target", "Target", Dimension::dryDensity},
                            {"chance_of_target", "Chance", Dimension::chance},
                            {"queue_loads_per_h", "Loads/h by the queue formula"}};
    for (const plan::FieldFlow& field : flow.fields) {
        const density::Estimate& estimate = field.estimate;
        result.table.rows.push_back({Name{field.field}, estimate.density.low80().amount(),
                                     estimate.density.median().amount(), estimate.density.high80().amount(),
                                     estimate.target.density.amount(), estimate.chance.amount(),
                                     field.queueLoadsPerHour});
    }
    return result;
}

}  // namespace

PlanView flowsView(const plan::Inputs& inputs) {
    return plan::flowOf(inputs).map([&](const plan::Flow& flow) {
        return std::vector{chainTable(inputs, flow), linkTable(flow), daysTable(inputs, flow),
                           densityTable(flow)};
    });
}

}  // namespace treadwell::cli
