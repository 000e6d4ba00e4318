#include "app/cli/plan.h"
#include "core/plan/codes.h"
#include "core/plan/pays.h"

namespace treadwell::cli {

namespace {

std::vector<Cell> fleetRow(const plan::Inputs& inputs, const char* which, const plan::FleetMoney& money) {
    std::string tractors;
    for (const std::size_t i : money.fleet.tractors)
        tractors += (tractors.empty() ? "" : ", ") + inputs.tractors[i].name;
    return {std::string{which},
            Name{tractors},
            std::int64_t{money.fleet.trucks},
            money.fleet.delivery.amount(),
            money.estimate.density.low80().amount(),
            money.estimate.density.median().amount(),
            money.estimate.density.high80().amount(),
            money.estimate.chance.amount(),
            money.fleet.loss.amount(),
            money.fleet.hour.amount(),
            money.fleet.margin_per_t_dm};
}

PlanTable fleetTable(const plan::Inputs& inputs, const plan::Pay& pay) {
    PlanTable result{"fleets", "The planned fleet, and the best of those compared", {}};
    result.table.columns = {{"which", "Fleet"},
                            {"tractors", "Tractors"},
                            {"trucks", "Trucks"},
                            {"delivery", "Delivery", Dimension::asFedRate},
                            {"density_low80", "Density: low", Dimension::dryDensity},
                            {"density_median", "median", Dimension::dryDensity},
                            {"density_high80", "high", Dimension::dryDensity},
                            {"chance_of_target", "Chance", Dimension::chance},
                            {"expected_loss", "Expected loss", Dimension::loss},
                            {"hour", "An hour", Dimension::costRate},
                            {"margin_per_t_dm", "Margin for a t DM"}};
    result.table.rows = {fleetRow(inputs, "planned", pay.planned), fleetRow(inputs, "best", pay.best)};
    result.remarks = {{code::planFleetsCompared, {static_cast<std::int64_t>(pay.compared)}},
                      {code::planLossHeld, {}}};
    return result;
}

PlanTable tractorTable(const plan::Pay& pay) {
    PlanTable result{"one_more", "One more tractor, heaviest first", {}};
    result.table.columns = {{"tractor", "Tractor"},
                            {"hour", "An hour", Dimension::costRate},
                            {"break_even_loss", "Must save", Dimension::loss},
                            {"break_even_density", "that is", Dimension::dryDensity},
                            {"gain", "Brings", Dimension::dryDensity},
                            {"margin_per_h", "Beyond its cost an hour"},
                            {"pays_from", "Pays from", Dimension::asFedRate}};
    for (const plan::OneMore& more : pay.oneMore) {
        auto& row = result.table.rows.emplace_back();
        row = {Name{more.tractor},
               more.hour.amount(),
               more.breakEven.loss.amount(),
               more.breakEven.density.amount(),
               more.gain.amount(),
               more.margin_per_h,
               std::monostate{}};
        if (more.paysFrom) {
            row.back() = more.paysFrom->amount();
        } else {
            result.remarks.push_back({code::planNeverPays, {more.tractor, plan::kFastestDelivery.amount()}});
        }
    }
    return result;
}

}  // namespace

PlanView paysView(const plan::Inputs& inputs) {
    return plan::payOf(inputs).map([&](const plan::Pay& pay) {
        return std::vector{fleetTable(inputs, pay), tractorTable(pay)};
    });
}

}  // namespace treadwell::cli
