#include "core/passes/replay.h"

#include "app/cli/density_output.h"
#include "app/cli/option_reader.h"
#include "app/cli/passes.h"
#include "app/cli/season_view.h"
#include "core/base/number_text.h"

#include <ostream>
#include <thread>

namespace treadwell::cli {

namespace {

/// What the verb lists.
struct Replayed {
    const View& view;
    const density::Readings& readings;
    density::Filled filled;
    passes::Replay replay;

    [[nodiscard]] density::SiloReading regression(std::size_t layer) const {
        return density::readingOf(view.season, *readings.layers, {layer, 1}, density::Reading::layer);
    }
};

void writeCoverage(JsonWriter& json, const passes::Coverage& coverage) {
    json.member("passes", coverage.meanPasses)
        .member("unrolled_share", coverage.unrolled.fraction())
        .member("three_passes_share", coverage.threeOrMore.fraction())
        .member("density_variation", coverage.variation);
}

void writeRegression(JsonWriter& json, const std::optional<density::Estimate>& estimate) {
    if (estimate) writeDensity(json, "regression", estimate->density);
}

void writeReplay(const Replayed& replayed, const Answer& answer) {
    JsonWriter json{2};
    json.beginObject().member("silo", replayed.view.silo.name).member("at", toIso8601(replayed.view.at));
    json.member("filled", enumText(replayed.filled));
    if (replayed.replay.silo) writeDensity(json, "simulation", *replayed.replay.silo);
    writeRegression(json, replayed.readings.silo.of(replayed.filled));
    json.key("layers").beginArray();
    for (std::size_t k = 0; k < replayed.replay.layers.size(); ++k) {
        const passes::ReplayedLayer& layer = replayed.replay.layers[k];
        json.beginObject().member("number", layer.layer->number);
        writeAmount(json, "packed", durationAmount(layer.packed));
        writeCoverage(json, layer.coverage);
        writeAmount(json, "rolled_density", layer.rolled.amount());
        writeDensity(json, "simulation", layer.density);
        writeRegression(json, replayed.regression(k).of(replayed.filled));
        json.endObject();
    }
    json.endArray().endObject();
    answer.out << json.text() << '\n';
}

Table tableOf(const Replayed& replayed) {
    Table table;
    table.columns = {{"layer", "Layer"},
                     {"packed", "Packed", Dimension::duration},
                     {"passes", "Passes"},
                     {"unrolled", "No tyre", Dimension::share},
                     {"three_passes", "Three or more", Dimension::share},
                     {"simulation", "Simulation", Dimension::dryDensity},
                     {"simulation_low80", "80 % from", Dimension::dryDensity},
                     {"simulation_high80", "to", Dimension::dryDensity},
                     {"regression", "Regression", Dimension::dryDensity},
                     {"regression_low80", "80 % from", Dimension::dryDensity},
                     {"regression_high80", "to", Dimension::dryDensity}};
    for (std::size_t k = 0; k < replayed.replay.layers.size(); ++k) {
        const passes::ReplayedLayer& layer = replayed.replay.layers[k];
        std::vector<Cell> row{layer.layer->number, durationAmount(layer.packed), layer.coverage.meanPasses,
                              layer.coverage.unrolled.amount(), layer.coverage.threeOrMore.amount()};
        addBand(row, &layer.density);
        const auto reading = replayed.regression(k);
        const auto& estimate = reading.of(replayed.filled);
        addBand(row, estimate ? &estimate->density : nullptr);
        table.rows.push_back(std::move(row));
    }
    return table;
}

void printReplay(const Replayed& replayed, const Answer& answer) {
    answer.out << replayed.view.silo.name << ", " << words::inWords(replayed.view.at, answer.style) << '\n';
    if (!replayed.replay.silo) {
        answer.out << "No crop was tipped here by then.\n";
        return;
    }
    printLine(answer.out, "Simulation", bandInWords(*replayed.replay.silo, answer.style));
    if (const auto& estimate = replayed.readings.silo.of(replayed.filled)) {
        printLine(answer.out, "Regression", bandInWords(estimate->density, answer.style));
    }
    answer.out << "The simulation was fitted to the regression: a second opinion on how the passes were "
                  "spread, no second measurement.\n";
    printTable(answer.out, tableOf(replayed), answer.style);
}

}  // namespace

Outcome replay(const SeasonOptions& options, const ReplayOptions& how, const Answer& answer) {
    OptionReader reader{answer.style};
    passes::ReplayOptions chosen;
    chosen.pattern = reader.readName<passes::Pattern>(how.pattern, "--pattern");
    const auto seed = integerFromText(how.seed);
    if (!seed || *seed < 0) reader.fail("--seed: \"" + how.seed + "\" is no whole number of 0 or more");
    if (reader.failure()) return tl::unexpected{*reader.failure()};
    chosen.seed = static_cast<std::uint64_t>(*seed);
    chosen.threads = std::max(1U, std::thread::hardware_concurrency());
    const auto view = viewOf(options, answer);
    if (!view) return tl::unexpected{view.error()};
    const density::Readings readings = density::readingsAt(view->season, view->silo.id, view->at);
    if (!readings.layers) {
        return tl::unexpected{
            Failure{Status::failed,
                    view->silo.name + ": " + words::inWords(*readings.silo.reason, view->answer.style)}};
    }
    const density::Filled filled = options.asItLies ? density::Filled::asItLies : density::Filled::whenFull;
    auto result = passes::replay(view->season, *readings.layers, filled, chosen);
    if (!result) return failed(result.error(), view->answer.style);
    const Replayed replayed{*view, readings, filled, *std::move(result)};
    if (answer.json) {
        writeReplay(replayed, view->answer);
    } else if (options.csv) {
        answer.out << csvOf(tableOf(replayed));
    } else {
        printReplay(replayed, view->answer);
    }
    return {};
}

}  // namespace treadwell::cli
