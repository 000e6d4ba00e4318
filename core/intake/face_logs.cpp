#include "core/formats/mass_unit.h"
#include "core/intake/log_rows.h"
#include "core/intake/names.h"
#include "core/intake/sample_logs.h"

namespace treadwell::intake {

namespace {

Result<AsFedMass> massOfFeed(const Row& row) {
    const std::string_view unit = row.columns().unitOf(Column::sampleMass);
    if (unit.empty()) return Unexpected{row.wrong(Column::sampleMass, code::massUnitMissing)};
    const auto known = formats::massUnitFromWord(plainWords(unit));
    if (!known) return Unexpected{row.wrong(Column::sampleMass, code::massUnitUnknown, std::string{unit})};
    return row.number(Column::sampleMass).map([&](double value) { return formats::massOf(value, *known); });
}

Result<Proposal> removal(const Row& row) {
    entries::FeedRemoved removed;
    const auto silo = row.silo();
    if (!silo) return Unexpected{silo.error()};
    removed.silo = *silo;
    const auto mass = massOfFeed(row);
    if (!mass) return Unexpected{mass.error()};
    removed.mass = *mass;
    const auto read = firstFailure(readIfAny(row, Column::dryMatter, removed.dryMatter, dryMatter),
                                   readIfAny(row, Column::face, removed.face, length));
    if (!read) return Unexpected{read.error()};
    return proposed(row, removed);
}

Result<Proposal> faceTemperature(const Row& row) {
    entries::FaceTemperature seen;
    const auto silo = row.silo();
    if (!silo) return Unexpected{silo.error()};
    seen.silo = *silo;
    const auto behind = temperature(row, Column::behindFace);
    if (!behind) return Unexpected{behind.error()};
    const auto core = temperature(row, Column::core);
    if (!core) return Unexpected{core.error()};
    seen.behindFace = *behind;
    seen.core = *core;
    const auto read = firstFailure(readIfAny(row, Column::across, seen.across, length),
                                   readIfAny(row, Column::height, seen.height, length));
    if (!read) return Unexpected{read.error()};
    return proposed(row, seen);
}

}  // namespace

Result<Intake> readRemovals(std::string_view bytes, const Context& context) {
    constexpr std::array kWanted{Column::date,       Column::time,      Column::silo,
                                 Column::sampleMass, Column::dryMatter, Column::face};
    constexpr std::array kRequired{Column::time, Column::sampleMass};
    return readList(bytes, context, kWanted, kRequired, removal);
}

Result<Intake> readFaceTemperatures(std::string_view bytes, const Context& context) {
    constexpr std::array kWanted{Column::date, Column::time,   Column::silo,  Column::behindFace,
                                 Column::core, Column::across, Column::height};
    constexpr std::array kRequired{Column::time, Column::behindFace, Column::core};
    return readList(bytes, context, kWanted, kRequired, faceTemperature);
}

}  // namespace treadwell::intake
