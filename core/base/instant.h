#pragma once

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace treadwell {

/// A point in time, UTC, to the microsecond. `now` is always an argument; only a Clock reads the machine's
/// time.
using Instant = std::chrono::sys_time<std::chrono::microseconds>;

/// A span of time in seconds.
using Seconds = std::chrono::duration<double>;

/// What the clock on the farm's wall shows.
using WallTime = std::chrono::local_time<std::chrono::microseconds>;

using LocalDay = std::chrono::year_month_day;
[[nodiscard]] constexpr LocalDay dayAfter(LocalDay day) noexcept {
    return LocalDay{std::chrono::local_days{day} + std::chrono::days{1}};
}

[[nodiscard]] constexpr Instant instantFromMicroseconds(std::int64_t us) noexcept {
    return Instant{std::chrono::microseconds{us}};
}

[[nodiscard]] constexpr std::int64_t toMicroseconds(Instant at) noexcept {
    return at.time_since_epoch().count();
}

/// ISO 8601 in UTC, `2026-09-15T14:25:30Z`, with a fraction only where there is one.
[[nodiscard]] std::string toIso8601(Instant at);

/// Reads `2026-09-15T14:25:30[.ffffff](Z|+hh:mm|-hh:mm)`. Text without an offset is refused: an instant needs
/// one.
[[nodiscard]] std::optional<Instant> instantFromIso8601(std::string_view text);

[[nodiscard]] std::string toIso8601(LocalDay day);
[[nodiscard]] std::optional<LocalDay> dayFromIso8601(std::string_view text);

/// The machine's time as a thing that can be handed in, so that tests and replays own it.
class Clock {
  public:
    virtual ~Clock() = default;
    [[nodiscard]] virtual Instant now() const = 0;
    /// Since some moment, sleep included; setting the clock does not change it.
    [[nodiscard]] virtual std::chrono::microseconds elapsed() const { return now().time_since_epoch(); }
};

class SystemClock final : public Clock {
  public:
    [[nodiscard]] Instant now() const override;
    [[nodiscard]] std::chrono::microseconds elapsed() const override;
};

}  // namespace treadwell
