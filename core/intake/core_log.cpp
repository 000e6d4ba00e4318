#include "core/intake/log_rows.h"
#include "core/intake/logs.h"

namespace treadwell::intake {

namespace {

/// Reads what the cell says into `target`; an empty cell leaves it.
template <class Value, class Read>
Result<void> readIfAny(const Row& row, Column column, std::optional<Value>& target, Read read) {
    if (row.text(column).empty()) return {};
    return read(column).map([&](Value value) { target = value; });
}

Result<void> readPlace(const Row& row, entries::Core& core) {
    const auto silo = row.silo();
    if (!silo) return Unexpected{silo.error()};
    core.silo = *silo;
    for (const auto& [column, target] :
         {std::pair{Column::along, &core.along}, std::pair{Column::across, &core.across}}) {
        const auto length = row.length(column);
        if (!length) return Unexpected{length.error()};
        *target = *length;
    }
    const auto length = [&](Column column) { return row.length(column); };
    auto read = readIfAny(row, Column::depth, core.depth, length);
    return read ? readIfAny(row, Column::height, core.height, length) : read;
}

Result<void> readDensity(const Row& row, entries::Core& core) {
    const auto length = [&](Column column) { return row.length(column); };
    const auto mass = [&](Column column) {
        return dishKilograms(row, column).map([](double kg) { return AsFedMass::fromKilograms(kg); });
    };
    const auto volume = [&](Column column) {
        const bool litres = row.columns().unitOf(column) == "l";
        return row.number(column).map(
            [=](double value) { return Volume::fromCubicMetres(litres ? value / 1000.0 : value); });
    };
    const auto density = [&](Column column) {
        return row.number(column).map(
            [](double value) { return DryDensity::fromKilogramsPerCubicMetre(value); });
    };
    const auto dryMatter = [&](Column column) {
        return fraction(row, column).map([](double value) { return DryMatter::fromFraction(value); });
    };
    Result<void> read = readIfAny(row, Column::dryMatter, core.dryMatter, dryMatter);
    if (read) read = readIfAny(row, Column::sampleMass, core.mass, mass);
    if (read) read = readIfAny(row, Column::volume, core.volume, volume);
    if (read) read = readIfAny(row, Column::diameter, core.diameter, length);
    if (read) read = readIfAny(row, Column::length, core.length, length);
    if (read) read = readIfAny(row, Column::density, core.density, density);
    return read;
}

Result<Proposal> coreTaken(const Row& row) {
    entries::Core core;
    if (const auto placed = readPlace(row, core); !placed) return Unexpected{placed.error()};
    if (!row.text(Column::origin).empty()) {
        const auto origin = row.word<entries::CoreOrigin>(Column::origin);
        if (!origin) return Unexpected{origin.error()};
        core.origin = *origin;
    }
    if (const auto read = readDensity(row, core); !read) return Unexpected{read.error()};
    return proposed(row, core);
}

}  // namespace

Result<Intake> readCores(std::string_view bytes, const Context& context) {
    constexpr std::array kWanted{Column::date,      Column::time,       Column::silo,   Column::along,
                                 Column::across,    Column::depth,      Column::height, Column::origin,
                                 Column::dryMatter, Column::sampleMass, Column::volume, Column::diameter,
                                 Column::length,    Column::density};
    constexpr std::array kRequired{Column::time, Column::along, Column::across};
    return readList(bytes, context, kWanted, kRequired, coreTaken);
}

}  // namespace treadwell::intake
