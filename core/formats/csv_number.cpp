#include "core/formats/csv_number.h"

#include "core/base/number_text.h"
#include "core/formats/codes.h"

#include <algorithm>

namespace treadwell::formats {

namespace {

constexpr std::string_view kDigits = "0123456789";

std::string_view withoutSign(std::string_view cell) {
    if (!cell.empty() && (cell.front() == '-' || cell.front() == '+')) cell.remove_prefix(1);
    return cell;
}

// Digits in groups of three, joined by any one grouping mark; the first group has one to three.
std::optional<std::string> ungrouped(std::string_view text, std::string_view mark) {
    std::string digits;
    std::size_t group = 0;
    bool first = true;
    for (std::size_t at = 0; at < text.size();) {
        if (isDigit(text[at])) {
            digits += text[at++];
            ++group;
        } else if (text.substr(at, mark.size()) == mark) {
            if (group == 0 || group > 3 || (!first && group != 3)) return std::nullopt;
            at += mark.size();
            group = 0;
            first = false;
        } else {
            return std::nullopt;
        }
    }
    if (digits.empty() || (!first && group != 3)) return std::nullopt;
    return digits;
}

enum class Says : std::uint8_t { nothing, point, comma, either };

constexpr Says flipped(Says says) {
    if (says == Says::point) return Says::comma;
    return says == Says::comma ? Says::point : says;
}

// What one cell says of the decimal sign. A date such as 12.09.2026 is no number in groups of three and says
// nothing.
Says whatSays(std::string_view cell) {
    const std::string_view number = withoutSign(cell);
    if (number.empty() || number.find_first_not_of("0123456789.,") != std::string_view::npos)
        return Says::nothing;
    const std::size_t last = number.find_last_of(".,");
    if (last == std::string_view::npos) return Says::nothing;
    const char sign = number[last];
    const Says itself = sign == '.' ? Says::point : Says::comma;
    const std::string_view whole = number.substr(0, last);
    const std::string_view decimals = number.substr(last + 1);
    if (whole.find_first_of(".,") == std::string_view::npos) {
        const bool eitherWay =
            decimals.size() == 3 && !whole.empty() && whole.size() <= 3 && whole.front() != '0';
        return eitherWay ? Says::either : itself;
    }
    if (whole.find(sign) != std::string_view::npos)
        return ungrouped(number, std::string_view{&sign, 1}) ? flipped(itself) : Says::nothing;
    const std::string_view other = sign == '.' ? "," : ".";
    return ungrouped(whole, other) ? itself : Says::nothing;
}

constexpr std::array<std::string_view, 6> kAlwaysGrouping{" ", "'", "\u00A0", "\u202F", "\u2019", "\u2009"};

}  // namespace

Result<DecimalSign> decimalSignOf(std::span<const CsvRecord> records) {
    struct Witness {
        std::string text;
        Place place;
    };
    std::optional<Witness> point;
    std::optional<Witness> comma;
    std::optional<Witness> either;
    for (const CsvRecord& record : records) {
        for (std::size_t i = 0; i < record.cells.size(); ++i) {
            // A cell may hold several numbers: `5,5/58,5/32/4`.
            for (std::string_view rest = record.cells[i]; !rest.empty();) {
                const std::size_t end = std::min(rest.find('/'), rest.size());
                const std::string_view number = rest.substr(0, end);
                rest.remove_prefix(std::min(end + 1, rest.size()));
                const Says says = whatSays(number);
                if (says == Says::nothing) continue;
                auto& witness = says == Says::point ? point : says == Says::comma ? comma : either;
                if (!witness)
                    witness =
                        Witness{std::string{number}, {{}, record.line, static_cast<std::int64_t>(i) + 1}};
            }
        }
    }
    if (point && comma) {
        Error error{{code::decimalMixed, {point->text, comma->text}}, "decimalSign", comma->place};
        return Unexpected{std::move(error)};
    }
    if (either && !point && !comma) {
        Error error{{code::decimalAmbiguous, {either->text}}, "decimalSign", either->place};
        return Unexpected{std::move(error)};
    }
    return comma ? DecimalSign::comma : DecimalSign::point;
}

std::optional<double> numberFromCell(std::string_view cell, DecimalSign sign) {
    std::string_view number = withoutSign(cell);
    const char decimal = sign == DecimalSign::point ? '.' : ',';
    const std::size_t split = number.find(decimal);
    const std::string_view whole = number.substr(0, split);
    std::string_view decimals;
    if (split != std::string_view::npos) decimals = number.substr(split + 1);
    if (decimals.find_first_not_of(kDigits) != std::string_view::npos) return std::nullopt;
    if (whole.empty() && decimals.empty()) return std::nullopt;

    std::optional<std::string> digits =
        whole.empty() ? std::string{"0"} : ungrouped(whole, decimal == '.' ? "," : ".");
    for (const std::string_view mark : kAlwaysGrouping) {
        if (!digits) digits = ungrouped(whole, mark);
    }
    if (!digits) return std::nullopt;
    if (!decimals.empty()) *digits += '.' + std::string{decimals};
    const auto value = numberFromText(*digits);
    if (!value) return std::nullopt;
    return cell.front() == '-' ? -*value : *value;
}

}  // namespace treadwell::formats
