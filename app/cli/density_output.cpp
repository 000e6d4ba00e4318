#include "app/cli/density_output.h"

#include "core/packing/passes.h"

#include <algorithm>
#include <ostream>

namespace treadwell::cli {

namespace {

using words::inWords;

/// {median, low80, high80} of a distribution, each through `number`.
template <class D, class Number>
void writeBand(JsonWriter& json, std::string_view name, const D& distribution, Number number) {
    json.key(name)
        .beginObject()
        .member("median", number(distribution.median()))
        .member("low80", number(distribution.low80()))
        .member("high80", number(distribution.high80()))
        .endObject();
}

void writeWorking(JsonWriter& json, const density::Estimate& estimate, const words::Style& style) {
    json.key("working").beginArray();
    for (const density::WorkingStep& step : estimate.working) {
        json.beginObject()
            .member("code", toText(step.what.code))
            .member("text", inWords(step.what, style))
            .member("formula", step.formula)
            .member("source", step.source.citation)
            .member("evidence", enumText(step.source.evidence))
            .key("entries")
            .beginArray();
        for (const entries::EntryId& entry : step.entries) json.value(entry.value.text());
        json.endArray().endObject();
    }
    json.endArray();
}

void writeYardsticks(JsonWriter& json, const density::Yardsticks& yardsticks) {
    json.key("yardsticks").beginObject().member("packing_mass_kg", yardsticks.massPacking.kilograms());
    json.key("mass_rules").beginArray();
    for (const density::MassYardstick& mass : yardsticks.massRules) {
        json.beginObject()
            .member("rule", enumText(mass.rule))
            .member("asked_kg", mass.asked.kilograms())
            .member("verdict", enumText(mass.verdict))
            .endObject();
    }
    json.endArray();
    json.key("regressions").beginArray();
    for (const density::RegressionYardstick& each : yardsticks.regressions) {
        const density::Regression& regression = *each.regression;
        json.beginObject()
            .member("name", regression.name)
            .member("value_kg_dm_m3", each.value.kilogramsPerCubicMetre())
            .member("in_range", each.inRange);
        json.key("residual_log_sd");
        if (regression.residualLogSd) {
            json.value(*regression.residualLogSd);
        } else {
            json.null();
        }
        json.member("source", regression.source.citation)
            .member("evidence", enumText(regression.source.evidence))
            .endObject();
    }
    json.endArray()
        .member("passes", yardsticks.passes)
        .member("passes_verdict", enumText(yardsticks.passesVerdict))
        .member("saturation_verdict", enumText(yardsticks.saturationVerdict))
        .member("target_verdict", enumText(yardsticks.targetVerdict))
        .endObject();
}

void printYardsticks(const density::Yardsticks& yardsticks, const Answer& answer) {
    const words::Style& style = answer.style;
    answer.out << "\nThe trade's yardsticks\n";
    for (const density::MassYardstick& mass : yardsticks.massRules) {
        answer.out << "  Packing mass " << inWords(yardsticks.massPacking.amount(), style) << "; "
                   << enumText(mass.rule) << " asks for " << inWords(mass.asked.amount(), style) << ": "
                   << enumText(mass.verdict) << '\n';
    }
    for (const density::RegressionYardstick& each : yardsticks.regressions) {
        answer.out << "  Regression " << each.regression->name << ' ' << inWords(each.value.amount(), style)
                   << (each.inRange ? "" : ", outside the dry matter of its data") << "; "
                   << each.regression->source.citation << '\n';
    }
    answer.out << "  Passes " << inWords(yardsticks.passes, style) << "; at least "
               << inWords(packing::kLeastPasses, style)
               << " asked for: " << enumText(yardsticks.passesVerdict)
               << "\n  Full pores: " << enumText(yardsticks.saturationVerdict)
               << "\n  Target: " << enumText(yardsticks.targetVerdict) << '\n';
}

/// The first of them; `--json` has all.
void printEntries(const std::vector<entries::EntryId>& entries, const Answer& answer) {
    constexpr std::size_t kPrinted = 3;
    if (entries.empty()) return;
    answer.out << "      from";
    for (std::size_t i = 0; i < std::min(entries.size(), kPrinted); ++i)
        answer.out << (i == 0 ? " " : ", ") << entries[i].value.text();
    if (entries.size() > kPrinted) answer.out << " and " << entries.size() - kPrinted << " more entries";
    answer.out << '\n';
}

void printWorking(const density::Estimate& estimate, const Answer& answer) {
    answer.out << "\nThe working\n";
    for (const density::WorkingStep& step : estimate.working) {
        answer.out << "  " << inWords(step.what, answer.style) << "\n      " << step.formula;
        if (!step.source.citation.empty()) answer.out << "; " << step.source.citation;
        answer.out << " [" << enumText(step.source.evidence) << "]\n";
        printEntries(step.entries, answer);
    }
}

}  // namespace

void writeDensity(JsonWriter& json, const std::string& name, const density::Distribution& density) {
    writeBand(json, name + "_kg_dm_m3", density, [](DryDensity d) { return d.kilogramsPerCubicMetre(); });
}

void addBand(std::vector<Cell>& row, const density::Distribution* density) {
    if (density == nullptr) {
        row.resize(row.size() + 3);
        return;
    }
    row.emplace_back(density->median().amount());
    row.emplace_back(density->low80().amount());
    row.emplace_back(density->high80().amount());
}

void writeEstimate(JsonWriter& json, const density::Estimate& estimate, bool working,
                   const words::Style& style) {
    writeDensity(json, "density", estimate.density);
    json.member("packing_factor_us", estimate.packing.factor.us())
        .member("packing_minutes_per_t", estimate.packing.allTime.minutesPerTonne());
    writeBand(json, "porosity", estimate.porosity, [](Porosity p) { return p.fraction(); });
    json.member("target_kg_dm_m3", estimate.target.density.kilogramsPerCubicMetre())
        .member("chance_of_target", estimate.chance.fraction())
        .member("tractors_counted", static_cast<std::int64_t>(estimate.packing.counted.size()));
    writeMessages(json, "warnings", estimate.warnings, style);
    writeYardsticks(json, estimate.yardsticks);
    if (working) writeWorking(json, estimate, style);
}

void writeDoubts(JsonWriter& json, const density::Doubts& doubts, const words::Style& style) {
    json.key("doubts").beginArray();
    for (const density::Doubt& doubt : doubts.parts) {
        json.beginObject()
            .member("of", enumText(doubt.of))
            .member("share", doubt.share)
            .member("code", toText(doubt.what.code))
            .member("text", inWords(doubt.what, style))
            .endObject();
    }
    json.endArray().key("to_measure").beginArray();
    for (const density::Narrowing& narrowing : doubts.next) {
        json.beginObject()
            .member("measurement", enumText(narrowing.measurement))
            .member("log_sd_after", narrowing.sigmaAfter)
            .member("code", toText(narrowing.what.code))
            .member("text", inWords(narrowing.what, style))
            .endObject();
    }
    json.endArray();
}

void printDoubts(const density::Doubts& doubts, bool working, const Answer& answer) {
    const std::size_t shown = working ? doubts.parts.size() : std::min<std::size_t>(1, doubts.parts.size());
    for (std::size_t i = 0; i < shown; ++i) {
        printLine(answer.out, "Doubt", inWords(doubts.parts[i].what, answer.style));
    }
    for (const density::Narrowing& narrowing : doubts.next) {
        printLine(answer.out, "To measure", inWords(narrowing.what, answer.style));
    }
}

void writeReading(JsonWriter& json, std::string_view name, const density::SiloReading& reading,
                  const density::Doubts& doubts, bool working, const words::Style& style) {
    json.key(name).beginObject();
    if (reading.estimate) {
        writeEstimate(json, *reading.estimate, working, style);
        writeDoubts(json, doubts, style);
        json.member("effective_layers", reading.options.effectiveLayers);
        if (reading.asItLies) {
            json.key("as_it_lies").beginObject();
            writeEstimate(json, *reading.asItLies, working, style);
            json.endObject();
        }
    } else {
        json.key("reason");
        writeMessage(json, *reading.reason, style);
    }
    json.endObject();
}

void printReading(const density::SiloReading& reading, const density::Doubts& doubts, bool working,
                  const Answer& answer) {
    if (!reading.estimate) {
        return printLine(answer.out, "No estimate", inWords(*reading.reason, answer.style));
    }
    if (reading.asItLies) {
        printLine(answer.out, "As it lies now", bandInWords(reading.asItLies->density, answer.style));
    }
    printEstimate(*reading.estimate, reading.situation.machines.size(), working, answer);
    printDoubts(doubts, working, answer);
}

void printEstimate(const density::Estimate& estimate, std::size_t tractors, bool working,
                   const Answer& answer) {
    const words::Style& style = answer.style;
    const density::Packing& packing = estimate.packing;
    printLine(answer.out, "Density", bandInWords(estimate.density, style));
    printLine(answer.out, "Porosity", bandInWords(estimate.porosity, style));
    printLine(answer.out, "Target",
              inWords(estimate.target.density.amount(), style) + ", set by " +
                  std::string{enumText(estimate.target.governs)} + "; chance of reaching it " +
                  inWords(estimate.chance.amount(), style));
    printLine(answer.out, "Packing",
              inWords(packing.allTime.amount(), style) + ", packing factor (US) " +
                  inWords(packing.factor.us(), style) + "; " + std::to_string(packing.counted.size()) +
                  " of " + std::to_string(tractors) +
                  (tractors == 1 ? " tractor counts" : " tractors count"));
    for (const Message& warning : estimate.warnings)
        printLine(answer.out, "Caution", inWords(warning, style));
    if (!working) return;
    printWorking(estimate, answer);
    printYardsticks(estimate.yardsticks, answer);
}

}  // namespace treadwell::cli
