#include "app/cli/harvest_order.h"

#include "app/cli/option_reader.h"
#include "app/cli/season_file.h"
#include "core/base/number_text.h"
#include "core/samples/harvest_order.h"
#include "core/season/sampled.h"

#include <algorithm>
#include <numeric>
#include <ostream>

namespace treadwell::cli {

namespace {

using words::inWords;

/// What the season and the options say of the harvest to come.
struct Harvest {
    std::vector<std::string> names;
    std::vector<samples::FieldToCut> fields;
    samples::HarvestPlan plan;
};

std::optional<LocalDay> dayOf(const std::string& text, const char* option, OptionReader& reader) {
    auto day = dayFromIso8601(text);
    if (!day) reader.fail(std::string{option} + ": \"" + text + "\" is no day: write it like 2026-09-15");
    return day;
}

void addField(const std::string& typed, const season::Season& season, Instant until, OptionReader& reader,
              Harvest& harvest) {
    const std::size_t sign = typed.rfind('=');
    if (sign == std::string::npos || sign == 0)
        return reader.fail("--field: \"" + typed + "\": write its name and what it will yield, NAME=800t");
    const std::string name = typed.substr(0, sign);
    const auto& known = season.farm().fields;
    const auto found =
        std::ranges::find_if(known, [&](const auto& field) { return field.second.name == name; });
    if (found == known.end()) return reader.fail("--field: the farm has no field \"" + name + "\"");
    const auto mass = reader.read<AsFedMass>(typed.substr(sign + 1), "--field");
    const season::FieldOutlook outlook = season::outlookOf(season, found->first, until);
    if (!outlook.dryDown) {
        return reader.fail("--field: no whole plants of \"" + name +
                           "\" were sampled: add field_observed with its dry matter first");
    }
    harvest.names.push_back(name);
    harvest.fields.push_back({*outlook.dryDown, mass, outlook.seen.hybrid.value_or(std::string{})});
}

tl::expected<Harvest, Failure> harvestFrom(const HarvestOrderOptions& options, const season::Season& season,
                                           Instant now, const Answer& answer) {
    OptionReader reader{answer.style};
    Harvest harvest;
    harvest.plan.first = season.zone().dayOf(now);
    harvest.plan.goalLow = season.farm().rules.dryMatterLow;
    harvest.plan.goalHigh = season.farm().rules.dryMatterHigh;
    for (const std::string& typed : options.fields) addField(typed, season, now, reader, harvest);
    harvest.plan.perDay = reader.read<AsFedMass>(options.capacity, "--capacity");
    if (options.first)
        harvest.plan.first = dayOf(*options.first, "--first", reader).value_or(harvest.plan.first);
    for (const std::string& rain : options.rain) {
        if (const auto day = dayOf(rain, "--rain", reader)) harvest.plan.rainDays.push_back(*day);
    }
    if (const auto change = numberFromText(options.change)) {
        harvest.plan.changeDays = *change;
    } else {
        reader.fail("--change: \"" + options.change + "\" is no number of days");
    }
    if (reader.failure()) return tl::unexpected{*reader.failure()};
    return harvest;
}

void writeOrder(const Harvest& harvest, const samples::HarvestOrder& order, const Answer& answer) {
    JsonWriter json{2};
    json.beginObject().key("order").beginArray();
    for (const samples::FieldTurn& turn : order.turns) {
        json.beginObject().member("field", harvest.names[turn.field]);
        json.member("first", toIso8601(turn.first)).member("last", toIso8601(turn.last));
        json.member("dry_matter", turn.dryMatter.fraction());
        json.member("side", enumText(turn.distance.side)).member("off", turn.distance.off.fraction());
        json.endObject();
    }
    json.endArray().member("dry_matter", order.siloMean.fraction());
    json.member("tonne_points_outside", order.tonnePointsOutside);
    json.member("t_outside", order.tonnesOutside).member("every_order_tried", order.everyOrderTried);
    json.endObject();
    answer.out << json.text() << '\n';
}

void printOrder(const Harvest& harvest, const samples::HarvestOrder& order, const Answer& answer) {
    const words::Style& style = answer.style;
    for (const samples::FieldTurn& turn : order.turns) {
        printLine(answer.out, harvest.names[turn.field],
                  toIso8601(turn.first) + " to " + toIso8601(turn.last) + ", " +
                      inWords(turn.dryMatter.amount(), style) + " dry matter");
        if (const auto warning =
                samples::goalWarning(turn.dryMatter, harvest.plan.goalLow, harvest.plan.goalHigh))
            printLine(answer.out, "", inWords(*warning, style));
    }
    printLine(answer.out, "At the silo",
              inWords(order.siloMean.amount(), style) + " by mass; " +
                  inWords(AsFedMass::fromTonnes(order.tonnesOutside).amount(), style) +
                  " cut outside the goal");
    if (!order.everyOrderTried)
        printLine(answer.out, "Note", "More than eight fields: not every order was tried");
}

}  // namespace

Outcome harvestOrder(const HarvestOrderOptions& options, const Answer& answer) {
    const auto now = momentFrom(options.at, answer.style);
    if (!now) return tl::unexpected{now.error()};
    const auto season = readSeason(options.file, answer);
    if (!season) return tl::unexpected{season.error()};
    const auto harvest = harvestFrom(options, *season, *now, answer);
    if (!harvest) return tl::unexpected{harvest.error()};
    std::vector<std::size_t> given(harvest->fields.size());
    std::iota(given.begin(), given.end(), std::size_t{0});
    const auto order = options.asGiven ? samples::reckonOrder(harvest->fields, harvest->plan, given)
                                       : samples::bestOrder(harvest->fields, harvest->plan);
    if (!order) return misused(order.error(), "--" + order.error().field, answer.style);
    answer.json ? writeOrder(*harvest, *order, answer) : printOrder(*harvest, *order, answer);
    return {};
}

}  // namespace treadwell::cli
