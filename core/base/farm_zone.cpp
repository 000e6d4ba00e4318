#include "core/base/farm_zone.h"

#include "core/base/codes.h"

#include <date/tz.h>

#include <array>
#include <cstdio>

namespace treadwell {

using namespace std::chrono;

namespace {

// The date library carries its own local clock; both count microseconds from the same epoch.
date::local_time<microseconds> toDate(WallTime wall) {
    return date::local_time<microseconds>{wall.time_since_epoch()};
}

}  // namespace

Result<FarmZone> FarmZone::named(const std::string& ianaName) {
    try {
        return FarmZone{date::locate_zone(ianaName)};
    } catch (const std::runtime_error&) {
        return fail(code::zoneUnknown, "zone", ianaName);
    }
}

FarmZone::FarmZone() : FarmZone(date::locate_zone("Etc/UTC")) {}

FarmZone::FarmZone(const date::time_zone* zone) : m_zone(zone), m_name(zone->name()) {}

WallTime FarmZone::localTime(Instant at) const {
    return WallTime{m_zone->to_local(at).time_since_epoch()};
}

LocalDay FarmZone::dayOf(Instant at) const {
    return LocalDay{local_days{floor<days>(localTime(at)).time_since_epoch()}};
}

minutes FarmZone::offsetAt(Instant at) const {
    return duration_cast<minutes>(m_zone->get_info(at).offset);
}

FarmZone::WallInstant FarmZone::instantOf(WallTime wall) const {
    const auto local = toDate(wall);
    const date::local_info info = m_zone->get_info(local);
    const bool plain = info.result == date::local_info::unique;
    return {m_zone->to_sys(local, date::choose::earliest), !plain};
}

Instant FarmZone::startOf(LocalDay day) const {
    return instantOf(WallTime{local_days{day}}).at;
}

std::string clockText(const FarmZone& zone, Instant at) {
    const auto wall = zone.localTime(at);
    const hh_mm_ss time{floor<minutes>(wall - floor<days>(wall))};
    std::array<char, 8> text{};
    const int length =
        std::snprintf(text.data(), text.size(), "%02d:%02d", static_cast<int>(time.hours().count()) % 24,
                      static_cast<int>(time.minutes().count()) % 60);
    return {text.data(), static_cast<std::size_t>(length)};
}

}  // namespace treadwell
