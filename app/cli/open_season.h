#pragma once

#include "app/cli/command.h"
#include "core/session/session.h"

namespace treadwell::cli {

/// Entries from files and scales, and those of whom nobody was named, have no author at the keyboard.
inline constexpr entries::PersonId kNobody{};

using session::Purpose;

/// The machine's clock, which outlives every session.
[[nodiscard]] const Clock& machineClock();

/// When what is recorded happens: as `at` says, or now unless the machine's clock is in question.
[[nodiscard]] tl::expected<Instant, Failure> timeOfEntry(const session::Session& session,
                                                         const std::optional<std::string>& at,
                                                         const words::Style& style);

/// The season's file and what this machine remembers beside it.
[[nodiscard]] tl::expected<session::Files, Failure> filesOf(const std::string& season,
                                                            const words::Style& style);

/// An open season; what was found at opening is told in `answer.notes`. A file that is open for reading alone
/// is a failure where it is to be written.
[[nodiscard]] tl::expected<session::Session, Failure> openSeason(const std::string& file, Purpose purpose,
                                                                 const Answer& answer);

}  // namespace treadwell::cli
