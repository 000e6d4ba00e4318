// Whole seasons: one looked back upon, or many in one table.
#include "app/cli/review.h"

#include "app/cli/day.h"
#include "app/cli/open_season.h"
#include "app/cli/table.h"
#include "core/density/readings.h"
#include "core/review/season_review.h"

#include <atomic>
#include <ostream>
#include <sstream>
#include <thread>

namespace treadwell::cli {

namespace {

/// What became of one file.
struct Done {
    std::vector<std::vector<Cell>> rows;
    std::string notes;
    std::optional<std::string> stopped;  ///< why nothing came of it
};

const std::vector<Column>& columns() {
    static const std::vector<Column> kColumns{{"file", "File"},
                                              {"farm", "Farm"},
                                              {"silo", "Silo"},
                                              {"loads", "Loads"},
                                              {"mass", "As fed", Dimension::asFedMass},
                                              {"dry_mass", "Dry", Dimension::dryMass},
                                              {"density", "Density", Dimension::dryDensity},
                                              {"density_low80", "80 % from", Dimension::dryDensity},
                                              {"density_high80", "80 % to", Dimension::dryDensity},
                                              {"target", "Target", Dimension::dryDensity},
                                              {"chance", "Chance", Dimension::chance}};
    return kColumns;
}

std::vector<Cell> rowOf(const std::string& file, const season::Season& season, const std::string& silo,
                        const density::Readings& readings) {
    const season::Delivered& in = readings.rolling.siloIn;
    std::vector<Cell> row{Name{file}, Name{season.farm().farm}, Name{silo},
                          in.loads,   in.mass.amount(),         in.dry.amount()};
    if (readings.silo.estimate) {
        const density::Estimate& estimate = *readings.silo.estimate;
        for (const Amount amount : {estimate.density.median().amount(), estimate.density.low80().amount(),
                                    estimate.density.high80().amount(), estimate.target.density.amount(),
                                    estimate.chance.amount()}) {
            row.emplace_back(amount);
        }
    }
    row.resize(columns().size());
    return row;
}

Done resultOf(const std::string& file, Instant at, const words::Style& style) {
    Done done;
    std::ostringstream out, notes;
    const Answer quiet{.out = out, .notes = notes, .style = style};
    const auto season = readSeason(file, quiet);
    done.notes = notes.str();
    if (!season) {
        done.stopped = season.error().line;
        return done;
    }
    for (const auto& [id, silo] : season->farm().silos) {
        const density::Readings readings = density::readingsAt(*season, id, at);
        if (readings.rolling.siloIn.loads > 0) done.rows.push_back(rowOf(file, *season, silo.name, readings));
    }
    if (done.rows.empty()) done.stopped = "no load has come into any silo by then";
    return done;
}

/// As many files at once as the machine has processors; the results stand in the files' order.
std::vector<Done> resultsOf(const std::vector<std::string>& files, Instant at, const words::Style& style) {
    std::vector<Done> results(files.size());
    std::atomic<std::size_t> next{0};
    const auto work = [&] {
        for (std::size_t i = next++; i < files.size(); i = next++) {
            try {
                results[i] = resultOf(files[i], at, style);
            } catch (const std::exception& error) {
                results[i].stopped = std::string{error.what()} + ": this should not happen, please report it";
            }
        }
    };
    std::vector<std::jthread> workers;
    const std::size_t most = std::max(1U, std::thread::hardware_concurrency());
    for (std::size_t i = 1; i < std::min(most, files.size()); ++i) workers.emplace_back(work);
    work();
    workers.clear();
    return results;
}

}  // namespace

Outcome review(const SeasonOptions& options, const Answer& answer) {
    const auto at = momentFrom(options.at, answer.style);
    if (!at) return tl::unexpected{at.error()};
    const auto season = readSeason(options.file, answer);
    if (!season) return tl::unexpected{season.error()};
    Answer local = answer;
    local.style.zone = season->zone();
    const DocumentForm form = answer.json   ? DocumentForm::json
                              : options.csv ? DocumentForm::csv
                                            : DocumentForm::text;
    printDocument(review::seasonReview(*season, *at), form, local);
    return {};
}

Outcome batch(const BatchOptions& options, const Answer& answer) {
    const auto at = momentFrom(options.at, answer.style);
    if (!at) return tl::unexpected{at.error()};
    Table table{columns(), {}};
    std::size_t stopped = 0;
    const std::vector<Done> results = resultsOf(options.files, *at, answer.style);
    for (std::size_t i = 0; i < results.size(); ++i) {
        const Done& done = results[i];
        answer.notes << done.notes;
        table.rows.insert(table.rows.end(), done.rows.begin(), done.rows.end());
        if (!done.stopped) continue;
        answer.notes << options.files[i] << ": " << *done.stopped << '\n';
        ++stopped;
    }
    answer.out << csvOf(table);
    if (stopped == 0) return {};
    return tl::unexpected{Failure{Status::failed, std::to_string(stopped) + " of " +
                                                      std::to_string(results.size()) +
                                                      " files stopped: the reasons stand above"}};
}

}  // namespace treadwell::cli
