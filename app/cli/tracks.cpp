#include "app/cli/names.h"
#include "app/cli/option_reader.h"
#include "app/cli/passes.h"
#include "app/cli/practice.h"
#include "app/cli/season_copies.h"
#include "app/cli/season_view.h"
#include "app/cli/table.h"
#include "core/base/number_text.h"
#include "core/density/readings.h"
#include "core/formats/csv_writer.h"
#include "core/packing/passes.h"
#include "core/passes/driven.h"
#include "core/passes/track_file.h"
#include "core/practice/track_findings.h"

#include <fstream>
#include <ostream>

namespace treadwell::cli {

namespace {

using passes::DrivenGrid;
using passes::DrivenLayer;

struct ReadTrack {
    std::string file;
    std::string tractor;
    passes::TrackFile read;
    passes::TrackCounts counts;
};

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

tl::expected<passes::SiloPlace, Failure> placeFrom(const TrackOptions& given) {
    const std::size_t comma = given.corner.find(',');
    const auto latitude = degrees(std::string_view{given.corner}.substr(0, comma));
    const auto longitude =
        comma == std::string::npos ? std::nullopt : degrees(std::string_view{given.corner}.substr(comma + 1));
    if (!latitude || !longitude) {
        return tl::unexpected{Failure{Status::misused, "--corner: \"" + given.corner +
                                                           "\" is no place: write it like 43.5202,-89.5092"}};
    }
    const auto bearing = degrees(given.bearing);
    if (!bearing) {
        return tl::unexpected{Failure{Status::misused, "--bearing: \"" + given.bearing +
                                                           "\" is no direction: write degrees from north"}};
    }
    return passes::SiloPlace{*latitude, *longitude, *bearing, {}};
}

/// When each layer was begun, and where along the silo it lies: lifts everywhere, those of a ramp between
/// their fronts.
std::vector<passes::LayerWindow> windowsOf(const density::SiloLayers& silo) {
    std::vector<passes::LayerWindow> windows;
    const bool lifts = silo.silo.filling == farm::FillingWay::lifts;
    for (std::size_t k = 0; k < silo.layers.size(); ++k) {
        const packing::Layer& layer = *silo.layers[k].layer;
        const density::StackedLayer& stacked = silo.asItLies.layers[k];
        const double ramp_m = silo.silo.rampSlope.runPerRise() * silo.asItLies.top.si();
        windows.push_back({layer.number, layer.begin, lifts ? 0.0 : stacked.lower.si() - ramp_m,
                           lifts ? silo.silo.length.si() : stacked.upper.si()});
    }
    return windows;
}

Outcome readInto(DrivenGrid& grid, Tracked& tracked, const TrackOptions& given) {
    for (std::size_t i = 0; i < given.tracks.size(); ++i) {
        const auto tractor = thingCalled(tracked.view.season.farm().tractors, given.tractors[i], "--tractor");
        if (!tractor) return tl::unexpected{tractor.error()};
        std::ifstream in{given.tracks[i], std::ios::binary};
        if (!in) {
            return tl::unexpected{
                Failure{Status::failed, given.tracks[i] + ": cannot be read: check the name and the rights"}};
        }
        const farm::Tractor& machine = (*tractor)->second;
        grid.begin({machine.mass, machine.trackWidth, machine.speed}, static_cast<std::uint32_t>(i));
        const auto read = passes::readTrack(in, [&](const formats::Fix& fix) { grid.take(fix); });
        if (!read) {
            Error error = read.error();
            error.place.file = given.tracks[i];
            return failed(error, tracked.view.answer.style);
        }
        tracked.tracks.push_back({given.tracks[i], machine.name, *read, grid.counts()});
    }
    return {};
}

void writeTrack(JsonWriter& json, const ReadTrack& track) {
    json.beginObject().member("file", track.file).member("tractor", track.tractor);
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
        .member("without_checksum", track.counts.unchecked);
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
        answer.out << track.file << " (" << track.tractor << "): " << track.counts.fixes << " fixes in "
                   << track.counts.segments << " stretches";
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
    if (given.tracks.size() != given.tractors.size()) {
        return tl::unexpected{
            Failure{Status::misused, "--tractor: give one for each --track, in the same order"}};
    }
    const auto place = placeFrom(given);
    if (!place) return tl::unexpected{place.error()};
    const auto view = viewOf(options, answer);
    if (!view) return tl::unexpected{view.error()};
    const density::Readings readings = density::readingsAt(view->season, view->silo.id, view->at);
    if (!readings.layers) {
        return tl::unexpected{
            Failure{Status::failed,
                    view->silo.name + ": " + words::inWords(*readings.silo.reason, view->answer.style)}};
    }
    auto grid = DrivenGrid::make({view->silo.length, view->silo.width}, *place, windowsOf(*readings.layers));
    if (!grid) return misused(grid.error(), "--corner", view->answer.style);
    Tracked tracked{*view, {}, {}};
    if (const Outcome read = readInto(*grid, tracked, given); !read) return read;
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

}  // namespace treadwell::cli
