#pragma once

#include "app/cli/command.h"

#include <optional>
#include <vector>

namespace treadwell::cli {

/// The options as typed.
struct HarvestOrderOptions {
    std::string file;
    std::vector<std::string> fields;  ///< `NAME=800t`: still to be cut, and what it will yield
    std::string capacity;             ///< a day
    std::optional<std::string> first;
    std::string change = "0";  ///< days
    std::vector<std::string> rain;
    std::optional<std::string> at;
    bool asGiven = false;  ///< reckon the order in which the fields are listed
};

/// The order of fields that keeps the dry matter at the silo inside the goal, or what a given order brings.
[[nodiscard]] Outcome harvestOrder(const HarvestOrderOptions& options, const Answer& answer);

}  // namespace treadwell::cli
