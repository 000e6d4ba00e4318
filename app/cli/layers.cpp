#include "app/cli/layers.h"

#include "app/cli/density_output.h"
#include "app/cli/names.h"
#include "app/cli/table.h"

#include <ostream>
#include <set>

namespace treadwell::cli {

namespace {

using packing::Layer;
using packing::LayerBook;
using packing::LayerLoad;

/// A layer with its densities.
struct Estimated {
    const density::LayerFacts& facts;
    density::SiloReading reading;
    Length whenFull;  ///< packed
    Length asItLies;
};

/// What the verb lists, and the season that it speaks of.
struct Listed {
    const season::Season& season;
    const density::SiloLayers& silo;
    const LayerBook& book;
    std::vector<Estimated> layers;
};

Listed listOf(const season::Season& season, const density::SiloLayers& silo) {
    Listed listed{season, silo, silo.book, {}};
    for (std::size_t k = 0; k < silo.layers.size(); ++k) {
        listed.layers.push_back({silo.layers[k],
                                 density::readingOf(season, silo, {k, 1}, density::Reading::layer),
                                 silo.whenFull.layers[k].thickness, silo.asItLies.layers[k].thickness});
    }
    return listed;
}

std::set<LocalDay> daysOf(const Layer& layer, const FarmZone& zone) {
    std::set<LocalDay> days;
    for (const LayerLoad& load : layer.loads) days.insert(zone.dayOf(load.load->at));
    return days;
}

/// Who wrote the load down; the season keeps who it was by an id alone.
std::string authorOf(const season::Season& season, const LayerLoad& load) {
    const season::FactPointer fact = season.fact(load.load->entry);
    return fact ? fact->stated().header.author.value.text() : std::string{};
}

void writeTimes(JsonWriter& json, std::string_view name, const season::FarmBook& farm,
                const std::map<farm::TractorId, Seconds>& packing) {
    json.key(name).beginArray();
    for (const auto& [tractor, time] : packing) {
        json.beginObject().member("name", nameIn(farm.tractors, tractor));
        writeAmount(json, "packed", durationAmount(time));
        json.endObject();
    }
    json.endArray();
}

void writeLoads(JsonWriter& json, const season::Season& season, const Layer& layer) {
    const season::FarmBook& farm = season.farm();
    json.key("loads").beginArray();
    for (const LayerLoad& part : layer.loads) {
        const season::LoadTipped& tipped = *part.load;
        json.beginObject().member("entry", tipped.entry.value.text()).member("at", toIso8601(tipped.at));
        writeAmount(json, "mass", part.mass.amount());
        writeAmount(json, "whole_load", tipped.load.mass.amount());
        json.member("mass_source", enumText(tipped.load.source))
            .member("dry_matter", tipped.dryMatter.fraction())
            .member("dry_matter_basis", enumText(tipped.basis));
        if (tipped.load.truck) json.member("truck", nameIn(farm.trucks, *tipped.load.truck));
        if (tipped.load.field) json.member("field", nameIn(farm.fields, *tipped.load.field));
        json.member("recorded_by", authorOf(season, part)).endObject();
    }
    json.endArray();
}

void writeDensities(JsonWriter& json, const Estimated& estimated, const words::Style& style) {
    writeAmount(json, "thickness_when_full", estimated.whenFull.layerAmount());
    writeAmount(json, "thickness_as_it_lies", estimated.asItLies.layerAmount());
    json.member("packing_factor_us", estimated.facts.soFar.us());
    const density::SiloReading& reading = estimated.reading;
    if (reading.estimate) writeDensity(json, "density_when_full", reading.estimate->density);
    if (reading.asItLies) writeDensity(json, "density_as_it_lies", reading.asItLies->density);
    if (!reading.reason) return;
    json.key("reason");
    writeMessage(json, *reading.reason, style);
}

void writeLayer(JsonWriter& json, const Listed& listed, const Estimated& estimated,
                const words::Style& style) {
    const Layer& layer = *estimated.facts.layer;
    json.beginObject()
        .member("number", layer.number)
        .member("begin", toIso8601(layer.begin))
        .member("end", toIso8601(layer.end))
        .key("days")
        .beginArray();
    for (const LocalDay day : daysOf(layer, listed.season.zone())) json.value(toIso8601(day));
    json.endArray().member("closed", layer.closed);
    writeAmount(json, "mass", layer.mass.amount());
    writeAmount(json, "dry_matter_mass", layer.dry.amount());
    json.member("dry_matter", layer.dryMatter().fraction());
    const packing::MassSpread spread = packing::massSpread(layer.loads, listed.book.weighedLoads);
    json.member("mass_log_sd_common", spread.common).member("mass_log_sd_own", spread.own);
    writeAmount(json, "thickness_spread", layer.thickness.layerAmount());
    json.member("thickness_basis", enumText(layer.basis));
    writeAmount(json, "area", layer.area.amount());
    json.member("packing_minutes_per_t", layer.intensity().minutesPerTonne())
        .member("passes", packing::passesOn(layer, listed.season.farm()))
        .member("buried_share", layer.buried.fraction());
    writeDensities(json, estimated, style);
    writeTimes(json, "tractors", listed.season.farm(), layer.packing);
    writeLoads(json, listed.season, layer);
    json.endObject();
}

void writeLayers(const Listed& listed, const Answer& answer) {
    JsonWriter json{2};
    json.beginObject().member("silo", listed.silo.silo.name).member("at", toIso8601(listed.silo.at));
    json.member("filling", enumText(listed.silo.silo.filling))
        .member("weighed_loads", listed.book.weighedLoads);
    writeAmount(json, "under_wheels", listed.book.underWheels.amount());
    writeTimes(json, "before_first_load", listed.season.farm(), listed.book.beforeFirstLoad);
    json.key("layers").beginArray();
    for (const Estimated& layer : listed.layers) writeLayer(json, listed, layer, answer.style);
    json.endArray().endObject();
    answer.out << json.text() << '\n';
}

std::set<farm::TractorId> tractorsIn(const LayerBook& book) {
    std::set<farm::TractorId> tractors;
    for (const auto& layer : book.layers) {
        for (const auto& [tractor, time] : layer->packing) tractors.insert(tractor);
    }
    return tractors;
}

const density::Distribution* densityOf(const std::optional<density::Estimate>& estimate) {
    return estimate ? &estimate->density : nullptr;
}

std::vector<Cell> rowOf(const Listed& listed, const Estimated& estimated,
                        const std::set<farm::TractorId>& tractors) {
    const Layer& layer = *estimated.facts.layer;
    std::vector<Cell> row{layer.number,
                          layer.begin,
                          layer.end,
                          std::ssize(layer.loads),
                          layer.mass.amount(),
                          layer.dry.amount(),
                          layer.dryMatter().amount(),
                          layer.thickness.layerAmount(),
                          std::string{enumText(layer.basis)},
                          durationAmount(layer.packingTime()),
                          layer.intensity().amount(),
                          packing::passesOn(layer, listed.season.farm()),
                          std::string{layer.closed ? "yes" : "no"},
                          estimated.whenFull.layerAmount()};
    addBand(row, densityOf(estimated.reading.estimate));
    row.emplace_back(estimated.asItLies.layerAmount());
    addBand(row, densityOf(estimated.reading.asItLies));
    for (const farm::TractorId& tractor : tractors) {
        const auto packed = layer.packing.find(tractor);
        row.emplace_back(durationAmount(packed == layer.packing.end() ? Seconds{0} : packed->second));
    }
    return row;
}

Table tableOf(const Listed& listed) {
    Table table;
    table.columns = {{"layer", "Layer"},
                     {"begin", "From"},
                     {"end", "To"},
                     {"loads", "Loads"},
                     {"mass", "As fed", Dimension::asFedMass},
                     {"dry_matter_mass", "Dry", Dimension::dryMass},
                     {"dry_matter", "DM", Dimension::dryMatter},
                     {"thickness_spread", "Spread", Dimension::layerThickness},
                     {"thickness_basis", "Thickness is"},
                     {"packed", "Packed", Dimension::duration},
                     {"packing", "For a tonne", Dimension::packingIntensity},
                     {"passes", "Passes"},
                     {"closed", "Closed"},
                     {"thickness_when_full", "Full:", Dimension::layerThickness},
                     {"density_when_full", "density", Dimension::dryDensity},
                     {"density_when_full_low80", "80 % from", Dimension::dryDensity},
                     {"density_when_full_high80", "to", Dimension::dryDensity},
                     {"thickness_as_it_lies", "Now:", Dimension::layerThickness},
                     {"density_as_it_lies", "density", Dimension::dryDensity},
                     {"density_as_it_lies_low80", "80 % from", Dimension::dryDensity},
                     {"density_as_it_lies_high80", "to", Dimension::dryDensity}};
    const std::set<farm::TractorId> tractors = tractorsIn(listed.book);
    for (const farm::TractorId& tractor : tractors) {
        const std::string name = nameIn(listed.season.farm().tractors, tractor);
        table.columns.push_back({"packed_" + name, name, Dimension::duration});
    }
    for (const Estimated& layer : listed.layers) table.rows.push_back(rowOf(listed, layer, tractors));
    return table;
}

void printText(const Listed& listed, const Answer& answer) {
    answer.out << listed.silo.silo.name << ", " << words::inWords(listed.silo.at, answer.style) << '\n';
    if (listed.layers.empty()) {
        answer.out << "No crop was tipped here by then.\n";
    } else {
        printTable(answer.out, tableOf(listed), answer.style);
    }
    for (const auto& [tractor, time] : listed.book.beforeFirstLoad) {
        answer.out << nameIn(listed.season.farm().tractors, tractor) << " packed "
                   << words::inWords(durationAmount(time), answer.style)
                   << " before the first load; that is not counted\n";
    }
}

}  // namespace

Outcome printLayers(const season::Season& season, const farm::Silo& silo, Instant at, ListForm form,
                    const Answer& answer) {
    const density::Readings readings = density::readingsAt(season, silo.id, at);
    if (!readings.layers) {
        return tl::unexpected{
            Failure{Status::failed, silo.name + ": " + words::inWords(*readings.silo.reason, answer.style)}};
    }
    const Listed listed = listOf(season, *readings.layers);
    if (form == ListForm::json) {
        writeLayers(listed, answer);
    } else if (form == ListForm::csv) {
        answer.out << csvOf(tableOf(listed));
    } else {
        printText(listed, answer);
    }
    return {};
}

}  // namespace treadwell::cli
