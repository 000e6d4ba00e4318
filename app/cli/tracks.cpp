#include "app/cli/names.h"
#include "app/cli/open_season.h"
#include "app/cli/option_reader.h"
#include "app/cli/passes.h"
#include "app/cli/practice.h"
#include "app/cli/season_copies.h"
#include "app/cli/season_entries.h"
#include "app/cli/season_view.h"
#include "app/cli/table.h"
#include "core/base/number_text.h"
#include "core/density/readings.h"
#include "core/formats/csv_writer.h"
#include "core/packing/passes.h"
#include "core/passes/silo_tracks.h"
#include "core/practice/track_findings.h"

#include <ostream>

namespace treadwell::cli {

namespace {

using passes::DrivenGrid;
using passes::DrivenLayer;
using passes::ReadTrack;

struct Tracked {
    const View& view;
    std::vector<ReadTrack> tracks;
    std::vector<DrivenLayer> layers;  ///< only those driven on
    std::vector<practice::Finding> findings = {};
};

std::optional<double> degrees(std::string_view text) {
    while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
    return numberFromText(text);
}

tl::expected<farm::SiloPlace, Failure> placeFrom(const std::string& corner, const std::string& bearing,
                                                 const words::Style& style) {
    const std::size_t comma = corner.find(',');
    const auto latitude = degrees(std::string_view{corner}.substr(0, comma));
    const auto longitude =
        comma == std::string::npos ? std::nullopt : degrees(std::string_view{corner}.substr(comma + 1));
    if (!latitude || !longitude) {
        return tl::unexpected{Failure{
            Status::misused, "--corner: \"" + corner + "\" is no place: write it like 43.5202,-89.5092"}};
    }
    const auto direction = degrees(bearing);
    if (!direction) {
        return tl::unexpected{Failure{
            Status::misused, "--bearing: \"" + bearing + "\" is no direction: write degrees from north"}};
    }
    const farm::SiloPlace place{*latitude, *longitude, *direction, {}};
    if (const auto valid = farm::validate(place); !valid) return misused(valid.error(), "--corner", style);
    return place;
}

/// As typed, or as it was recorded; none where neither was done.
tl::expected<std::optional<farm::SiloPlace>, Failure> placeOf(const View& view, const TrackOptions& given) {
    if (given.corner.has_value() != given.bearing.has_value())
        return misusedLine("--corner and --bearing: give both or neither");
    if (given.corner) {
        const auto place = placeFrom(*given.corner, *given.bearing, view.answer.style);
        if (!place) return tl::unexpected{place.error()};
        return *place;
    }
    const auto& places = view.season.farm().places;
    const auto known = places.find(view.silo.id);
    return known == places.end() ? std::nullopt : std::optional{known->second};
}

tl::expected<entries::TrackAttached, Failure> lookAt(const season::FarmBook& farm, const std::string& file,
                                                     const std::string& name, const words::Style& style) {
    const auto tractor = thingCalled(farm.tractors, name, "--tractor");
    if (!tractor) return tl::unexpected{tractor.error()};
    auto track = passes::lookAtTrack(file, (*tractor)->first);
    if (!track) return failed(track.error(), style);
    return *std::move(track);
}

/// Those that are typed, or else those that are attached.
tl::expected<std::vector<entries::TrackAttached>, Failure> chosenTracks(const View& view,
                                                                        const TrackOptions& given) {
    if (given.tracks.size() != given.tractors.size()) {
        return misusedLine("--tractor: give one for each --track, in the same order");
    }
    std::vector<entries::TrackAttached> chosen;
    for (std::size_t i = 0; i < given.tracks.size(); ++i) {
        auto track = lookAt(view.season.farm(), given.tracks[i], given.tractors[i], view.answer.style);
        if (!track) return tl::unexpected{track.error()};
        chosen.push_back(*std::move(track));
    }
    if (!chosen.empty()) return chosen;
    for (auto& attached : passes::attachedTracks(view.season, view.at))
        chosen.push_back(std::move(attached.what));
    if (!chosen.empty()) return chosen;
    return tl::unexpected{Failure{Status::failed,
                                  "No track is attached: attach one with `attach`, or give --track and "
                                  "--tractor"}};
}

void writeTrack(JsonWriter& json, const ReadTrack& track) {
    json.beginObject().member("file", passes::pathOf(track.track).string()).member("tractor", track.tractor);
    json.member("begin", toIso8601(track.track.begin)).member("end", toIso8601(track.track.end));
    json.member("format", enumText(track.read.format)).member("fixes", track.counts.fixes);
    json.key("by_quality").beginObject();
    for (std::size_t i = 0; i < track.counts.byQuality.size(); ++i) {
        json.member(enumText(static_cast<formats::FixQuality>(i)), track.counts.byQuality[i]);
    }
    json.endObject();
    json.member("segments", track.counts.segments)
        .member("not_later", track.counts.notLater)
        .member("jumps", track.counts.jumps)
        .member("far_away", track.counts.farAway)
        .member("outside_silo", track.counts.outside)
        .member("before_first_layer", track.counts.beforeFirstLayer)
        .member("without_checksum", track.counts.unchecked)
        .member("after_the_moment", track.later);
    json.key("faults").beginObject();
    for (std::size_t i = 0; i < track.read.faults.count.size(); ++i) {
        if (track.read.faults.count[i] == 0) continue;
        json.key(enumText(static_cast<formats::TrackFault>(i))).beginObject();
        json.member("count", track.read.faults.count[i]);
        json.member("first_line", track.read.faults.firstLine[i]).endObject();
    }
    json.endObject().endObject();
}

void writeCoverage(JsonWriter& json, std::string_view name, const passes::Coverage& coverage) {
    json.key(name).beginObject().member("passes", coverage.meanPasses);
    json.member("unrolled_share", coverage.unrolled.fraction());
    json.member("three_passes_share", coverage.threeOrMore.fraction()).endObject();
}

void writeTracks(const Tracked& tracked, const Answer& answer) {
    JsonWriter json{2};
    json.beginObject().member("silo", tracked.view.silo.name).key("tracks").beginArray();
    for (const ReadTrack& track : tracked.tracks) writeTrack(json, track);
    json.endArray().key("layers").beginArray();
    for (const DrivenLayer& layer : tracked.layers) {
        json.beginObject().member("number", layer.number).member("precise_share", layer.precise.fraction());
        json.member("distance_m", layer.distance.metres());
        writeAmount(json, "time", durationAmount(layer.time));
        if (layer.precise.fraction() > 0.0) writeCoverage(json, "counted", layer.counted);
        writeCoverage(json, "at_least", layer.least);
        writeCoverage(json, "at_most", layer.most);
        json.endObject();
    }
    json.endArray().member("least_passes", packing::kLeastPasses).key("findings").beginArray();
    for (const practice::Finding& finding : tracked.findings) {
        json.beginObject().member("code", toText(finding.message.code));
        json.member("text", words::inWords(finding.message, answer.style));
        if (finding.place) writePlace(json, *finding.place);
        json.endObject();
    }
    json.endArray().endObject();
    answer.out << json.text() << '\n';
}

/// Every column of every layer: where, and how often a tyre was on it.
std::string mapOf(const DrivenGrid& grid) {
    formats::CsvWriter csv;
    for (const char* name : {"layer", "along_m", "across_m", "passes", "at_least", "at_most"}) csv.word(name);
    csv.endRow();
    const passes::PadShape& shape = grid.shape();
    for (std::size_t k = 0; k < grid.layers(); ++k) {
        const DrivenLayer layer = grid.layer(k);
        if (layer.time.count() == 0.0) continue;
        const auto fixed = grid.passes(k), least = grid.passes(k, passes::Counted::least),
                   most = grid.passes(k, passes::Counted::most);
        for (std::size_t i = 0; i < fixed.size(); ++i) {
            const std::size_t column = i % shape.along(), row = i / shape.along();
            if (!grid.holds(k, column)) continue;
            csv.number(std::int64_t{layer.number})
                .word(fixedText((static_cast<double>(column) + 0.5) * shape.cellAlong.si(), 2))
                .word(fixedText((static_cast<double>(row) + 0.5) * shape.cellAcross.si(), 3));
            // Positions too coarse for wheels tell what is possible and nothing else.
            if (layer.precise.fraction() > 0.0) {
                csv.number(std::int64_t{fixed[i]});
            } else {
                csv.empty();
            }
            csv.number(std::int64_t{least[i]}).number(std::int64_t{most[i]}).endRow();
        }
    }
    return csv.content();
}

Table tableOf(const Tracked& tracked) {
    Table table;
    table.columns = {{"layer", "Layer"},
                     {"time", "Driven", Dimension::duration},
                     {"precise", "Precise", Dimension::share},
                     {"passes", "Passes"},
                     {"passes_at_least", "at least"},
                     {"passes_at_most", "at most"},
                     {"unrolled", "No tyre", Dimension::share},
                     {"three_passes", "Three or more", Dimension::share},
                     {"three_passes_at_least", "at least", Dimension::share}};
    for (const DrivenLayer& layer : tracked.layers) {
        std::vector<Cell> row{layer.number, durationAmount(layer.time), layer.precise.amount()};
        const bool precise = layer.precise.fraction() > 0.0;
        row.push_back(precise ? Cell{layer.counted.meanPasses} : Cell{});
        row.emplace_back(layer.least.meanPasses);
        row.emplace_back(layer.most.meanPasses);
        row.push_back(precise ? Cell{layer.counted.unrolled.amount()} : Cell{});
        row.push_back(precise ? Cell{layer.counted.threeOrMore.amount()} : Cell{});
        row.emplace_back(layer.least.threeOrMore.amount());
        table.rows.push_back(std::move(row));
    }
    return table;
}

void printTracks(const Tracked& tracked, const Answer& answer) {
    for (const ReadTrack& track : tracked.tracks) {
        answer.out << passes::pathOf(track.track).string() << " (" << track.tractor
                   << "): " << track.counts.fixes << " fixes in " << track.counts.segments
                   << (track.counts.segments == 1 ? " stretch" : " stretches");
        if (track.later > 0) answer.out << ", " << track.later << " later ones not looked at";
        const std::int64_t left =
            track.read.faults.total() + track.counts.notLater + track.counts.jumps + track.counts.farAway;
        if (left > 0) answer.out << ", " << left << " left out: see --json for why and where";
        answer.out << '\n';
    }
    if (tracked.layers.empty()) {
        answer.out << "No track lies on a layer of this silo: check --corner, --bearing and the times.\n";
        return;
    }
    answer.out << "At least three passes over each layer are advised; \"at least\" is what the positions' "
                  "errors leave certain.\n";
    printTable(answer.out, tableOf(tracked), answer.style);
    if (!tracked.findings.empty()) answer.out << "\nWhat went wrong\n";
    for (const practice::Finding& finding : tracked.findings)
        answer.out << "- " << words::inWords(finding.message, answer.style) << '\n';
}

}  // namespace

Outcome tracks(const SeasonOptions& options, const TrackOptions& given, const Answer& answer) {
    const auto view = viewOf(options, answer);
    if (!view) return tl::unexpected{view.error()};
    const words::Style& style = view->answer.style;
    const auto place = placeOf(*view, given);
    if (!place) return tl::unexpected{place.error()};
    const auto chosen = chosenTracks(*view, given);
    if (!chosen) return tl::unexpected{chosen.error()};
    const density::Readings readings = density::readingsAt(view->season, view->silo.id, view->at);
    if (!readings.layers) {
        return tl::unexpected{
            Failure{Status::failed, view->silo.name + ": " + words::inWords(*readings.silo.reason, style)}};
    }
    auto grid = passes::gridOf(*readings.layers, *place);
    if (!grid) return failed(grid.error(), style);
    Tracked tracked{*view, {}, {}};
    for (std::size_t i = 0; i < chosen->size(); ++i) {
        auto laid = passes::layTrack(*grid, view->season.farm(), (*chosen)[i], static_cast<std::uint32_t>(i),
                                     view->at);
        if (!laid) return failed(laid.error(), style);
        tracked.tracks.push_back(*std::move(laid));
    }
    for (std::size_t k = 0; k < grid->layers(); ++k) {
        if (const DrivenLayer layer = grid->layer(k); layer.time.count() > 0.0)
            tracked.layers.push_back(layer);
    }
    tracked.findings = practice::trackFindings(*grid);
    if (given.map) {
        if (const Outcome written = deliver(mapOf(*grid), given.map, view->answer); !written) return written;
    }
    if (answer.json) {
        writeTracks(tracked, view->answer);
    } else if (options.csv) {
        answer.out << csvOf(tableOf(tracked));
    } else {
        printTracks(tracked, view->answer);
    }
    return {};
}

Outcome attachTrack(const SeasonOptions& options, const TrackOptions& given, const Answer& answer) {
    auto session = openSeason(options.file, Purpose::writing, answer);
    if (!session) return tl::unexpected{session.error()};
    const auto author = authorIn(*session, options.file, given.author, answer.style);
    if (!author) return tl::unexpected{author.error()};
    const auto season = session->snapshot();
    auto track = lookAt(season->farm(), given.tracks.front(), given.tractors.front(), answer.style);
    if (!track) return tl::unexpected{track.error()};
    const auto attaching = passes::attachingOf(*season, *std::move(track));
    if (!attaching) return failed(attaching.error(), answer.style);
    const auto recorded =
        session->propose(attaching->track, attaching->track.begin, *author, attaching->target);
    if (!recorded) return failed(recorded.error(), answer.style);
    words::Style style = answer.style;
    style.zone = season->zone();
    const std::string text = words::inWords(attaching->track, namesOf(season->farm(), PeopleNames{}), style);
    if (answer.json) {
        JsonWriter json{2};
        json.beginObject().member("entry", recorded->id.value.text()).member("kind", recorded->kind);
        json.member("happened", toIso8601(recorded->happened)).member("text", text);
        json.member("corrects", attaching->target.has_value()).endObject();
        answer.out << json.text() << '\n';
    } else {
        answer.out << text << '\n' << recorded->id.value.text() << '\n';
    }
    return {};
}

}  // namespace treadwell::cli
