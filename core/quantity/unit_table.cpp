#include "core/quantity/unit_table.h"

#include "core/base/codes.h"
#include "core/base/number_text.h"
#include "core/quantity/quantity.h"

#include <array>
#include <cmath>
#include <stdexcept>

namespace treadwell {

namespace {

using namespace conversion;

constexpr Unit kKilogram{"kg", "kg", 1.0, 0};
constexpr Unit kGram{"g", "g", 0.001, 1};  // kitchen and field scales show grams everywhere
constexpr Unit kTonne{"t", "t", kKilogramsPerTonne, 1};
constexpr Unit kPound{"lb", "lb", kKilogramsPerPound, 0};
constexpr Unit kShortTon{"ton", "ton", kKilogramsPerShortTon, 1};
constexpr double kTonnePerHour = kKilogramsPerTonne / kSecondsPerHour;
constexpr double kShortTonPerHour = kKilogramsPerShortTon / kSecondsPerHour;

constexpr std::array kMassUnits{kKilogram, kPound, kTonne, kShortTon, kGram};
constexpr std::array kProductUnits{kGram, kTonne};
constexpr std::array kLitreUnits{Unit{"l", "litres", 1.0 / kLitresPerCubicMetre, 1},
                                 Unit{"mL", "ml", 0.001 / kLitresPerCubicMetre, 0}};
constexpr std::array kLengthUnits{Unit{"cm", "cm", 0.01, 0}, Unit{"mm", "mm", 0.001, 0},
                                  Unit{"in", "in", kMetresPerInch, 1}};
constexpr std::array kLayerUnits{Unit{"mm", "mm", 0.001, 0}, Unit{"m", "m", 1.0, 2},
                                 Unit{"ft", "ft", kMetresPerFoot, 1}};
constexpr std::array kTemperatureUnits{Unit{"C", "c", 1.0, 0, 273.15},
                                       Unit{"F", "f", kKelvinPerFahrenheit, 0, 459.67}};
constexpr std::array kChopUnits{Unit{"cm", "cm", 0.01, 1}};
constexpr std::array kFractionUnits{Unit{"%", "percent", 0.01, 0}};
constexpr std::array kDurationUnits{Unit{"s", "s", 1.0, 0}, Unit{"h", "h", kSecondsPerHour, 1}};
constexpr Unit kPercent{"%", "percent", 0.01, 0};
constexpr Unit kPercentFine{"%", "percent", 0.01, 1};
constexpr Unit kMinute{"min", "min", kSecondsPerMinute, 0};
constexpr Unit kPerHour{"/h", "per_h", 1.0 / kSecondsPerHour, 2};

constexpr double kSquareFoot = kMetresPerFoot * kMetresPerFoot;
constexpr double kMilesPerHour = 1609.344 / kSecondsPerHour;

constexpr std::array kTable{
    UnitRow{Dimension::asFedMass, "mass as fed", {"t", "t", kKilogramsPerTonne, 1}, kShortTon, kMassUnits},
    UnitRow{Dimension::dryMass,
            "dry-matter mass",
            {"t DM", "t_dm", kKilogramsPerTonne, 1},
            {"ton DM", "ton_dm", kKilogramsPerShortTon, 1},
            kMassUnits},
    UnitRow{Dimension::machineMass, "machine mass", kTonne, {"lb", "lb", kKilogramsPerPound, 0}, kMassUnits},
    UnitRow{Dimension::length, "length", {"m", "m", 1.0, 2}, {"ft", "ft", kMetresPerFoot, 1}, kLengthUnits},
    UnitRow{Dimension::layerThickness,
            "layer thickness",
            {"cm", "cm", 0.01, 0},
            {"in", "in", kMetresPerInch, 1},
            kLayerUnits},
    UnitRow{Dimension::area, "area", {"m2", "m2", 1.0, 0}, {"ft2", "ft2", kSquareFoot, 0}, {}},
    UnitRow{
        Dimension::volume, "volume", {"m3", "m3", 1.0, 0}, {"ft3", "ft3", kCubicMetresPerCubicFoot, 0}, {}},
    UnitRow{Dimension::asFedDensity,
            "density as fed",
            {"kg/m3", "kg_m3", 1.0, 0},
            {"lb/ft3", "lb_ft3", kDensityPerPoundPerCubicFoot, 1},
            {}},
    UnitRow{Dimension::dryDensity,
            "dry-matter density",
            {"kg DM/m3", "kg_dm_m3", 1.0, 0},
            {"lb DM/ft3", "lb_dm_ft3", kDensityPerPoundPerCubicFoot, 1},
            {}},
    UnitRow{Dimension::asFedRate,
            "delivery",
            {"t/h", "t_per_h", kTonnePerHour, 0},
            {"ton/h", "ton_per_h", kShortTonPerHour, 0},
            {}},
    UnitRow{Dimension::dryRate,
            "delivery of dry matter",
            {"t DM/h", "t_dm_per_h", kTonnePerHour, 1},
            {"ton DM/h", "ton_dm_per_h", kShortTonPerHour, 1},
            {}},
    UnitRow{Dimension::dryMatter, "dry matter", kPercentFine, kPercentFine, {}},
    UnitRow{Dimension::share, "share of time", kPercent, kPercent, {}},
    UnitRow{Dimension::chance, "chance", kPercent, kPercent, {}},
    UnitRow{
        Dimension::porosity, "porosity", {"", "fraction", 1.0, 2}, {"", "fraction", 1.0, 2}, kFractionUnits},
    UnitRow{Dimension::loss, "loss of dry matter", kPercentFine, kPercentFine, {}},
    UnitRow{Dimension::shrink, "shrink", kPercentFine, kPercentFine, {}},
    UnitRow{Dimension::packingIntensity,
            "packing time",
            {"min/t", "min_per_t", kSecondsPerMinute / kKilogramsPerTonne, 2},
            {"min/ton", "min_per_ton", kSecondsPerMinute / kKilogramsPerShortTon, 2},
            {}},
    UnitRow{Dimension::duration, "time", kMinute, kMinute, kDurationUnits},
    UnitRow{
        Dimension::speed, "speed", {"km/h", "km_per_h", 1.0 / 3.6, 1}, {"mph", "mph", kMilesPerHour, 1}, {}},
    UnitRow{Dimension::slope, "slope", {":1", "run_per_rise", 1.0, 1}, {":1", "run_per_rise", 1.0, 1}, {}},
    UnitRow{Dimension::costRate, "cost of an hour", kPerHour, kPerHour, {}},
    UnitRow{
        Dimension::massPerRate,
        "packing mass per delivery",
        {"kg per t/h", "kg_per_t_per_h", kSecondsPerHour / kKilogramsPerTonne, 0},
        {"lb per ton/h", "lb_per_ton_per_h", kKilogramsPerPound* kSecondsPerHour / kKilogramsPerShortTon, 0},
        {}},
    UnitRow{Dimension::productMass,
            "mass of a product",
            {"kg", "kg", 1.0, 1},
            {"lb", "lb", kKilogramsPerPound, 1},
            kProductUnits},
    UnitRow{Dimension::productVolume,
            "volume of a product",
            {"L", "litres", 1.0 / kLitresPerCubicMetre, 1},
            {"gal", "gal", kCubicMetresPerGallon, 1},
            kLitreUnits},
    UnitRow{Dimension::dishMass, "weight of a dish", kGram, kGram, {}},
    UnitRow{Dimension::chopLength,
            "length of chop",
            {"mm", "mm", 0.001, 1},
            {"in", "in", kMetresPerInch, 2},
            kChopUnits},
    UnitRow{Dimension::temperature,
            "temperature",
            {"\u00B0C", "c", 1.0, 0, 273.15},
            {"\u00B0F", "f", kKelvinPerFahrenheit, 0, 459.67},
            kTemperatureUnits},
    UnitRow{Dimension::degreeDays,
            "degree days",
            {"\u00B0C d", "c_days", kSecondsPerDay, 0},
            {"\u00B0F d", "f_days", kKelvinPerFahrenheit* kSecondsPerDay, 0},
            {}},
    UnitRow{Dimension::dryingRate,
            "drying",
            {"%/d", "percent_per_day", 0.01 / kSecondsPerDay, 2},
            {"%/d", "percent_per_day", 0.01 / kSecondsPerDay, 2},
            {}},
};

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

std::string understood(const UnitRow& row) {
    std::string text{row.metric.symbol};
    const auto append = [&text](std::string_view symbol) {
        if (!symbol.empty()) text += (text.empty() ? "" : ", ") + std::string{symbol};
    };
    if (row.us.symbol != row.metric.symbol) append(row.us.symbol);
    for (const Unit& unit : row.also) {
        if (unit.symbol != row.metric.symbol && unit.symbol != row.us.symbol) append(unit.symbol);
    }
    return text;
}

const Unit* unitNamed(const UnitRow& row, std::string_view symbol) {
    if (symbol == row.metric.symbol) return &row.metric;
    if (symbol == row.us.symbol) return &row.us;
    for (const Unit& unit : row.also) {
        if (symbol == unit.symbol) return &unit;
    }
    return nullptr;
}

}  // namespace

std::span<const UnitRow> unitTable() {
    return kTable;
}

const UnitRow& unitsOf(Dimension dimension) {
    for (const UnitRow& row : kTable) {
        if (row.dimension == dimension) return row;
    }
    throw std::logic_error("a dimension without a row in the unit table");
}

std::string amountText(Amount amount, UnitSystem system) {
    const Unit& unit = unitOf(amount.dimension, system);
    std::string text = fixedText(unit.fromSi(amount.si), unit.decimals);
    if (!unit.symbol.empty()) text += ' ' + std::string{unit.symbol};
    return text;
}

Result<double> siFromText(Dimension dimension, std::string_view text, std::string_view field) {
    const UnitRow& row = unitsOf(dimension);
    const std::string_view whole = trimmed(text);
    if (whole.empty()) return fail(code::textEmpty, std::string{field}, understood(row));
    std::size_t split = whole.find_first_not_of("+-.,0123456789");
    if (split == std::string_view::npos) split = whole.size();
    const auto number = numberFromText(whole.substr(0, split));
    if (!number) return fail(code::textNotNumber, std::string{field}, std::string{whole});
    const std::string_view symbol = trimmed(whole.substr(split));
    const Unit* unit = unitNamed(row, symbol);
    if (unit == nullptr) {
        const Code code = symbol.empty() ? code::unitMissing : code::unitUnknown;
        return fail(code, std::string{field}, std::string{whole}, understood(row));
    }
    const double si = unit->toSi(*number);
    if (!std::isfinite(si)) return fail(code::valueNotFinite, std::string{field});
    return si;
}

}  // namespace treadwell
