#pragma once

#include "app/cli/command.h"

#include <optional>

namespace treadwell::cli {

/// The options of what takes a season's file, or a part of it, elsewhere, as typed.
struct CopyOptions {
    std::string file;
    std::string copy;
    std::string what = "season";
    std::optional<std::string> output;
    std::string schema = "season";  ///< of what
    bool names = false;             ///< people's names too
    std::optional<std::string> place;
    bool noPlace = false;
    std::optional<std::string> season;  ///< whose copies are asked about
    bool copyNow = false;
};

/// A checked copy under a new name.
[[nodiscard]] Outcome backup(const CopyOptions& options, const Answer& answer);

/// A season's file made anew from a copy, or from an exported document.
[[nodiscard]] Outcome restore(const CopyOptions& options, const Answer& answer);

/// Shows, chooses or forgets the folder into which a copy goes after each day's close.
[[nodiscard]] Outcome secondPlace(const CopyOptions& options, const Answer& answer);

/// The whole season as one JSON document, or a table of it as CSV.
[[nodiscard]] Outcome exportSeason(const CopyOptions& options, const Answer& answer);

/// The JSON Schema of a season's document, of a lesson or of a drive.
[[nodiscard]] Outcome schema(const std::string& what, const Answer& answer);

/// To the file that is named, which must not be there yet, or to where answers go.
[[nodiscard]] Outcome deliver(const std::string& content, const std::optional<std::string>& output,
                              const Answer& answer);

/// The options of a command about people, as typed.
struct PeopleOptions {
    std::string file;
    std::optional<std::string> add;
    std::optional<std::string> erase;
    std::optional<std::string> rename;
    std::optional<std::string> to;
};

/// Who is known in a season's file; adds, renames and erases names.
[[nodiscard]] Outcome people(const PeopleOptions& options, const Answer& answer);

}  // namespace treadwell::cli
