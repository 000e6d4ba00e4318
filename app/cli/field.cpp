#include "app/cli/field.h"

#include "app/cli/density_output.h"
#include "app/cli/table.h"
#include "core/density/codes.h"
#include "core/density/readings.h"
#include "core/density/weak_places.h"

#include <ostream>

namespace treadwell::cli {

namespace {

using density::Box;
using density::Field;
using density::FieldMean;
using density::FieldPoint;
using density::Filled;
using density::Position;
using density::WeakPlace;
using words::inWords;

constexpr int kSections = 12;  ///< along a silo
constexpr int kHeights = 6;
constexpr std::size_t kWeakPlaces = 5;

struct Place {
    Position where;
    FieldPoint point;
};

struct Section {
    Length from, to;
    FieldMean mean;
};

/// All that is answered.
struct FieldAsked {
    const density::SiloLayers& layers;
    FieldQuestion question;
    std::optional<FieldMean> whole;
    std::vector<Section> sections;
    std::vector<Place> places;
    std::vector<WeakPlace> weakest;
};

/// The given value alone, or the middles of equal parts of the whole.
std::vector<Length> valuesOf(const std::optional<Length>& given, Length whole, int parts) {
    if (given) return {*given};
    std::vector<Length> values;
    for (int i = 0; i < parts; ++i) values.push_back(whole * ((i + 0.5) / parts));
    return values;
}

FieldAsked ask(const season::Season& season, const density::SiloLayers& layers, const Field& field,
               const FieldQuestion& question) {
    const Box all = field.whole();
    FieldAsked asked{layers, question, field.mean(all), {}, {}, {}};
    for (int i = 0; i < kSections; ++i) {
        Box part = all;
        part.low.along = all.high.along * (static_cast<double>(i) / kSections);
        part.high.along = all.high.along * ((i + 1.0) / kSections);
        if (const auto mean = field.mean(part))
            asked.sections.push_back({part.low.along, part.high.along, *mean});
    }
    for (const Length along : valuesOf(question.along, all.high.along, kSections)) {
        for (const Length up : valuesOf(question.up, all.high.up, kHeights)) {
            const Position where{along, up, question.across.value_or(all.high.across / 2.0)};
            if (const auto point = field.at(where)) asked.places.push_back({where, *point});
        }
    }
    asked.weakest = density::weakestPlaces(season, layers, question.filled, kWeakPlaces);
    return asked;
}

void writeMean(JsonWriter& json, const FieldMean& mean) {
    writeDensity(json, "density", mean.density);
    writeAmount(json, "dry_matter_mass", mean.dry.amount());
    writeAmount(json, "volume", mean.volume.amount());
    writeAmount(json, "mean_depth", mean.depth.amount());
    json.member("effective_layers", mean.effectiveLayers);
}

void writeFieldPlace(JsonWriter& json, const FieldAsked& asked, const Place& place) {
    const packing::Layer& layer = *asked.layers.layers[place.point.layer].layer;
    json.beginObject();
    writeAmount(json, "along", place.where.along.amount());
    writeAmount(json, "up", place.where.up.amount());
    writeAmount(json, "across", place.where.across.amount());
    json.member("layer", layer.number).member("laid", toIso8601(layer.begin));
    writeAmount(json, "depth", place.point.depth.amount());
    writeDensity(json, "density", place.point.density);
    json.endObject();
}

void writeWeakPlace(JsonWriter& json, const FieldAsked& asked, const WeakPlace& weak,
                    const words::Style& style) {
    const auto number = [&](std::size_t k) { return asked.layers.layers[k].layer->number; };
    json.beginObject()
        .member("first_layer", number(weak.layers.first))
        .member("last_layer", number(weak.layers.first + weak.layers.count - 1))
        .member("begin", toIso8601(weak.begin))
        .member("end", toIso8601(weak.end));
    writeAmount(json, "lower_edge", weak.lower.amount());
    writeAmount(json, "upper_edge", weak.upper.amount());
    writeAmount(json, "mass", weak.mass.amount());
    writeAmount(json, "dry_matter_mass", weak.dry.amount());
    writeDensity(json, "density", weak.density);
    writeMessages(json, "causes", weak.causes, style);
    json.endObject();
}

void writeField(const FieldAsked& asked, Instant at, const Answer& answer) {
    JsonWriter json{2};
    json.beginObject()
        .member("silo", asked.layers.silo.name)
        .member("at", toIso8601(at))
        .member("filling", enumText(asked.layers.silo.filling))
        .member("filled", enumText(asked.question.filled));
    if (asked.whole) {
        json.key("mean").beginObject();
        writeMean(json, *asked.whole);
        json.endObject();
    }
    json.key("sections").beginArray();
    for (const Section& section : asked.sections) {
        json.beginObject();
        writeAmount(json, "from", section.from.amount());
        writeAmount(json, "to", section.to.amount());
        writeMean(json, section.mean);
        json.endObject();
    }
    json.endArray().key("weakest").beginArray();
    for (const WeakPlace& weak : asked.weakest) writeWeakPlace(json, asked, weak, answer.style);
    json.endArray().key("places").beginArray();
    for (const Place& place : asked.places) writeFieldPlace(json, asked, place);
    json.endArray().endObject();
    answer.out << json.text() << '\n';
}

void addBandColumns(std::vector<Column>& columns) {
    columns.push_back({"density", "Density", Dimension::dryDensity});
    columns.push_back({"density_low80", "80 % from", Dimension::dryDensity});
    columns.push_back({"density_high80", "to", Dimension::dryDensity});
}

Table placesOf(const FieldAsked& asked) {
    Table table{{{"along", "Along", Dimension::length},
                 {"up", "Up", Dimension::length},
                 {"across", "Across", Dimension::length},
                 {"layer", "Layer"},
                 {"laid", "Laid"},
                 {"depth", "Depth", Dimension::length}},
                {}};
    addBandColumns(table.columns);
    for (const Place& place : asked.places) {
        const packing::Layer& layer = *asked.layers.layers[place.point.layer].layer;
        auto& row = table.rows.emplace_back(std::vector<Cell>{
            place.where.along.amount(), place.where.up.amount(), place.where.across.amount(), layer.number,
            layer.begin, place.point.depth.amount()});
        addBand(row, &place.point.density);
    }
    return table;
}

Table sectionsOf(const FieldAsked& asked) {
    Table table{{{"from", "From the back wall", Dimension::length},
                 {"to", "to", Dimension::length},
                 {"dry_matter_mass", "Dry", Dimension::dryMass},
                 {"volume", "Volume", Dimension::volume}},
                {}};
    addBandColumns(table.columns);
    for (const Section& section : asked.sections) {
        auto& row = table.rows.emplace_back(std::vector<Cell>{section.from.amount(), section.to.amount(),
                                                              section.mean.dry.amount(),
                                                              section.mean.volume.amount()});
        addBand(row, &section.mean.density);
    }
    return table;
}

void printWeakPlace(const FieldAsked& asked, const WeakPlace& weak, const Answer& answer) {
    const words::Style& style = answer.style;
    const auto number = [&](std::size_t k) { return std::to_string(asked.layers.layers[k].layer->number); };
    const std::size_t last = weak.layers.first + weak.layers.count - 1;
    const bool ramp = asked.layers.silo.filling == farm::FillingWay::wedge;
    answer.out << (weak.layers.count == 1 ? "Layer " + number(last)
                                          : "Layers " + number(weak.layers.first) + " to " + number(last))
               << ", " << inWords(weak.begin, style) << " to " << inWords(weak.end, style) << ", "
               << inWords(weak.lower.amount(), style) << " to " << inWords(weak.upper.amount(), style)
               << (ramp ? " from the back wall, on the floor" : " above the floor") << "\n  "
               << bandInWords(weak.density, style) << '\n';
    for (const Message& cause : weak.causes) answer.out << "  " << inWords(cause, style) << '\n';
}

void printText(const FieldAsked& asked, Instant at, const Answer& answer) {
    const bool full = asked.question.filled == Filled::whenFull;
    answer.out << asked.layers.silo.name << ", " << inWords(at, answer.style)
               << (full ? ", when full" : ", as it lies now") << '\n';
    if (asked.whole) printLine(answer.out, "All crop", bandInWords(asked.whole->density, answer.style));
    const FieldQuestion& question = asked.question;
    if (question.along || question.up || question.across) {
        if (asked.places.empty()) {
            answer.out << "No crop lies there.\n";
        } else {
            printTable(answer.out, placesOf(asked), answer.style);
        }
        return;
    }
    answer.out << '\n';
    printTable(answer.out, sectionsOf(asked), answer.style);
    answer.out << "\nThe weakest places\n";
    for (const WeakPlace& weak : asked.weakest) printWeakPlace(asked, weak, answer);
}

}  // namespace

Outcome printField(const season::Season& season, const farm::Silo& silo, Instant at,
                   const FieldQuestion& question, ListForm form, const Answer& answer) {
    const density::Readings readings = density::readingsAt(season, silo.id, at);
    const auto field =
        readings.layers ? density::fieldOf(season, *readings.layers, question.filled) : std::nullopt;
    if (!field || readings.layers->layers.empty()) {
        const Message reason = readings.silo.reason.value_or(Message{code::noLoads, {}});
        return tl::unexpected{Failure{Status::failed, silo.name + ": " + inWords(reason, answer.style)}};
    }
    const FieldAsked asked = ask(season, *readings.layers, *field, question);
    if (form == ListForm::json) {
        writeField(asked, at, answer);
    } else if (form == ListForm::csv) {
        answer.out << csvOf(placesOf(asked));
    } else {
        printText(asked, at, answer);
    }
    return {};
}

}  // namespace treadwell::cli
