#pragma once

#include "app/cli/command.h"
#include "core/season/season.h"

#include <optional>

namespace treadwell::cli {

/// The options of a command that looks at a season, as typed.
struct SeasonOptions {
    std::string file;
    std::optional<std::string> at;
    std::optional<std::string> date;
    std::optional<std::string> silo;
    bool working = false;
    bool csv = false;
    bool asItLies = false;
    std::optional<std::string> along, up, across;
};

[[nodiscard]] Outcome state(const SeasonOptions& options, const Answer& answer);
[[nodiscard]] Outcome advise(const SeasonOptions& options, const Answer& answer);
[[nodiscard]] Outcome calibration(const SeasonOptions& options, const Answer& answer);
[[nodiscard]] Outcome layers(const SeasonOptions& options, const Answer& answer);
[[nodiscard]] Outcome field(const SeasonOptions& options, const Answer& answer);
[[nodiscard]] Outcome samples(const SeasonOptions& options, const Answer& answer);

/// Reads every entry and holds it to the chain of hashes of the device that wrote it.
[[nodiscard]] Outcome check(const std::string& file, const Answer& answer);

/// The options of a new season, as typed.
struct NewSeasonOptions {
    std::string file;
    std::optional<std::string> farm;  ///< a farm file ...
    std::vector<std::string> carry;   ///< ... or earlier seasons' files
    std::optional<std::string> begins;
};

/// A new season file with the farm in it.
[[nodiscard]] Outcome newSeason(const NewSeasonOptions& options, const Answer& answer);

/// The season in a file, for looking at.
[[nodiscard]] tl::expected<season::Season, Failure> readSeason(const std::string& file, const Answer& answer);

/// An entry of this kind with nothing filled in; words of the name may be joined by `-` or `_`.
[[nodiscard]] tl::expected<entries::Body, Failure> emptyBodyOf(std::string kind, const words::Style& style);

/// The machine's time where none is given.
[[nodiscard]] tl::expected<Instant, Failure> momentFrom(const std::optional<std::string>& at,
                                                        const words::Style& style,
                                                        std::string_view option = "--at");

/// The silo of that name; without a name the only one there is.
[[nodiscard]] tl::expected<farm::Silo, Failure> siloFrom(const season::FarmBook& farm,
                                                         const std::optional<std::string>& name);

/// The day of that date; without a date the last one.
[[nodiscard]] tl::expected<const season::Day*, Failure> dayFrom(const season::Season& season,
                                                                const std::optional<std::string>& date);

}  // namespace treadwell::cli
