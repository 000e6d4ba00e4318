#include "app/cli/samples_output.h"

#include "app/cli/chop_output.h"
#include "app/cli/names.h"
#include "core/season/dry_matter.h"

#include <algorithm>
#include <ostream>

namespace treadwell::cli {

namespace {

using words::inWords;

/// The day's dry-matter samples, as far as they are seen.
struct DrySamples {
    std::vector<DryMatter> readings;
    std::vector<samples::TimedDryMatter> timed;
};

DrySamples drySamplesOf(const season::Day& day, Instant until) {
    DrySamples dry;
    for (const season::Sample& sample : day.samples) {
        if (sample.at > until) continue;
        dry.readings.push_back(sample.believed.mean);
        dry.timed.push_back({sample.at, sample.believed.mean});
    }
    return dry;
}

/// The precision that `--json` and the text answer for: a point of dry matter.
constexpr DryMatter kWantedPrecision = DryMatter::fromPercent(1);

ChopView viewOf(const season::ChopOfField& chop) {
    ChopView view{chop.parts, chop.ranges, {}, chop.topLength, {}};
    if (chop.setting && chop.setting->length) view.setting = samples::ChopSetting{*chop.setting->length};
    return view;
}

void writeDry(JsonWriter& json, const season::Season& season, const DrySamples& dry,
              const words::Style& style) {
    json.key("dry_matter").beginObject().member("samples", static_cast<std::int64_t>(dry.readings.size()));
    if (const auto mean = samples::meanOfSamples(dry.readings)) {
        json.member("mean", mean->mean.fraction()).member("sd", mean->sd.fraction());
        if (mean->half95) json.member("half95", mean->half95->fraction());
        if (const auto needed = samples::samplesFor(mean->sd, kWantedPrecision))
            json.member("samples_for_a_point", *needed);
        const farm::SiteRules& rules = season.farm().rules;
        if (const auto warning = samples::goalWarning(mean->mean, rules.dryMatterLow, rules.dryMatterHigh)) {
            json.key("warning");
            writeMessage(json, *warning, style);
        }
    }
    if (const auto drift = samples::driftOf(dry.timed)) {
        json.key("drift").beginObject().member("per_h", drift->pointsPerHour.fraction());
        if (drift->low80) json.member("low80", drift->low80->fraction());
        if (drift->high80) json.member("high80", drift->high80->fraction());
        json.endObject();
    }
    json.endObject();
}

void writeBelief(JsonWriter& json, const samples::Belief& belief) {
    json.member("mean", belief.mean.fraction()).member("half80", belief.half80().fraction());
}

void writeComeIn(JsonWriter& json, const season::Season& season, const season::Day& day, Instant until) {
    const season::ComeIn means = season::comeIn(season, day, until);
    json.key("come_in").beginObject();
    if (means.day) {
        json.key("day").beginObject();
        writeBelief(json, *means.day);
        json.endObject();
    }
    json.key("fields").beginArray();
    for (const auto& [field, mean] : means.fields) {
        json.beginObject().member("field", nameIn(day.farm().fields, field));
        writeBelief(json, mean);
        json.endObject();
    }
    json.endArray().key("silos").beginArray();
    for (const auto& [silo, mean] : means.silos) {
        json.beginObject().member("silo", nameIn(day.farm().silos, silo));
        writeBelief(json, mean);
        json.endObject();
    }
    json.endArray().endObject();
    const samples::MeterBias bias = season::meterBiasOf(day.after);
    json.key("meter").beginObject().member("pairs", bias.pairs).member("bias", bias.bias.fraction());
    json.member("bias_sd", bias.sd.fraction()).member("reading_sd", bias.readingSd.fraction()).endObject();
}

void writeChops(JsonWriter& json, const season::Season& season, const season::Day& day, Instant until,
                const words::Style& style) {
    json.key("chop").beginArray();
    for (const season::ChopOfField& chop : season::chopOf(season, day, until)) {
        json.beginObject().member("field", nameIn(day.farm().fields, chop.field));
        if (chop.setting && chop.setting->length)
            writeAmount(json, "cut", chop.setting->length->chopAmount());
        writeChop(json, viewOf(chop), style);
        json.endObject();
    }
    json.endArray();
    if (const auto trend = samples::chopTrend(season::chopByDay(season, until))) {
        json.key("chop_trend").beginObject().member("days", trend->days);
        json.member("mm_per_day", trend->perDay.millimetres());
        if (trend->low80) json.member("low80", trend->low80->millimetres());
        if (trend->high80) json.member("high80", trend->high80->millimetres());
        json.endObject();
    }
}

void writeKernels(JsonWriter& json, const season::Season& season, const season::Day& day, Instant until,
                  const words::Style& style) {
    const season::KernelsOfDay kernels = season::kernelsOf(season, day, until);
    json.key("kernels").beginObject().key("cups").beginArray();
    for (const samples::CupMean& cups : kernels.cups) {
        json.beginObject().member("material", enumText(cups.material)).member("cups", cups.cups);
        json.member("per_cup", cups.perCup).member("low80", cups.low80).member("high80", cups.high80);
        json.member("processing", enumText(cups.processing)).endObject();
    }
    json.endArray().key("scores").beginArray();
    for (const season::ScoreOfField& score : kernels.scores) {
        json.beginObject().member("at", toIso8601(score.at));
        json.member("field", nameIn(day.farm().fields, score.field));
        json.member("material", enumText(score.score.material)).member("score", score.score.score.fraction());
        json.member("processing", enumText(score.score.processing)).endObject();
    }
    json.endArray();
    writeMessages(json, "advice", kernels.advice, style);
    json.endObject();
}

void writeReach(JsonWriter& json, std::string_view name, const std::optional<samples::ReachDays>& days) {
    if (!days) return;
    json.key(name).beginObject();
    if (days->early) json.member("low80", toIso8601(*days->early));
    if (days->median) json.member("median", toIso8601(*days->median));
    if (days->late) json.member("high80", toIso8601(*days->late));
    json.endObject();
}

void writeField(JsonWriter& json, const std::string& name, const season::FieldOutlook& outlook,
                const words::Style& style) {
    json.beginObject().member("field", name);
    json.member("samples", static_cast<std::int64_t>(outlook.seen.samples.size()));
    if (outlook.seen.planted) json.member("planted", toIso8601(*outlook.seen.planted));
    if (outlook.seen.silked) json.member("silked", toIso8601(*outlook.seen.silked));
    if (outlook.seen.hybrid) json.member("hybrid", *outlook.seen.hybrid);
    if (outlook.seen.milkLine) json.member("milk_line", outlook.seen.milkLine->fraction());
    if (outlook.dryDown) {
        json.member("points_per_day", outlook.dryDown->rate.pointsPerDay());
        json.member("points_per_day_sd", outlook.dryDown->rateSd.pointsPerDay());
    }
    writeReach(json, "reaches_goal_low", outlook.reachesLow);
    writeReach(json, "reaches_goal_high", outlook.reachesHigh);
    if (outlook.byWarmth) {
        json.key("by_warmth").beginObject().member("day", toIso8601(outlook.byWarmth->day));
        json.member("so_far_c_days", outlook.byWarmth->soFar.celsius());
        json.member("so_far_f_days", outlook.byWarmth->soFar.fahrenheit());
        json.member("reckoned", outlook.byWarmth->reckoned).endObject();
    }
    if (outlook.byPlanting) {
        json.key("by_planting").beginObject().member("first", toIso8601(outlook.byPlanting->first));
        json.member("last", toIso8601(outlook.byPlanting->last)).endObject();
    }
    writeMessages(json, "notes", outlook.notes, style);
    json.endObject();
}

void writeSamples(const season::Season& season, const season::Day& day, Instant until, const Answer& answer) {
    JsonWriter json{2};
    json.beginObject().member("day", toIso8601(day.date)).member("until", toIso8601(until));
    writeDry(json, season, drySamplesOf(day, until), answer.style);
    writeComeIn(json, season, day, until);
    writeChops(json, season, day, until, answer.style);
    writeKernels(json, season, day, until, answer.style);
    json.key("fields").beginArray();
    for (const auto& [id, field] : day.farm().fields)
        writeField(json, field.name, season::outlookOf(season, id, until), answer.style);
    json.endArray().endObject();
    answer.out << json.text() << '\n';
}

void printDry(const season::Season& season, const DrySamples& dry, const Answer& answer) {
    const words::Style& style = answer.style;
    const auto mean = samples::meanOfSamples(dry.readings);
    if (!mean) {
        printLine(answer.out, "Dry matter", "no sample");
        return;
    }
    std::string text = inWords(mean->mean.amount(), style);
    if (mean->half95) text += " +- " + inWords(mean->half95->amount(), style);
    text += " of " + std::to_string(mean->samples) + (mean->samples == 1 ? " sample" : " samples");
    if (const auto needed = samples::samplesFor(mean->sd, kWantedPrecision))
        text += "; " + std::to_string(*needed) + " give it to a point";
    printLine(answer.out, "Dry matter", text);
    const farm::SiteRules& rules = season.farm().rules;
    if (const auto warning = samples::goalWarning(mean->mean, rules.dryMatterLow, rules.dryMatterHigh))
        printLine(answer.out, "Note", inWords(*warning, style));
    const auto drift = samples::driftOf(dry.timed);
    if (drift && drift->low80) {
        printLine(answer.out, "Drift",
                  inWords(drift->pointsPerHour.amount(), style) + " an hour, " +
                      inWords(drift->low80->amount(), style) + " to " +
                      inWords(drift->high80->amount(), style) + (drift->isSeen() ? "" : ": none is seen"));
    }
}

std::string beliefText(const samples::Belief& belief, const words::Style& style) {
    return inWords(belief.mean.amount(), style) + " (+-" + inWords(belief.half80().amount(), style) + ")";
}

/// Means by mass, and the meter's bias where it has been held against a dish.
void printComeIn(const season::Season& season, const season::Day& day, Instant until, const Answer& answer) {
    const words::Style& style = answer.style;
    const season::ComeIn means = season::comeIn(season, day, until);
    if (means.day) printLine(answer.out, "Came in", beliefText(*means.day, style) + " by mass, this day");
    for (const auto& [field, mean] : means.fields) {
        printLine(answer.out, "",
                  beliefText(mean, style) + ", " +
                      (field ? nameIn(day.farm().fields, field) : std::string{"of no field named"}));
    }
    for (const auto& [silo, mean] : means.silos)
        printLine(answer.out, "", beliefText(mean, style) + ", in " + nameIn(day.farm().silos, silo));
    const samples::MeterBias bias = season::meterBiasOf(day.after);
    if (bias.pairs == 0) return;
    printLine(answer.out, "Meter",
              "reads " + inWords(bias.bias.amount(), style) + " (+-" + inWords(bias.sd.amount(), style) +
                  ") too much, by " + std::to_string(bias.pairs) +
                  (bias.pairs == 1 ? " dish beside it" : " dishes beside it"));
}

void printKernels(const season::KernelsOfDay& kernels, const Answer& answer) {
    for (const samples::CupMean& cups : kernels.cups) {
        printLine(answer.out, "Kernels",
                  inWords(cups.perCup, answer.style) + " in a cup (" + inWords(cups.low80, answer.style) +
                      " to " + inWords(cups.high80, answer.style) + "), " +
                      std::string{enumText(cups.material)} + ": " + std::string{enumText(cups.processing)});
    }
    for (const season::ScoreOfField& score : kernels.scores) {
        printLine(answer.out, "Score",
                  inWords(score.score.score.amount(), answer.style) + " of the starch, " +
                      std::string{enumText(score.score.material)} + ": " +
                      std::string{enumText(score.score.processing)});
    }
    for (const Message& advice : kernels.advice)
        printLine(answer.out, "Advice", inWords(advice, answer.style));
}

std::string daysText(const std::optional<samples::ReachDays>& days) {
    if (!days || !days->median) return "not within reach of the samples";
    std::string text = toIso8601(*days->median);
    if (days->early && days->late)
        text += " (" + toIso8601(*days->early) + " to " + toIso8601(*days->late) + ")";
    return text;
}

void printField(const std::string& name, const season::FieldOutlook& outlook, const Answer& answer) {
    answer.out << '\n' << name << '\n';
    if (outlook.dryDown) {
        printLine(answer.out, "Dries",
                  inWords(outlook.dryDown->rate.amount(), answer.style) + " +- " +
                      inWords(outlook.dryDown->rateSd.amount(), answer.style) + ", " +
                      std::to_string(outlook.dryDown->samples) + " samples");
        printLine(answer.out, "Goal", "from " + daysText(outlook.reachesLow));
        printLine(answer.out, "", "to " + daysText(outlook.reachesHigh));
    }
    if (outlook.byWarmth) {
        printLine(answer.out, "By warmth",
                  toIso8601(outlook.byWarmth->day) + ", " +
                      inWords(outlook.byWarmth->soFar.amount(), answer.style) + " so far");
    }
    if (outlook.byPlanting) {
        printLine(answer.out, "By planting",
                  toIso8601(outlook.byPlanting->first) + " to " + toIso8601(outlook.byPlanting->last));
    }
    for (const Message& note : outlook.notes) printLine(answer.out, "Note", inWords(note, answer.style));
}

}  // namespace

void printSamples(const season::Season& season, const season::Day& day, Instant now, const Answer& answer) {
    const Instant until = std::clamp(now, day.begin, day.end - std::chrono::microseconds{1});
    if (answer.json) return writeSamples(season, day, until, answer);
    answer.out << "Samples of " << toIso8601(day.date) << '\n';
    printDry(season, drySamplesOf(day, until), answer);
    printComeIn(season, day, until, answer);
    for (const season::ChopOfField& chop : season::chopOf(season, day, until)) {
        answer.out << "\nChop " << nameIn(day.farm().fields, chop.field) << '\n';
        if (chop.setting && chop.setting->length)
            printLine(answer.out, "Cut", inWords(chop.setting->length->chopAmount(), answer.style));
        printChop(viewOf(chop), answer);
    }
    if (const auto trend = samples::chopTrend(season::chopByDay(season, until))) {
        printLine(answer.out, "By day",
                  inWords(trend->perDay.chopAmount(), answer.style) + " a day over " +
                      std::to_string(trend->days) + " days");
    }
    printKernels(season::kernelsOf(season, day, until), answer);
    for (const auto& [id, field] : day.farm().fields) {
        const season::FieldOutlook outlook = season::outlookOf(season, id, until);
        if (outlook.dryDown || outlook.byWarmth || outlook.byPlanting || !outlook.notes.empty())
            printField(field.name, outlook, answer);
    }
}

}  // namespace treadwell::cli
