#include "core/intake/wall_clock.h"

#include "core/base/number_text.h"
#include "core/intake/codes.h"
#include "core/intake/names.h"

namespace treadwell::intake {

namespace {

struct DateParts {
    int first, second, year;
    char sign;
    bool yearFirst;
};

std::optional<int> digits(std::string_view text, std::size_t fewest, std::size_t most) {
    if (text.size() < fewest || text.size() > most) return std::nullopt;
    if (text.find_first_not_of("0123456789") != std::string_view::npos) return std::nullopt;
    return static_cast<int>(*integerFromText(text));
}

std::optional<DateParts> dateParts(std::string_view text) {
    const std::size_t split = text.find_first_of("-./");
    if (split == std::string_view::npos) return std::nullopt;
    const char sign = text[split];
    const std::size_t again = text.find(sign, split + 1);
    if (again == std::string_view::npos) return std::nullopt;
    const std::string_view a = text.substr(0, split);
    const std::string_view b = text.substr(split + 1, again - split - 1);
    const std::string_view c = text.substr(again + 1);
    if (const auto year = digits(a, 4, 4)) {
        const auto month = digits(b, 1, 2);
        const auto day = digits(c, 1, 2);
        if (!month || !day) return std::nullopt;
        return DateParts{*month, *day, *year, sign, true};
    }
    const auto first = digits(a, 1, 2);
    const auto second = digits(b, 1, 2);
    const auto year = c.size() == 2 ? digits(c, 2, 2) : digits(c, 4, 4);
    if (!first || !second || !year) return std::nullopt;
    return DateParts{*first, *second, c.size() == 2 ? 2000 + *year : *year, sign, false};
}

// The date's own part of a cell that may hold date and time.
std::string_view datePart(std::string_view text) {
    return text.substr(0, text.find_first_of(" T"));
}

}  // namespace

Result<DateOrder> dateOrderOf(std::span<const formats::CsvRecord> records, std::size_t column) {
    bool dayFirst = false;
    bool monthFirst = false;
    const formats::CsvRecord* doubtful = nullptr;
    for (const formats::CsvRecord& record : records) {
        if (column >= record.cells.size()) continue;
        const auto parts = dateParts(datePart(record.cells[column]));
        if (!parts || parts->yearFirst || parts->sign == '.' || parts->first == parts->second) continue;
        if (doubtful == nullptr) doubtful = &record;
        dayFirst = dayFirst || parts->first > 12;
        monthFirst = monthFirst || parts->second > 12;
    }
    if (doubtful != nullptr && dayFirst == monthFirst) {
        Error error{{code::dateOrderAmbiguous, {doubtful->cells[column]}},
                    "dateOrder",
                    {{}, doubtful->line, static_cast<std::int64_t>(column) + 1}};
        return Unexpected{std::move(error)};
    }
    return monthFirst ? DateOrder::monthFirst : DateOrder::dayFirst;
}

std::optional<LocalDay> dayFromText(std::string_view text, DateOrder order) {
    const auto parts = dateParts(text);
    if (!parts) return std::nullopt;
    const bool monthFirst = parts->yearFirst || (order == DateOrder::monthFirst && parts->sign != '.');
    const LocalDay day{std::chrono::year{parts->year},
                       std::chrono::month{static_cast<unsigned>(monthFirst ? parts->first : parts->second)},
                       std::chrono::day{static_cast<unsigned>(monthFirst ? parts->second : parts->first)}};
    return day.ok() ? std::optional{day} : std::nullopt;
}

std::optional<std::chrono::seconds> timeOfDayFromText(std::string_view text) {
    std::string words = foldedName(text);
    std::optional<bool> afternoon;
    for (const auto& [mark, isAfternoon] : {std::pair{"am", false}, std::pair{"pm", true}}) {
        if (words.size() < 3 || words.substr(words.size() - 2) != mark) continue;
        afternoon = isAfternoon;
        words.resize(words.size() - 2);
        if (words.back() == ' ') words.pop_back();
        break;
    }
    const std::string_view clock{words};
    const std::size_t split = clock.find(':');
    if (split == std::string_view::npos) return std::nullopt;
    const std::size_t again = clock.find(':', split + 1);
    auto hour = digits(clock.substr(0, split), 1, 2);
    const auto minute = digits(clock.substr(split + 1, again - split - 1), 2, 2);
    const auto second = again == std::string_view::npos ? 0 : digits(clock.substr(again + 1), 2, 2);
    if (!hour || !minute || !second || *minute > 59 || *second > 59) return std::nullopt;
    if (afternoon) {
        if (*hour < 1 || *hour > 12) return std::nullopt;
        hour = *hour % 12 + (*afternoon ? 12 : 0);
    }
    if (*hour > 23) return std::nullopt;
    return std::chrono::hours{*hour} + std::chrono::minutes{*minute} + std::chrono::seconds{*second};
}

Result<FarmZone::WallInstant> momentFromText(std::string_view text, DateOrder order, const FarmZone& zone) {
    if (const auto instant = instantFromIso8601(text)) return FarmZone::WallInstant{*instant, false};
    const std::string_view date = datePart(text);
    const auto day = dayFromText(date, order);
    const auto time =
        date.size() < text.size() ? timeOfDayFromText(text.substr(date.size() + 1)) : std::nullopt;
    if (!day || !time) return fail(code::wallTimeUnreadable, "time", std::string{text});
    return zone.instantOf(WallTime{std::chrono::local_days{*day}} + *time);
}

}  // namespace treadwell::intake
