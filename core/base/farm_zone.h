#pragma once

#include "core/base/error.h"

#include <string>

namespace date {
class time_zone;
}

namespace treadwell {

/// The farm's time zone, an IANA name. Local days and the clock on the wall follow it, never the machine's
/// zone.
class FarmZone {
  public:
    [[nodiscard]] static Result<FarmZone> named(const std::string& ianaName);
    /// UTC, which is always there.
    FarmZone();

    [[nodiscard]] const std::string& name() const noexcept { return m_name; }
    [[nodiscard]] LocalDay dayOf(Instant at) const;
    [[nodiscard]] WallTime localTime(Instant at) const;
    [[nodiscard]] std::chrono::minutes offsetAt(Instant at) const;

    /// The first instant of the local day; where midnight is skipped, the first that exists.
    [[nodiscard]] Instant startOf(LocalDay day) const;

    /// The instant that the wall clock showed. A time shown twice (clocks go back) is the earlier one, a
    /// skipped one is the instant of the jump; `ambiguous` tells of either.
    struct WallInstant {
        Instant at;
        bool ambiguous;
    };
    [[nodiscard]] WallInstant instantOf(WallTime wall) const;

    friend bool operator==(const FarmZone& a, const FarmZone& b) { return a.m_name == b.m_name; }

  private:
    explicit FarmZone(const date::time_zone* zone);

    const date::time_zone* m_zone;
    std::string m_name;
};

/// `14:05`, on the farm's wall clock.
[[nodiscard]] std::string clockText(const FarmZone& zone, Instant at);

}  // namespace treadwell
