#pragma once

#include "app/cli/command.h"
#include "app/cli/table.h"
#include "core/plan/inputs.h"

#include <vector>

namespace treadwell::cli {

/// The options as typed.
struct PlanOptions {
    std::string file;
    std::string what = "all";
    std::vector<std::string> against;  ///< further plans to stand beside the first
    bool example = false;
};

/// A harvest planned: what fits, what flows, what pays; or an example of its inputs.
[[nodiscard]] Outcome plan(const PlanOptions& options, const Answer& answer);

/// A table with its name, and what is to be said beneath it.
struct PlanTable {
    std::string key;
    std::string heading;
    Table table;
    std::vector<Message> remarks = {};
};

/// One view of a plan.
using PlanView = Result<std::vector<PlanTable>>;

[[nodiscard]] PlanView fitsView(const plan::Inputs& inputs);
[[nodiscard]] PlanView flowsView(const plan::Inputs& inputs);
[[nodiscard]] PlanView paysView(const plan::Inputs& inputs);
[[nodiscard]] PlanView sealsView(const plan::Inputs& inputs);
[[nodiscard]] PlanView feedsView(const plan::Inputs& inputs);

/// Plans side by side, and in words what sets each apart from the first.
[[nodiscard]] PlanView scenariosView(const std::vector<plan::Inputs>& scenarios);

}  // namespace treadwell::cli
