#include "core/intake/log_rows.h"
#include "core/intake/logs.h"

namespace treadwell::intake {

namespace {

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
    return firstFailure(readIfAny(row, Column::depth, core.depth, length),
                        readIfAny(row, Column::height, core.height, length));
}

Result<AsFedMass> sampleMass(const Row& row, Column column) {
    return dishKilograms(row, column).map([](double kg) { return AsFedMass::fromKilograms(kg); });
}

Result<Volume> volume(const Row& row, Column column) {
    const bool litres = row.columns().unitOf(column) == "l";
    return row.number(column).map(
        [=](double value) { return Volume::fromCubicMetres(litres ? value / 1000.0 : value); });
}

Result<DryDensity> density(const Row& row, Column column) {
    return row.number(column).map([](double value) { return DryDensity::fromKilogramsPerCubicMetre(value); });
}

Result<void> readDensity(const Row& row, entries::Core& core) {
    return firstFailure(readIfAny(row, Column::dryMatter, core.dryMatter, dryMatter),
                        readIfAny(row, Column::sampleMass, core.mass, sampleMass),
                        readIfAny(row, Column::volume, core.volume, volume),
                        readIfAny(row, Column::diameter, core.diameter, length),
                        readIfAny(row, Column::length, core.length, length),
                        readIfAny(row, Column::density, core.density, density));
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
