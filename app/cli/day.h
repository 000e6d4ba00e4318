#pragma once

#include "app/cli/season_file.h"
#include "core/review/document.h"

#include <optional>
#include <string>

namespace treadwell::cli {

/// The options of `day` and `close`, as typed.
struct DayOptions {
    std::string file;
    std::optional<std::string> date;
    std::optional<std::string> at;
    std::optional<std::string> author;
    bool csv = false;
    bool message = false;
    bool anyway = false;
};

[[nodiscard]] Outcome day(const DayOptions& options, const Answer& answer);
/// Tells what is missing and closes the day where nothing is, or where it is to be closed anyway.
[[nodiscard]] Outcome close(const DayOptions& options, const Answer& answer);

/// The options of `feed-out`, as typed.
struct FeedOptions {
    std::string file;
    std::optional<std::string> at, silo, from, perDay, dryMatter, loss, week, face;
    bool csv = false;
};

[[nodiscard]] Outcome face(const SeasonOptions& options, const Answer& answer);
[[nodiscard]] Outcome feedOut(const FeedOptions& options, const Answer& answer);

enum class DocumentForm : std::uint8_t { text, message, csv, json };

void printDocument(const review::Document& document, DocumentForm form, const Answer& answer);

}  // namespace treadwell::cli
