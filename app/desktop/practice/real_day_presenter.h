#pragma once

#include "app/desktop/practice/practice_presenter.h"
#include "app/desktop/practice/track_work.h"

namespace treadwell::practice_page {

// From a season and what was made of its tracks to what the page shows. All are pure.

/// A day on which crop came into a silo, to be looked back on as its end left it.
struct DayRow {
    LocalDay day;
    Instant at;
    QString text;
};
/// The newest first.
[[nodiscard]] std::vector<DayRow> recordedDays(const season::Season& season, farm::SiloId silo, Instant now,
                                               const settings::DisplayUnits& units);

/// An attached track.
struct TrackRow {
    entries::TrackAttached track;
    QString text;
};
/// Those that were driven in part on this day.
[[nodiscard]] std::vector<TrackRow> trackRows(const season::Season& season, const season::Day& day);

/// What the positions' errors leave to say of one column of a layer.
enum class Certainty : std::uint8_t {
    absent,   ///< the layer does not lie here
    noTyre,   ///< wherever the errors put the tyres
    tooFew,   ///< the same
    unclear,  ///< fewer passes than advised, or enough: the positions do not tell
    enough,   ///< passes as advised, wherever the errors put the tyres
};
struct CoverageMap {
    passes::PadShape shape;
    std::vector<Certainty> columns;  ///< row by row, along the silo first
    std::vector<PadMark> marks;
};
/// Of the layer that is `layer` in the grid's list.
[[nodiscard]] CoverageMap mapOf(const Driven& driven, std::size_t layer);
/// `Passes over layer 12: enough on 61 %...`
[[nodiscard]] QString sentenceOf(const CoverageMap& map);

/// A layer that was driven on, against the rule.
struct PassesRow {
    std::size_t layer;  ///< in the grid's list
    QString number, passes, enough, noTyre, verdict;
    bool tooFew;
};
[[nodiscard]] std::vector<PassesRow> passesRows(const Driven& driven, const settings::DisplayUnits& units);

/// What became of each file's fixes, and what went wrong by the tracks.
[[nodiscard]] Lines trackLines(const Driven& driven);
[[nodiscard]] Lines findingLines(const Driven& driven, const fill::Speech& speech);

/// A density with its band by one of the two ways.
struct Band {
    QString name;
    density::Distribution density;
    bool simulated;
};
/// The silo, then the layers begun on the day, the newest first, each by the simulation and the regression.
[[nodiscard]] std::vector<Band> bandsOf(const Opinion& opinion, const season::Day& day);

}  // namespace treadwell::practice_page
