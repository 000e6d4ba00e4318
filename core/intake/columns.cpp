#include "core/intake/columns.h"

#include "core/intake/codes.h"
#include "core/intake/names.h"

#include <algorithm>

namespace treadwell::intake {

namespace {

struct Heading {
    Column column;
    std::string_view words;  // as plainWords gives them, parted by '|'
};

// What scales and people write above their columns.
constexpr std::array<Heading, kColumnCount> kHeadings{{
    {Column::ticket,
     "ticket|ticket no|ticket nr|ticket number|no|nr|number|wiegeschein|wiegeschein nr|"
     "wiegescheinnummer|beleg|beleg nr|belegnummer|lieferschein|lieferschein nr|scheinnummer|"
     "bilhete|ticket n|numero|romaneio"},
    {Column::date, "date|datum|data|weighing date|wiegedatum|data pesagem"},
    {Column::time,
     "time|uhrzeit|zeit|hora|datetime|date time|timestamp|zeitpunkt|datum uhrzeit|data hora|"
     "weighing time|horario"},
    {Column::truck, "truck|vehicle|vehicle id|plate|fahrzeug|kennzeichen|lkw|wagen|caminhao|veiculo|placa"},
    {Column::field, "field|feld|schlag|talhao|campo|gleba"},
    {Column::silo, "silo|bunker|destination|ziel|destino|pit"},
    {Column::gross, "gross|gross weight|brutto|bruttogewicht|bruto|peso bruto|full"},
    {Column::tare, "tare|tare weight|tara|taragewicht|leergewicht|peso tara|empty"},
    {Column::net, "net|net weight|netto|nettogewicht|liquido|peso liquido|mass"},
    {Column::unit, "unit|einheit|unidade"},
    {Column::status, "status|void|voided|void flag|storno|storniert|cancelled|cancelado|anulado"},
    {Column::scale,
     "scale|scale id|scale no|scale number|weighbridge|waage|waage nr|waagen nr|balanca|balanca n"},
    {Column::tractor, "tractor|traktor|schlepper|trator|machine|maschine|maquina"},
    {Column::activity, "activity|taetigkeit|tatigkeit|arbeit|atividade"},
    {Column::share, "share|packing share|anteil|parte"},
    {Column::wet, "wet|wet weight|feucht|frisch|umido|peso umido"},
    {Column::dry, "dry|dry weight|trocken|seco|peso seco"},
    {Column::dryMatter, "dry matter|dm|trockenmasse|tm|ts|materia seca|ms"},
    {Column::method, "method|methode|metodo"},
    {Column::along, "along|from back|laengs|langs|comprimento"},
    {Column::across, "across|from left|quer|largura"},
    {Column::height, "height|hoehe|hohe|altura"},
    {Column::thickness, "thickness|layer|schicht|schichtdicke|espessura|camada"},
    {Column::depth, "depth|tiefe|profundidade"},
    {Column::origin, "origin|herkunft|origem"},
    {Column::sampleMass, "mass|sample mass|masse|massa"},
    {Column::volume, "volume|volumen|volume bloco"},
    {Column::diameter, "diameter|durchmesser|diametro"},
    {Column::length, "length|laenge|lange|core length|comprimento amostra"},
    {Column::density, "density|density dm|dichte|densidade"},
    {Column::sieves, "sieves|sieve|screens|siebe|siebweiten|peneiras"},
    {Column::sieveMasses, "masses|weights|on sieves|gewichte|siebmassen|massas|pesos"},
    {Column::sieveParts, "parts|anteile|partes"},
    {Column::before, "before|sample weight|vorher|einwaage|antes|amostra"},
    {Column::topLength, "top length|length on top|laenge oben|lange oben|comprimento em cima"},
    {Column::rainWet, "wet sample|rain wet|nass|molhada"},
    {Column::material, "material|stoff"},
    {Column::kernels, "kernels|kernels in cup|koerner|korner|graos"},
    {Column::whole, "whole|whole sample|gesamt|total amostra"},
    {Column::coarse, "coarse|grob|grosso"},
    {Column::wholeStarch, "whole starch|starch|staerke|starke|amido"},
    {Column::coarseStarch, "coarse starch|staerke grob|starke grob|amido grosso"},
    {Column::low, "low|lowest|minimum|min|tmin|tiefst|minima"},
    {Column::high, "high|highest|maximum|max|tmax|hoechst|hochst|maxima"},
    {Column::planted, "planted|planting|aussaat|plantio"},
    {Column::silked, "silked|silking|weibliche bluete|weibliche blute|espigamento"},
    {Column::hybrid, "hybrid|variety|sorte|hibrido"},
    {Column::hybridDays, "hybrid days|maturity days|reifetage|dias do hibrido"},
    {Column::milkLine, "milk line|milchlinie|linha do leite"},
    {Column::cutLength, "cut|cut length|chop length|haecksellaenge|hacksellange|corte"},
    {Column::rollGap, "roll gap|walzenspalt|folga dos rolos"},
    {Column::cuttingHeight, "cutting height|stubble|stoppelhoehe|stoppelhohe|altura de corte"},
    {Column::processor, "processor|aufbereiter|processador"},
    {Column::behindFace, "behind face|hinter der anschnittflaeche|hinter der anschnittflache|atras da face"},
    {Column::core, "core|kern|nucleo"},
    {Column::face, "face|face at|anschnitt|posicao da face"},
}};

constexpr std::array<std::string_view, 17> kUnits{"kg", "t",  "lb", "lbs",     "ton", "tons", "g", "m", "cm",
                                                  "mm", "ft", "in", "percent", "m3",  "l",    "c", "f"};

std::string_view unitAtEnd(std::string_view words) {
    const std::size_t split = words.rfind(' ');
    if (split == std::string_view::npos) return {};
    const std::string_view last = words.substr(split + 1);
    const auto* unit = std::find(kUnits.begin(), kUnits.end(), last);
    return unit == kUnits.end() ? std::string_view{} : *unit;
}

bool isOneOf(std::string_view words, std::string_view list) {
    while (!list.empty()) {
        const std::size_t end = std::min(list.find('|'), list.size());
        if (list.substr(0, end) == words) return true;
        list.remove_prefix(std::min(end + 1, list.size()));
    }
    return false;
}

}  // namespace

Result<void> Columns::takeNamed(const formats::CsvRecord& header, std::span<const Column> wanted,
                                std::span<const ColumnName> named) {
    for (const ColumnName& name : named) {
        if (std::find(wanted.begin(), wanted.end(), name.column) == wanted.end()) continue;
        const auto& cells = header.cells;
        auto cell = std::find(cells.begin(), cells.end(), name.header);
        if (cell == cells.end()) {
            const std::string words = plainWords(name.header);
            cell = std::find_if(cells.begin(), cells.end(),
                                [&](const std::string& other) { return plainWords(other) == words; });
        }
        if (cell == cells.end()) {
            Error error{{code::columnNotThere, {name.header, m_headers}},
                        std::string{enumText(name.column)},
                        {{}, header.line, 0}};
            return Unexpected{std::move(error)};
        }
        m_places[static_cast<std::size_t>(name.column)] = {static_cast<std::size_t>(cell - cells.begin()),
                                                           unitAtEnd(plainWords(*cell))};
    }
    return {};
}

Result<Columns> Columns::of(const formats::CsvRecord& header, std::span<const Column> wanted,
                            std::span<const ColumnName> named) {
    Columns columns;
    columns.m_line = header.line;
    for (const std::string& cell : header.cells)
        columns.m_headers += (columns.m_headers.empty() ? "" : ", ") + cell;
    if (const auto taken = columns.takeNamed(header, wanted, named); !taken) return Unexpected{taken.error()};
    const auto isNamed = [&](Column column) {
        return std::any_of(named.begin(), named.end(),
                           [column](const ColumnName& name) { return name.column == column; });
    };
    for (std::size_t i = 0; i < header.cells.size(); ++i) {
        const std::string& cell = header.cells[i];
        if (columns.meaningOf(i)) continue;
        std::string words = plainWords(cell);
        const std::string_view unit = unitAtEnd(words);
        if (!unit.empty()) words.resize(words.size() - unit.size() - 1);
        const auto* heading = std::find_if(kHeadings.begin(), kHeadings.end(), [&](const Heading& candidate) {
            return std::find(wanted.begin(), wanted.end(), candidate.column) != wanted.end() &&
                   isOneOf(words, candidate.words);
        });
        if (heading == kHeadings.end() || isNamed(heading->column)) {
            columns.m_ignored.push_back(cell);
            continue;
        }
        ColumnPlace& place = columns.m_places[static_cast<std::size_t>(heading->column)];
        if (place.index) {
            Error error{{code::columnTwice, {header.cells[*place.index], cell}},
                        std::string{enumText(heading->column)},
                        {{}, header.line, static_cast<std::int64_t>(i) + 1}};
            return Unexpected{std::move(error)};
        }
        place = {i, unit};
    }
    return columns;
}

std::optional<Column> Columns::meaningOf(std::size_t index) const {
    const auto* place = std::find_if(m_places.begin(), m_places.end(), [index](const ColumnPlace& candidate) {
        return candidate.index == index;
    });
    if (place == m_places.end()) return std::nullopt;
    return static_cast<Column>(place - m_places.begin());
}

Result<void> Columns::require(Column column) const {
    if (has(column)) return {};
    const std::string name{enumText(column)};
    return Unexpected{Error{{code::columnMissing, {m_headers}}, name, {{}, m_line, 0}}};
}

}  // namespace treadwell::intake
