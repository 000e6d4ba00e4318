#pragma once

#include "app/cli/command.h"

#include <optional>
#include <vector>

namespace treadwell::cli {

/// The options as typed.
struct SieveOptions {
    std::string stack = "threeTo4";
    std::vector<std::string> sieves;  ///< instead of the stack
    std::vector<std::string> masses;
    std::vector<std::string> parts;  ///< instead of masses
    std::optional<std::string> before;
    std::optional<std::string> topLength;
    std::optional<std::string> fibre;
    std::optional<std::string> cut;
    std::string crop = "maize";
    std::string processor = "rolls";
    bool wet = false;
};

/// Length of chop by every method that the sieves allow, its parts against the usual ranges, and what the
/// harvester's setting needs.
[[nodiscard]] Outcome sieve(const SieveOptions& options, const Answer& answer);

struct DryOptions {
    std::string wet;
    std::vector<std::string> weighings;
};

/// The next step with a sample in the microwave, or its dry matter once it is dry.
[[nodiscard]] Outcome dry(const DryOptions& options, const Answer& answer);

}  // namespace treadwell::cli
