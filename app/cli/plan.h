#pragma once

#include "app/cli/command.h"
#include "app/cli/table.h"
#include "core/plan/inputs.h"

#include <optional>
#include <vector>

namespace treadwell::cli {

/// The options as typed.
struct PlanOptions {
    std::string file;
    std::string what = "all";
    std::vector<std::string> against;  ///< further plans to stand beside the first
    bool example = false;
    std::optional<std::string> adopt;    ///< the season that takes the plan
    std::optional<std::string> adopted;  ///< the season whose plan is to be printed
    std::optional<std::string> of;       ///< the season whose farm a plan begins with
    std::optional<std::string> author;
    std::optional<std::string> at;
};

/// A harvest planned: what fits, what flows, what pays; or an example of its inputs.
[[nodiscard]] Outcome plan(const PlanOptions& options, const Answer& answer);

/// The inputs in a file.
[[nodiscard]] tl::expected<plan::Inputs, Failure> inputsFrom(const std::string& file,
                                                             const words::Style& style);

// The plan and the season: the plan becomes the season's; the season's is printed; one is begun from its
// farm.
[[nodiscard]] Outcome adopt(const PlanOptions& options, const Answer& answer);
[[nodiscard]] Outcome printAdopted(const std::string& season, const Answer& answer);
[[nodiscard]] Outcome printBegun(const std::string& season, const Answer& answer);

/// A table with its name, and what is to be said beneath it.
struct PlanTable {
    std::string key;
    std::string heading;
    Table table;
    std::vector<Message> remarks = {};
};

/// The options of the sealing list, as typed.
struct SealingOptions {
    std::string file;
    std::optional<std::string> plan;  ///< a file of inputs instead of the season's plan
    std::optional<std::string> done;  ///< a step
    std::optional<std::string> silo, from, to, product, author, at;
};

/// What is to be done to seal the silos, and the entry that a step is done.
[[nodiscard]] Outcome sealing(const SealingOptions& options, const Answer& answer);

/// As text or JSON, each with its remarks.
void printPlanTables(const std::vector<PlanTable>& tables, const Answer& answer);

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
