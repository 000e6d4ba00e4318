#pragma once

#include "app/cli/command.h"
#include "app/words/entry.h"
#include "core/intake/intake.h"
#include "core/session/session.h"

#include <optional>

namespace treadwell::cli {

/// The options of a command about single entries, as typed.
struct EntryOptions {
    std::string file;
    std::string kind;
    std::string entry;                ///< an id, or an ending of one that no other has
    std::vector<std::string> fields;  ///< `mass=12.3t`
    std::optional<std::string> at;
    std::optional<std::string> author;
    std::optional<std::string> reason;
    std::optional<std::string> date;
    std::optional<std::string> silo;
};

[[nodiscard]] Outcome add(const EntryOptions& options, const Answer& answer);
[[nodiscard]] Outcome correct(const EntryOptions& options, const Answer& answer);
/// Takes the entry's effect back: of a fact, of a correction, or of a void.
[[nodiscard]] Outcome takeBack(const EntryOptions& options, const Answer& answer);

/// The facts as they stand, in the order in which they happened.
[[nodiscard]] Outcome list(const EntryOptions& options, const Answer& answer);
/// One fact and all that changed it, in the order in which it was written.
[[nodiscard]] Outcome history(const EntryOptions& options, const Answer& answer);

/// Whom `name` means among the people of `context`; nobody where none is named.
[[nodiscard]] tl::expected<entries::PersonId, Failure> authorFrom(const intake::Context& context,
                                                                  const std::string& file,
                                                                  const std::optional<std::string>& name);

/// The same among the people of an open season.
[[nodiscard]] tl::expected<entries::PersonId, Failure> authorIn(session::Session& session,
                                                                const std::string& file,
                                                                const std::optional<std::string>& name,
                                                                const words::Style& style);

using PeopleNames = std::map<entries::PersonId, std::string>;

/// The fact that is meant, or a change of one.
[[nodiscard]] tl::expected<season::EntryPointer, Failure> entryFrom(const season::Season& season,
                                                                    const std::string& typed);

/// What the farm and the file call things and people.
[[nodiscard]] words::NameOf namesOf(const season::FarmBook& farm, const PeopleNames& people);

}  // namespace treadwell::cli
