#pragma once

#include "tests/support/season_maker.h"

namespace treadwell::bench {

using namespace testing_support;

inline constexpr int kEntries = 100'000;
inline constexpr int kDays = 60;

/// A silo of this length and three tractors that pack in it.
inline std::vector<entries::Body> packedSilo(Length length) {
    farm::Silo silo = someSilo();
    silo.length = length;
    std::vector<entries::Body> bodies{entries::SiloDefined{silo}};
    for (std::uint8_t number = 1; number <= 3; ++number) {
        bodies.push_back(entries::TractorDefined{someTractor(number, 8 + 2 * number)});
        bodies.push_back(someWork(number, farm::Activity::packing, 0.7));
    }
    return bodies;
}

inline entries::Entry loadNumber(std::uint32_t number, Instant happened) {
    entries::Entry entry;
    entry.header.id.value.bytes[0] = 9;
    for (std::size_t i = 0; i < 4; ++i) {
        entry.header.id.value.bytes[12 + i] = static_cast<std::uint8_t>(number >> (24 - 8 * i));
    }
    entry.header.kind = entries::Load::kKind;
    entry.header.deviceSequence = number;
    entry.header.lamport = number;
    entry.header.happened = happened;
    entry.body = someLoad(12);
    return entry;
}

inline const std::vector<entries::Entry>& manyEntries() {
    static const std::vector<entries::Entry> kMany = [] {
        SeasonMaker maker;
        const Instant start = at("2026-07-01T06:00:00Z");
        maker.add(entries::SeasonStarted{"Farm", "Europe/Berlin"}, start);
        maker.add(entries::SiloDefined{someSilo()}, start);
        maker.add(entries::TractorDefined{someTractor(1, 14)}, start);
        maker.add(someWork(1, farm::Activity::packing), start);
        std::vector<entries::Entry> many = std::move(maker.entries);
        for (int i = static_cast<int>(many.size()); i < kEntries; ++i) {
            const auto day = std::chrono::days{i * kDays / kEntries};
            const auto second = std::chrono::seconds{(i % (kEntries / kDays)) * 30};
            many.push_back(loadNumber(static_cast<std::uint32_t>(i), start + day + second));
        }
        return many;
    }();
    return kMany;
}

}  // namespace treadwell::bench
