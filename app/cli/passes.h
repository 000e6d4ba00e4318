#pragma once

#include "app/cli/season_file.h"

namespace treadwell::cli {

/// The options of a replay beside those of a season's view, as typed.
struct ReplayOptions {
    std::string pattern = "wholeWidth";
    std::string seed = "1";
};

/// The simulation's answer for what lies in a silo, beside the regression's.
[[nodiscard]] Outcome replay(const SeasonOptions& options, const ReplayOptions& how, const Answer& answer);

/// The options of tracks beside those of a season's view, as typed.
struct TrackOptions {
    std::vector<std::string> tracks;    ///< those that are attached where none is given
    std::vector<std::string> tractors;  ///< whose each is, in the same order
    std::optional<std::string> corner;  ///< with the bearing, instead of the place that was recorded
    std::optional<std::string> bearing;
    std::optional<std::string> map;     ///< a new file
    std::optional<std::string> author;  ///< who attaches one
};

/// What the tracks of tractors say of the passes over each layer.
[[nodiscard]] Outcome tracks(const SeasonOptions& options, const TrackOptions& given, const Answer& answer);

/// Attaches one track to the season's file.
[[nodiscard]] Outcome attachTrack(const SeasonOptions& options, const TrackOptions& given,
                                  const Answer& answer);

}  // namespace treadwell::cli
