#pragma once

#include "core/intake/intake.h"

#include <functional>
#include <string>
#include <string_view>

namespace treadwell::intake {

/// Puts an error into words, as it is told to whoever imports.
using Wording = std::function<std::string(const Error&)>;

/// All that is to be recorded of a file: what its rows propose, the rows that were set aside and were not
/// before, and that earlier ones are settled. A row whose time cannot be read stands at `now`. `file` is the
/// file's name without folders.
[[nodiscard]] std::vector<Proposal> recordsOf(const Intake& intake, const std::string& file,
                                              std::string_view list, Instant now, const Wording& wording);

}  // namespace treadwell::intake
