#pragma once

#include "core/plan/inputs.h"
#include "core/season/season.h"

namespace treadwell::plan {

/// A plan to begin with for this farm: its silos, fields, trucks and tractors, its layer, goal and wanted
/// chance; machines whose usual role is not packing are given half of their time. What a farm does not define
/// is that of exampleInputs(); the crop, which no farm knows beforehand, fills the silos at the farm's
/// minimum density, in equal parts (assumed). `begins` is the first day of harvest.
[[nodiscard]] Inputs inputsOf(const season::FarmBook& farm, LocalDay begins);
/// Of this season's farm, from the season's first day; from `today` where it has none yet.
[[nodiscard]] Inputs inputsOf(const season::Season& season, LocalDay today);

/// The plan that the season goes by at its end; null without one.
[[nodiscard]] const entries::PlanAdopted* adoptedIn(const season::Season& season);

}  // namespace treadwell::plan
