#include "app/cli/layers.h"

#include "app/cli/names.h"
#include "app/cli/table.h"
#include "core/packing/layers.h"

#include <ostream>
#include <set>

namespace treadwell::cli {

namespace {

using packing::Layer;
using packing::LayerBook;
using packing::LayerLoad;

/// What the verb lists, and the season that it speaks of.
struct Listed {
    const season::Season& season;
    const farm::Silo& silo;
    Instant at;
    const LayerBook& book;
};

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

void writeLayer(JsonWriter& json, const Listed& listed, const Layer& layer) {
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
    writeTimes(json, "tractors", listed.season.farm(), layer.packing);
    writeLoads(json, listed.season, layer);
    json.endObject();
}

void writeLayers(const Listed& listed, const Answer& answer) {
    JsonWriter json{2};
    json.beginObject().member("silo", listed.silo.name).member("at", toIso8601(listed.at));
    json.member("filling", enumText(listed.silo.filling)).member("weighed_loads", listed.book.weighedLoads);
    writeAmount(json, "under_wheels", listed.book.underWheels.amount());
    writeTimes(json, "before_first_load", listed.season.farm(), listed.book.beforeFirstLoad);
    json.key("layers").beginArray();
    for (const auto& layer : listed.book.layers) writeLayer(json, listed, *layer);
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

std::vector<Cell> rowOf(const Listed& listed, const Layer& layer, const std::set<farm::TractorId>& tractors) {
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
                          std::string{layer.closed ? "yes" : "no"}};
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
                     {"closed", "Closed"}};
    const std::set<farm::TractorId> tractors = tractorsIn(listed.book);
    for (const farm::TractorId& tractor : tractors) {
        const std::string name = nameIn(listed.season.farm().tractors, tractor);
        table.columns.push_back({"packed_" + name, name, Dimension::duration});
    }
    for (const auto& layer : listed.book.layers) table.rows.push_back(rowOf(listed, *layer, tractors));
    return table;
}

}  // namespace

void printLayers(const season::Season& season, const farm::Silo& silo, Instant at, ListForm form,
                 const Answer& answer) {
    const LayerBook book = packing::layersOf(season, silo, at);
    const Listed listed{season, silo, at, book};
    if (form == ListForm::json) return writeLayers(listed, answer);
    const Table table = tableOf(listed);
    if (form == ListForm::csv) {
        answer.out << csvOf(table);
        return;
    }
    answer.out << silo.name << ", " << words::inWords(at, answer.style) << '\n';
    if (book.layers.empty()) {
        answer.out << "No crop was tipped here by then.\n";
    } else {
        printTable(answer.out, table, answer.style);
    }
    for (const auto& [tractor, time] : book.beforeFirstLoad) {
        answer.out << nameIn(season.farm().tractors, tractor) << " packed "
                   << words::inWords(durationAmount(time), answer.style)
                   << " before the first load; that is not counted\n";
    }
}

}  // namespace treadwell::cli
