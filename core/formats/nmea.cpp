#include "core/formats/nmea.h"

#include "core/base/number_text.h"

#include <algorithm>
#include <cmath>

namespace treadwell::formats {

namespace {

using std::chrono::microseconds;
using std::chrono::sys_days;

constexpr microseconds kHalfDay = std::chrono::hours{12};

/// Two digits as a number.
std::optional<unsigned> twoDigits(std::string_view text, std::size_t at) {
    if (text.size() < at + 2 || !isDigit(text[at]) || !isDigit(text[at + 1])) return std::nullopt;
    return static_cast<unsigned>(text[at] - '0') * 10U + static_cast<unsigned>(text[at + 1] - '0');
}

/// `hhmmss` or `hhmmss.ss`; a leap second is the last second's end.
std::optional<microseconds> timeOfDayFrom(std::string_view text) {
    const auto hours = twoDigits(text, 0), minutes = twoDigits(text, 2), seconds = twoDigits(text, 4);
    if (!hours || !minutes || !seconds || *hours > 23 || *minutes > 59 || *seconds > 60) return std::nullopt;
    std::int64_t fraction_us = 0;
    if (text.size() > 6) {
        if (text[6] != '.') return std::nullopt;
        std::int64_t unit_us = 100'000;
        for (const char c : text.substr(7)) {
            if (!isDigit(c)) return std::nullopt;
            fraction_us += (c - '0') * unit_us;
            unit_us /= 10;
        }
    }
    const std::int64_t whole_s = (*hours * 60 + *minutes) * 60 + *seconds;
    return microseconds{whole_s * 1'000'000 + fraction_us};
}

std::optional<sys_days> dateOf(unsigned day, unsigned month, int year) {
    const std::chrono::year_month_day date{std::chrono::year{year}, std::chrono::month{month},
                                           std::chrono::day{day}};
    if (!date.ok()) return std::nullopt;
    return sys_days{date};
}

/// `ddmm.mmmm` or `dddmm.mmmm` and its hemisphere.
std::optional<double> degreesFrom(std::string_view text, std::string_view side, char positive,
                                  char negative) {
    const std::size_t dot = std::min(text.find('.'), text.size());
    if (dot < 3 || dot > 5 || side.size() != 1) return std::nullopt;
    if (!std::all_of(text.begin(), text.end(), [](char c) { return isDigit(c) || c == '.'; }))
        return std::nullopt;
    const auto degrees = integerFromText(text.substr(0, dot - 2));
    const auto minutes = numberFromText(text.substr(dot - 2));
    if (!degrees || !minutes || *minutes >= 60.0) return std::nullopt;
    if (side[0] != positive && side[0] != negative) return std::nullopt;
    const double size = static_cast<double>(*degrees) + *minutes / 60.0;
    return side[0] == positive ? size : -size;
}

bool placeFrom(std::string_view latitude, std::string_view northOrSouth, std::string_view longitude,
               std::string_view eastOrWest, Fix& fix) {
    const auto north = degreesFrom(latitude, northOrSouth, 'N', 'S');
    const auto east = degreesFrom(longitude, eastOrWest, 'E', 'W');
    if (!north || !east) return false;
    fix.latitude_deg = *north;
    fix.longitude_deg = *east;
    return true;
}

bool isOnEarth(const Fix& fix) {
    return std::abs(fix.latitude_deg) <= 90.0 && std::abs(fix.longitude_deg) <= 180.0;
}

/// Field 6 of GGA; receivers write codes of their own beyond the standard's.
std::optional<FixQuality> qualityFromGga(std::string_view code) {
    if (code == "1") return FixQuality::autonomous;
    if (code == "2" || code == "3") return FixQuality::differential;
    if (code == "4") return FixQuality::rtkFixed;
    if (code == "5") return FixQuality::rtkFloat;
    if (code == "6") return FixQuality::deadReckoning;
    if (code == "7" || code == "8") return std::nullopt;
    return FixQuality::untold;
}

/// Field 12 of RMC; older files have none.
std::optional<FixQuality> qualityFromRmc(std::string_view mode) {
    if (mode == "A") return FixQuality::autonomous;
    if (mode == "D" || mode == "P") return FixQuality::differential;
    if (mode == "R") return FixQuality::rtkFixed;
    if (mode == "F") return FixQuality::rtkFloat;
    if (mode == "E") return FixQuality::deadReckoning;
    if (mode == "M" || mode == "S") return std::nullopt;
    return FixQuality::untold;
}

std::optional<unsigned> hexDigit(char c) {
    if (isDigit(c)) return static_cast<unsigned>(c - '0');
    if (c >= 'A' && c <= 'F') return static_cast<unsigned>(c - 'A') + 10U;
    if (c >= 'a' && c <= 'f') return static_cast<unsigned>(c - 'a') + 10U;
    return std::nullopt;
}

}  // namespace

void NmeaReader::take(std::string_view bytes) {
    while (!bytes.empty()) {
        const std::size_t end = bytes.find('\n');
        const std::string_view part = bytes.substr(0, end);
        const bool whole = end != std::string_view::npos;
        if (m_pending.empty() && whole && !m_tooLong) {
            takeLine(part);
        } else {
            if (m_pending.size() + part.size() > kLongestSentence) {
                m_tooLong = true;
                m_pending.clear();
            }
            if (!m_tooLong) m_pending += part;
            if (whole) finishLine();
        }
        if (!whole) return;
        bytes.remove_prefix(end + 1);
    }
}

void NmeaReader::finishLine() {
    if (m_tooLong) {
        ++m_line;
        reject(TrackFault::cut);
    } else {
        takeLine(m_pending);
    }
    m_tooLong = false;
    m_pending.clear();
}

void NmeaReader::finish() {
    if (m_tooLong || !m_pending.empty()) finishLine();
    settleWaiting(std::nullopt);
}

void NmeaReader::takeLine(std::string_view line) {
    ++m_line;
    if (line.size() > kLongestSentence) return reject(TrackFault::cut);
    while (!line.empty() && (line.back() == '\r' || line.back() == ' ')) line.remove_suffix(1);
    if (line.empty()) return;
    const std::size_t begin = line.rfind('$');  // loggers write times of their own before it
    if (begin == std::string_view::npos) {
        if (line.front() != '!') reject(TrackFault::unreadable);
        return;
    }
    line.remove_prefix(begin + 1);
    const std::size_t star = line.find('*');
    if (star == std::string_view::npos) return takeSentence(line, false);
    const std::string_view body = line.substr(0, star), sum = line.substr(star + 1);
    unsigned found = 0;
    for (const char c : body) found ^= static_cast<unsigned char>(c);
    const auto high = sum.size() == 2 ? hexDigit(sum[0]) : std::nullopt;
    const auto low = sum.size() == 2 ? hexDigit(sum[1]) : std::nullopt;
    if (!high || !low || *high * 16U + *low != found) return reject(TrackFault::checksumWrong);
    takeSentence(body, true);
}

void NmeaReader::takeSentence(std::string_view body, bool checked) {
    Fields fields{};
    std::size_t count = 0;
    for (std::string_view rest = body; count < fields.size();) {
        const std::size_t comma = rest.find(',');
        fields[count++] = rest.substr(0, comma);
        if (comma == std::string_view::npos) break;
        rest.remove_prefix(comma + 1);
    }
    const std::string_view address = fields[0];
    if (address.empty()) return reject(TrackFault::unreadable);
    if (address.size() != 5 || address.front() == 'P') return;
    const std::string_view kind = address.substr(2);
    const std::size_t fewest = kind == "GGA" ? 10 : kind == "RMC" ? 10 : kind == "ZDA" ? 5 : 0;
    if (count < fewest) return reject(TrackFault::unreadable);
    if (kind == "GGA") takeGga(fields, checked);
    if (kind == "RMC") takeRmc(fields, checked);
    if (kind == "ZDA") takeZda(fields);
}

void NmeaReader::takeGga(const Fields& fields, bool checked) {
    m_hasGga = true;
    const auto time = timeOfDayFrom(fields[1]);
    settleWaiting(time);
    if (fields[6] == "0") {
        m_lost = true;
        return reject(TrackFault::noFix);
    }
    Fix fix;
    const auto quality = qualityFromGga(fields[6]);
    if (!quality) return reject(TrackFault::notARecord);
    if (!time) return reject(TrackFault::noTime);
    if (!placeFrom(fields[2], fields[3], fields[4], fields[5], fix)) return reject(TrackFault::unreadable);
    if (!isOnEarth(fix)) return reject(TrackFault::outOfRange);
    fix.quality = *quality;
    fix.checked = checked;
    fix.hdop = numberFromText(fields[8]);
    if (const auto height_m = numberFromText(fields[9])) fix.height = Length::fromMetres(*height_m);
    if (!m_date) {
        m_waiting = Waiting{fix, *time, false};
        return;
    }
    fix.at = instantOf(*time);
    give(fix);
}

void NmeaReader::takeRmc(const Fields& fields, bool checked) {
    const auto time = timeOfDayFrom(fields[1]);
    const auto day = twoDigits(fields[9], 0), month = twoDigits(fields[9], 2), year = twoDigits(fields[9], 4);
    if (time && day && month && year && fields[9].size() == 6) {
        // Two digits of the year: this century until 79.
        const int whole = static_cast<int>(*year) + (*year < 80 ? 2000 : 1900);
        if (const auto date = dateOf(*day, *month, whole)) setDate(*date, *time);
    }
    if (m_hasGga) return;
    settleWaiting(std::nullopt);
    if (fields[2] != "A") {
        m_lost = true;
        return reject(TrackFault::noFix);
    }
    Fix fix;
    const auto quality = qualityFromRmc(fields[12]);
    if (!quality) return reject(TrackFault::notARecord);
    if (!time) return reject(TrackFault::noTime);
    if (!m_date) return reject(TrackFault::noDate);
    if (!placeFrom(fields[3], fields[4], fields[5], fields[6], fix)) return reject(TrackFault::unreadable);
    if (!isOnEarth(fix)) return reject(TrackFault::outOfRange);
    fix.quality = *quality;
    fix.checked = checked;
    fix.at = instantOf(*time);
    m_waiting = Waiting{fix, *time, true};
}

void NmeaReader::takeZda(const Fields& fields) {
    const auto time = timeOfDayFrom(fields[1]);
    const auto day = twoDigits(fields[2], 0), month = twoDigits(fields[3], 0);
    const auto year = integerFromText(fields[4]);
    if (!time || !day || !month || !year || *year < 1980 || *year > 9999) return;
    if (const auto date = dateOf(*day, *month, static_cast<int>(*year))) setDate(*date, *time);
}

void NmeaReader::setDate(sys_days date, microseconds timeOfDay) {
    m_date = date;
    m_timeOfDay = timeOfDay;
    if (!m_waiting || m_waiting->hasDate) return;
    m_waiting->hasDate = true;
    m_waiting->fix.at = instantOf(m_waiting->timeOfDay);
    settleWaiting(std::nullopt);
}

Instant NmeaReader::instantOf(microseconds timeOfDay) {
    if (timeOfDay + kHalfDay < m_timeOfDay) {
        *m_date += std::chrono::days{1};
    } else if (timeOfDay > m_timeOfDay + kHalfDay) {
        return *m_date - std::chrono::days{1} + timeOfDay;  // late, from before midnight
    }
    m_timeOfDay = timeOfDay;
    return *m_date + timeOfDay;
}

void NmeaReader::settleWaiting(std::optional<microseconds> replacedAt) {
    if (!m_waiting) return;
    const Waiting waiting = *m_waiting;
    m_waiting.reset();
    if (!waiting.hasDate) return reject(TrackFault::noDate);
    if (replacedAt == waiting.timeOfDay) return;
    give(waiting.fix);
}

void NmeaReader::give(Fix fix) {
    fix.beginsSegment = m_lost;
    m_lost = false;
    m_sink.fix(fix);
}

}  // namespace treadwell::formats
