#include "app/cli/calibration.h"

#include "app/cli/names.h"
#include "app/cli/table.h"
#include "core/density/calibration_check.h"
#include "core/density/calibration_gain.h"
#include "core/density/season_evidence.h"

#include <cmath>
#include <ostream>

namespace treadwell::cli {

namespace {

using density::BandGain;
using density::DensityEvidence;
using words::inWords;

/// What the verb tells.
struct CalibrationTold {
    const season::FarmBook& farm;
    density::SeasonEvidence evidence;
    density::Calibration calibration;
    density::CalibrationCheck check;
};

/// One line of evidence, whatever it came from.
struct Line {
    farm::SiloId silo;
    entries::EntryId entry;
    Instant at;
    std::string kind;
    std::optional<DensityEvidence> evidence;
    std::optional<Message> reason = {};
    const entries::EarlierSeason* carriedFrom = nullptr;
};

std::vector<Line> linesOf(const density::SeasonEvidence& evidence) {
    std::vector<Line> lines;
    for (const density::CoreEvidence& each : evidence.cores) {
        lines.push_back({each.core.what.silo, each.core.entry, each.core.at,
                         std::string{enumText(each.core.what.origin)}, each.evidence, each.reason});
    }
    for (const density::SurveyEvidence& each : evidence.surveys)
        lines.push_back({each.silo, each.survey, each.at, "survey", each.evidence, each.reason});
    for (const density::CarriedEvidence& each : evidence.carried) {
        lines.push_back({each.evidence.silo,
                         each.entry,
                         each.at,
                         std::string{enumText(each.evidence.kind)},
                         each.evidence,
                         {},
                         &each.from});
    }
    return lines;
}

/// The day on which an earlier season began, where that is known; nothing of the season at hand.
std::string begunOn(const entries::EarlierSeason* earlier, const season::FarmBook& farm) {
    return earlier == nullptr || !earlier->begins ? "" : toIso8601(farm.zone.dayOf(*earlier->begins));
}

std::string siloName(const CalibrationTold& told, const density::SiloPosterior& silo) {
    const std::string name = nameIn(told.farm.silos, silo.silo);
    for (const density::CarriedEvidence& each : told.evidence.carried) {
        if (each.evidence.season == silo.season)
            return name + ", season of " + begunOn(&each.from, told.farm);
    }
    return name;
}

void writeEvidence(JsonWriter& json, const CalibrationTold& told, const words::Style& style) {
    json.key("evidence").beginArray();
    for (const Line& line : linesOf(told.evidence)) {
        json.beginObject()
            .member("silo", nameIn(told.farm.silos, line.silo))
            .member("entry", line.entry.value.text())
            .member("at", toIso8601(line.at))
            .member("kind", line.kind);
        if (line.carriedFrom != nullptr) json.member("carried_from", line.carriedFrom->season.value.text());
        if (line.reason) {
            json.key("reason");
            writeMessage(json, *line.reason, style);
        }
        if (line.evidence) {
            writeAmount(json, "measured", line.evidence->measured.amount());
            writeAmount(json, "predicted", line.evidence->predicted.amount());
            json.member("log_ratio", line.evidence->logRatio())
                .member("face", line.evidence->face)
                .member("layer", line.evidence->place)
                .member("inputs_variance", line.evidence->inputs)
                .member("error_variance", line.evidence->error);
        }
        json.endObject();
    }
    json.endArray();
}

void writeNumber(JsonWriter& json, std::string_view name, const stats::Scalar& number) {
    json.key(name)
        .beginObject()
        .member("log_mean", number.mean)
        .member("log_sd", std::sqrt(number.variance))
        .endObject();
}

void writeVariance(JsonWriter& json, std::string_view name, const stats::InverseChiSquare& variance) {
    json.key(name)
        .beginObject()
        .member("log_sd", std::sqrt(variance.scale))
        .member("degrees_of_freedom", variance.degreesOfFreedom)
        .member("log_sd_low80", std::sqrt(variance.quantile(0.1)))
        .member("log_sd_high80", std::sqrt(variance.quantile(0.9)))
        .endObject();
}

void writeGain(JsonWriter& json, const BandGain& gain, const words::Style& style) {
    json.member("cores", gain.cores).member("face_balances", gain.balances).member("surveys", gain.surveys);
    writeAmount(json, "half_band_before", gain.before.amount());
    writeAmount(json, "half_band_after", gain.after.amount());
    json.key("gain");
    writeMessage(json, messageOf(gain), style);
}

void writeSilos(JsonWriter& json, const CalibrationTold& told, const words::Style& style) {
    json.key("silos").beginArray();
    for (std::size_t i = 0; i < told.calibration.silos.size(); ++i) {
        const density::SiloPosterior& silo = told.calibration.silos[i];
        json.beginObject().member("silo", nameIn(told.farm.silos, silo.silo));
        if (!silo.season.empty()) json.member("carried_from", silo.season);
        writeNumber(json, "level", silo.level);
        writeGain(json, gainOf(silo), style);
        if (!told.check.silos.empty()) {
            const density::LeftOut& left = told.check.silos[i];
            json.key("left_out").beginObject().member("seen", left.seen);
            writeNumber(json, "expected", left.expected);
            json.member("inside_80", left.isInside()).endObject();
        }
        json.endObject();
    }
    json.endArray();
}

void writeReml(JsonWriter& json, const stats::RemlFit& fit) {
    if (!fit.isUsable()) return;
    json.key("reml").beginObject().member("mean", fit.mean);
    constexpr std::array kNames{"silo_variance", "face_variance", "layer_variance"};
    for (std::size_t i = 0; i < kNames.size(); ++i) json.member(kNames[i], fit.components[i]);
    json.member("spot_variance", fit.residual).endObject();
}

void writeCalibration(const CalibrationTold& told, Instant at, const Answer& answer) {
    const density::Calibration& calibration = told.calibration;
    JsonWriter json{2};
    json.beginObject().member("at", toIso8601(at));
    writeEvidence(json, told, answer.style);
    if (!calibration.silos.empty()) {
        writeNumber(json, "site", calibration.site);
        writeNumber(json, "survey_method", calibration.surveyMethod);
        writeVariance(json, "silo_to_silo", calibration.siloVariance);
        writeVariance(json, "core_to_core", calibration.placeVariance);
        json.member("converged", calibration.converged).member("steps", calibration.steps);
    }
    writeSilos(json, told, answer.style);
    if (!calibration.silos.empty()) {
        json.key("next_silo").beginObject();
        writeGain(json, gainOfNext(calibration), answer.style);
        json.endObject();
    }
    if (const auto error = told.check.error()) json.member("leave_one_out_log_error", *error);
    writeReml(json, told.check.reml);
    json.endObject();
    answer.out << json.text() << '\n';
}

Table tableOf(const CalibrationTold& told, const words::Style& style) {
    Table table;
    table.columns = {{"silo", "Silo"},
                     {"kind", "Evidence"},
                     {"at", "At"},
                     {"season", "Season of"},
                     {"measured", "Measured", Dimension::dryDensity},
                     {"predicted", "Predicted", Dimension::dryDensity},
                     {"ratio", "Ratio"},
                     {"left_out", "Left out"}};
    for (const Line& line : linesOf(told.evidence)) {
        std::vector<Cell> row{Name{nameIn(told.farm.silos, line.silo)}, line.kind, line.at,
                              begunOn(line.carriedFrom, told.farm)};
        if (line.evidence) {
            row.insert(row.end(), {line.evidence->measured.amount(), line.evidence->predicted.amount(),
                                   std::exp(line.evidence->logRatio()), std::monostate{}});
        } else {
            row.insert(row.end(),
                       {std::monostate{}, std::monostate{}, std::monostate{}, inWords(*line.reason, style)});
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

void printWords(const CalibrationTold& told, const Answer& answer) {
    const density::Calibration& calibration = told.calibration;
    if (calibration.silos.empty()) {
        answer.out
            << "No core and no survey of heights tells of density yet; the survey's residual stands.\n";
        return;
    }
    for (const density::SiloPosterior& silo : calibration.silos) {
        printLine(answer.out, siloName(told, silo),
                  inWords(messageOf(gainOf(silo)), answer.style) + "; level x " +
                      inWords(std::exp(silo.level.mean), answer.style));
    }
    printLine(answer.out, "Next silo",
              inWords(messageOf(gainOfNext(calibration)), answer.style) + "; level x " +
                  inWords(std::exp(calibration.site.mean), answer.style));
    if (const auto error = told.check.error()) {
        printLine(answer.out, "Left out",
                  "foretold from the others, a silo is off by a factor of " +
                      inWords(std::exp(*error), answer.style));
    }
}

}  // namespace

void printCalibration(const season::Season& season, Instant at, ListForm form, const Answer& answer) {
    CalibrationTold told{season.farm(), density::evidenceOf(season, at), {}, {}};
    const std::vector<DensityEvidence> usable = told.evidence.usable();
    // What evidenceOf() settles has been checked.
    told.calibration = density::calibrate(usable).value();
    told.check = density::checkCalibration(usable).value();
    if (form == ListForm::json) return writeCalibration(told, at, answer);
    const Table table = tableOf(told, answer.style);
    if (form == ListForm::csv) {
        answer.out << csvOf(table);
        return;
    }
    printWords(told, answer);
    if (table.rows.empty()) return;
    answer.out << '\n';
    printTable(answer.out, table, answer.style);
}

}  // namespace treadwell::cli
