#include "app/cli/plan.h"
#include "core/attention/shape_cautions.h"
#include "core/plan/codes.h"
#include "core/plan/fits.h"

namespace treadwell::cli {

namespace {

std::vector<Message> cautionsOf(const plan::Inputs& inputs, const plan::PlannedSilo& planned) {
    std::vector<Message> messages;
    for (const attention::CautionNow& caution :
         attention::shapeCautions(planned.shape, inputs.machineWidth)) {
        if (messages.empty()) messages.push_back({code::planSiloCautions, {planned.name}});
        messages.push_back(caution.message);
    }
    return messages;
}

PlanTable seasonTable(const plan::Fit& fit) {
    PlanTable result{"season", "The season's crop", {}};
    result.table.columns = {{"crop", "Crop", Dimension::asFedMass},
                            {"delivery", "Delivery", Dimension::asFedRate},
                            {"left_over_low80", "Left over: low", Dimension::asFedMass},
                            {"left_over_median", "median", Dimension::asFedMass},
                            {"left_over_high80", "high", Dimension::asFedMass},
                            {"chance_of_room", "Chance of room", Dimension::chance}};
    result.table.rows = {{fit.crop.amount(), fit.delivery.amount(), fit.leftOver.low80.amount(),
                          fit.leftOver.median.amount(), fit.leftOver.high80.amount(), fit.fits.amount()}};
    return result;
}

PlanTable siloTable(const plan::Inputs& inputs, const plan::Fit& fit) {
    PlanTable result{"silos", "What each silo holds", {}};
    result.table.columns = {{"silo", "Silo"},
                            {"volume", "Volume", Dimension::volume},
                            {"surface", "Surface", Dimension::area},
                            {"mean_depth", "Mean depth", Dimension::length},
                            {"density_low80", "Density: low", Dimension::dryDensity},
                            {"density_median", "median", Dimension::dryDensity},
                            {"density_high80", "high", Dimension::dryDensity},
                            {"holds_low80", "Holds: low", Dimension::asFedMass},
                            {"holds_median", "median", Dimension::asFedMass},
                            {"holds_high80", "high", Dimension::asFedMass},
                            {"placed", "Placed", Dimension::asFedMass}};
    for (std::size_t i = 0; i < fit.silos.size(); ++i) {
        const plan::SiloFit& silo = fit.silos[i];
        result.table.rows.push_back({Name{silo.name}, silo.body.volume.amount(), silo.body.surface.amount(),
                                     silo.body.meanDepth.amount(), silo.density.low80().amount(),
                                     silo.density.median().amount(), silo.density.high80().amount(),
                                     silo.holds.low80.amount(), silo.holds.median.amount(),
                                     silo.holds.high80.amount(), silo.placed.amount()});
        for (Message& caution : cautionsOf(inputs, inputs.silos[i]))
            result.remarks.push_back(std::move(caution));
    }
    result.remarks.push_back(attention::standingText());
    return result;
}

PlanTable placementTable(const plan::Inputs& inputs, const plan::Fit& fit) {
    PlanTable result{"placements", "Where the crop goes", {}};
    result.table.columns = {{"field", "Field"}, {"silo", "Silo"}, {"mass", "Mass", Dimension::asFedMass}};
    for (const plan::Placement& placed : fit.placements)
        result.table.rows.push_back({Name{inputs.grounds[placed.field].name},
                                     Name{fit.silos[placed.silo].name}, placed.mass.amount()});
    return result;
}

PlanTable heightTable(const plan::Fit& fit) {
    PlanTable result{"heights", "Volume by height", {}};
    result.table.columns = {
        {"silo", "Silo"}, {"height", "Height", Dimension::length}, {"volume", "Volume", Dimension::volume}};
    for (const plan::SiloFit& silo : fit.silos) {
        for (const plan::HeightVolume& step : silo.byHeight)
            result.table.rows.push_back({Name{silo.name}, step.height.amount(), step.volume.amount()});
    }
    return result;
}

}  // namespace

PlanView fitsView(const plan::Inputs& inputs) {
    return plan::fitOf(inputs).map([&](const plan::Fit& fit) {
        return std::vector{seasonTable(fit), siloTable(inputs, fit), placementTable(inputs, fit),
                           heightTable(fit)};
    });
}

}  // namespace treadwell::cli
