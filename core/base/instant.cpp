#include "core/base/instant.h"

#include "core/base/number_text.h"

#include <array>
#include <charconv>
#include <cstdio>
#include <ctime>

namespace treadwell {

namespace {

using namespace std::chrono;

/// Consumes exactly `digits` decimal digits.
std::optional<int> takeDigits(std::string_view& text, std::size_t digits) {
    if (text.size() < digits) return std::nullopt;
    int value = 0;
    const char* end = text.data() + digits;
    const auto [stop, code] = std::from_chars(text.data(), end, value);
    if (code != std::errc{} || stop != end || text.front() == '-') return std::nullopt;
    text.remove_prefix(digits);
    return value;
}

bool takeChar(std::string_view& text, char wanted) {
    if (text.empty() || text.front() != wanted) return false;
    text.remove_prefix(1);
    return true;
}

std::optional<LocalDay> takeDay(std::string_view& text) {
    const auto y = takeDigits(text, 4);
    if (!y || !takeChar(text, '-')) return std::nullopt;
    const auto m = takeDigits(text, 2);
    if (!m || !takeChar(text, '-')) return std::nullopt;
    const auto d = takeDigits(text, 2);
    if (!d) return std::nullopt;
    const LocalDay date{year{*y}, month{static_cast<unsigned>(*m)}, day{static_cast<unsigned>(*d)}};
    if (!date.ok()) return std::nullopt;
    return date;
}

std::optional<std::chrono::microseconds> takeFraction(std::string_view& text) {
    if (!takeChar(text, '.')) return std::chrono::microseconds{0};
    std::int64_t us = 0;
    std::int64_t scale = 100'000;
    std::size_t digits = 0;
    while (!text.empty() && isDigit(text.front())) {
        us += scale * (text.front() - '0');
        scale /= 10;
        ++digits;
        text.remove_prefix(1);
    }
    if (digits == 0 || digits > 9) return std::nullopt;
    return std::chrono::microseconds{us};
}

std::optional<minutes> takeOffset(std::string_view& text) {
    if (takeChar(text, 'Z') || takeChar(text, 'z')) return minutes{0};
    const bool west = !text.empty() && text.front() == '-';
    if (!takeChar(text, west ? '-' : '+')) return std::nullopt;
    const auto h = takeDigits(text, 2);
    if (!h) return std::nullopt;
    takeChar(text, ':');
    const auto m = takeDigits(text, 2);
    if (!m || *h > 18 || *m > 59) return std::nullopt;
    const minutes offset{*h * 60 + *m};
    return west ? -offset : offset;
}

}  // namespace

std::string toIso8601(Instant at) {
    const auto midnight = floor<days>(at);
    const LocalDay date{midnight};
    const hh_mm_ss<std::chrono::microseconds> time{at - midnight};
    std::array<char, 40> text{};
    int length =
        std::snprintf(text.data(), text.size(), "%04d-%02u-%02uT%02d:%02d:%02d",
                      static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                      static_cast<unsigned>(date.day()), static_cast<int>(time.hours().count()),
                      static_cast<int>(time.minutes().count()), static_cast<int>(time.seconds().count()));
    std::string result(text.data(), static_cast<std::size_t>(length));
    if (const auto us = time.subseconds().count(); us != 0) {
        length = std::snprintf(text.data(), text.size(), ".%06d", static_cast<int>(us));
        result.append(text.data(), static_cast<std::size_t>(length));
        while (result.back() == '0') result.pop_back();
    }
    return result + 'Z';
}

std::optional<Instant> instantFromIso8601(std::string_view text) {
    const auto date = takeDay(text);
    if (!date || (!takeChar(text, 'T') && !takeChar(text, ' '))) return std::nullopt;
    const auto h = takeDigits(text, 2);
    if (!h || !takeChar(text, ':')) return std::nullopt;
    const auto m = takeDigits(text, 2);
    if (!m) return std::nullopt;
    std::optional<int> s = 0;
    std::optional<std::chrono::microseconds> us = std::chrono::microseconds{0};
    if (takeChar(text, ':')) {
        s = takeDigits(text, 2);
        us = takeFraction(text);
    }
    if (!s || !us || *h > 23 || *m > 59 || *s > 59) return std::nullopt;
    const auto offset = takeOffset(text);
    if (!offset || !text.empty()) return std::nullopt;
    const Instant at = Instant{sys_days{*date}} + hours{*h} + minutes{*m} + seconds{*s} + *us - *offset;
    // The offset may carry it out of the four-digit years that can be written.
    const year written = LocalDay{floor<days>(at)}.year();
    if (written < year{0} || written > year{9999}) return std::nullopt;
    return at;
}

std::string toIso8601(LocalDay day) {
    std::array<char, 16> text{};
    const int length = std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", static_cast<int>(day.year()),
                                     static_cast<unsigned>(day.month()), static_cast<unsigned>(day.day()));
    return {text.data(), static_cast<std::size_t>(length)};
}

std::optional<LocalDay> dayFromIso8601(std::string_view text) {
    const auto date = takeDay(text);
    if (!date || !text.empty()) return std::nullopt;
    return date;
}

std::chrono::microseconds SystemClock::elapsed() const {
    timespec time{};
    ::clock_gettime(CLOCK_BOOTTIME, &time);
    return std::chrono::duration_cast<std::chrono::microseconds>(std::chrono::seconds{time.tv_sec} +
                                                                 std::chrono::nanoseconds{time.tv_nsec});
}

Instant SystemClock::now() const {
    return floor<std::chrono::microseconds>(system_clock::now());
}

}  // namespace treadwell
