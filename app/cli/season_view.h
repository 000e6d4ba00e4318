#pragma once

#include "app/cli/season_file.h"

namespace treadwell::cli {

/// A season, and how to speak of it: on the farm's clock.
struct Told {
    season::Season season;
    Answer answer;
};

/// A silo of it at a moment.
struct View : Told {
    farm::Silo silo;
    Instant at;
};

[[nodiscard]] tl::expected<View, Failure> viewOf(const SeasonOptions& options, const Answer& answer);

}  // namespace treadwell::cli
