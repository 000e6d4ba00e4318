#include "app/cli/plan.h"
#include "core/plan/compare.h"

namespace treadwell::cli {

PlanView scenariosView(const std::vector<plan::Inputs>& scenarios) {
    PlanTable result{"scenarios", "Side by side", {}};
    result.table.columns = {{"plan", "Plan"},
                            {"delivery", "Delivery", Dimension::asFedRate},
                            {"days", "Days"},
                            {"left_over", "Left over", Dimension::asFedMass},
                            {"chance_of_room", "Room", Dimension::chance},
                            {"density_low80", "Density: low", Dimension::dryDensity},
                            {"density_median", "median", Dimension::dryDensity},
                            {"density_high80", "high", Dimension::dryDensity},
                            {"chance_of_target", "Chance", Dimension::chance},
                            {"expected_loss", "Loss", Dimension::loss},
                            {"hour", "An hour", Dimension::costRate},
                            {"margin_per_t_dm", "Margin for a t DM"}};
    std::optional<plan::Summary> first;
    for (const plan::Inputs& inputs : scenarios) {
        const auto found = plan::summaryOf(inputs);
        if (!found) return Unexpected{found.error()};
        result.table.rows.push_back({Name{found->name}, found->delivery.amount(), found->days,
                                     found->leftOver.amount(), found->fits.amount(), found->low80.amount(),
                                     found->density.amount(), found->high80.amount(), found->chance.amount(),
                                     found->loss.amount(), found->hour.amount(), found->margin_per_t_dm});
        if (first) {
            for (Message& message : plan::differencesOf(*first, *found))
                result.remarks.push_back(std::move(message));
        } else {
            first = *found;
        }
    }
    return std::vector{std::move(result)};
}

}  // namespace treadwell::cli
