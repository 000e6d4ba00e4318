#pragma once

#include "core/entries/body.h"
#include "tests/support/uuid_of.h"

#include <vector>

namespace treadwell::testing_support {

template <class Tag>
[[nodiscard]] Id<Tag> idOf(std::uint8_t number) {
    return {uuidOf(number)};
}

/// The silo of a season that has one.
const farm::SiloId kBunker = idOf<farm::SiloTag>(1);

/// Makes entries as one device would write them: ids, sequence and lamport count up.
class SeasonMaker {
  public:
    explicit SeasonMaker(std::uint8_t device = 1) : m_device(device) {}

    entries::EntryId add(entries::Body body, Instant happened, std::optional<entries::EntryId> target = {}) {
        entries::Entry entry;
        entry.header.id.value.bytes[0] = m_device;
        entry.header.id.value.bytes[14] = static_cast<std::uint8_t>(entries.size() >> 8);
        entry.header.id.value.bytes[15] = static_cast<std::uint8_t>(entries.size());
        entry.header.device.value.bytes[15] = m_device;
        entry.header.deviceSequence = static_cast<std::int64_t>(entries.size()) + 1;
        entry.header.lamport = entry.header.deviceSequence;
        const auto [kind, version] = entries::kindOf(body);
        entry.header.kind = kind;
        entry.header.kindVersion = version;
        entry.header.happened = happened;
        entry.header.recorded = happened;
        entry.header.target = target;
        entry.body = std::move(body);
        entries.push_back(entry);
        return entry.header.id;
    }

    std::vector<entries::Entry> entries;

  private:
    std::uint8_t m_device;
};

[[nodiscard]] inline farm::Silo someSilo(std::uint8_t number = 1) {
    farm::Silo silo;
    silo.id = idOf<farm::SiloTag>(number);
    silo.name = "Bunker " + std::to_string(number);
    silo.length = Length::fromMetres(60);
    silo.width = Length::fromMetres(14);
    silo.wallHeight = Length::fromMetres(3.5);
    silo.plannedDepth = Length::fromMetres(3);
    return silo;
}

/// The same, filled in level layers.
[[nodiscard]] inline farm::Silo someLifts() {
    farm::Silo silo = someSilo();
    silo.filling = farm::FillingWay::lifts;
    return silo;
}

[[nodiscard]] inline farm::Tractor someTractor(std::uint8_t number, double tonnes) {
    farm::Tractor tractor;
    tractor.id = idOf<farm::TractorTag>(number);
    tractor.name = "Tractor " + std::to_string(number);
    tractor.mass = MachineMass::fromTonnes(tonnes);
    return tractor;
}

[[nodiscard]] inline entries::Load someLoad(double tonnes, std::uint8_t silo = 1) {
    entries::Load load;
    load.silo = idOf<farm::SiloTag>(silo);
    load.mass = AsFedMass::fromTonnes(tonnes);
    load.source = entries::MassSource::weighed;
    return load;
}

[[nodiscard]] inline entries::TractorWork someWork(std::uint8_t tractor, farm::Activity activity,
                                                   double share = 1.0, std::uint8_t silo = 1) {
    return {idOf<farm::TractorTag>(tractor), activity, idOf<farm::SiloTag>(silo), Share::fromFraction(share)};
}

[[nodiscard]] inline Instant at(const char* iso) {
    return instantFromIso8601(iso).value();
}

/// 1,400 t at 35 % in level layers, of one day.
[[nodiscard]] inline SeasonMaker filledLifts() {
    SeasonMaker maker;
    const Instant begin = at("2026-09-15T06:00:00Z");
    maker.add(entries::SeasonStarted{"Lindenhof", "UTC"}, begin);
    maker.add(entries::SiloDefined{someLifts()}, begin);
    maker.add(entries::TractorDefined{someTractor(1, 14)}, begin);
    maker.add(someWork(1, farm::Activity::packing), begin);
    maker.add(entries::DryMatterSample{DryMatter::fromPercent(35), {}, {}, {}, {}}, begin);
    for (int i = 0; i < 100; ++i) maker.add(someLoad(14), begin + i * std::chrono::minutes{6});
    return maker;
}

}  // namespace treadwell::testing_support
