#include "app/words/words.h"

#include "app/words/phrases.h"
#include "core/base/number_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <vector>

// Marks a text for lupdate, without Qt.
#define QT_TRANSLATE_NOOP(context, text) text

namespace treadwell::words {

namespace {

/// The units that hold a word; the others are signs, the same in every language.
constexpr std::array kUnitsWithWords{
    QT_TRANSLATE_NOOP("Unit", "t DM"),       QT_TRANSLATE_NOOP("Unit", "ton DM"),
    QT_TRANSLATE_NOOP("Unit", "kg DM/m3"),   QT_TRANSLATE_NOOP("Unit", "lb DM/ft3"),
    QT_TRANSLATE_NOOP("Unit", "t DM/h"),     QT_TRANSLATE_NOOP("Unit", "ton DM/h"),
    QT_TRANSLATE_NOOP("Unit", "kg per t/h"), QT_TRANSLATE_NOOP("Unit", "lb per ton/h"),
    QT_TRANSLATE_NOOP("Unit", "ton"),        QT_TRANSLATE_NOOP("Unit", "ton/h"),
    QT_TRANSLATE_NOOP("Unit", "min/ton"),
};

/// A chance beyond this would be rounded to certainty.
constexpr double kLeastChance = 0.005;

constexpr int kMostFurtherDecimals = 4;

std::string translated(const char* context, const char* english, const Style& style) {
    return style.translate ? style.translate(context, english) : english;
}

std::string numberInWords(double value, int decimals, const Style& style) {
    std::string text = fixedText(value, decimals);
    std::replace(text.begin(), text.end(), '.', style.decimalSign);
    return text;
}

std::string unitInWords(std::string_view symbol, const Style& style) {
    const auto* found = std::find(kUnitsWithWords.begin(), kUnitsWithWords.end(), symbol);
    return found == kUnitsWithWords.end() ? std::string{symbol} : translated(kUnitContext, *found, style);
}

std::string amountInWords(Amount amount, int furtherDecimals, const Style& style) {
    if (amount.dimension == Dimension::chance) {
        if (amount.si > 0.0 && amount.si < kLeastChance) return "< 1 %";
        if (amount.si < 1.0 && amount.si > 1.0 - kLeastChance) return "> 99 %";
    }
    const Unit& unit = unitOf(amount.dimension, style.units);
    std::string text = numberInWords(unit.fromSi(amount.si), unit.decimals + furtherDecimals, style);
    if (standsApart(unit.symbol)) text += ' ';
    text += unitInWords(unit.symbol, style);
    return text;
}

bool looksTheSame(Amount a, Amount b, int furtherDecimals, const Style& style) {
    return a.si != b.si &&
           amountInWords(a, furtherDecimals, style) == amountInWords(b, furtherDecimals, style);
}

/// "100 % is outside 0 % to 100 %" helps nobody: decimals that tell the amounts of one sentence apart, and
/// from 0. None further where the difference is that of rounding.
int furtherDecimals(Dimension dimension, const std::vector<Argument>& arguments, const Style& style) {
    std::vector<Amount> amounts{{dimension, 0.0}};
    for (const Argument& argument : arguments) {
        const auto* amount = std::get_if<Amount>(&argument);
        if (amount != nullptr && amount->dimension == dimension) amounts.push_back(*amount);
    }
    for (int further = 0; further <= kMostFurtherDecimals; ++further) {
        bool hidden = false;
        for (std::size_t i = 0; i < amounts.size(); ++i) {
            for (std::size_t j = 0; j < i; ++j) {
                hidden |= looksTheSame(amounts[i], amounts[j], further, style);
            }
        }
        if (!hidden) return further;
    }
    return 0;
}

struct ArgumentInWords {
    const Style& style;
    const std::vector<Argument>& all;

    std::string operator()(const std::string& text) const { return text; }
    std::string operator()(std::int64_t number) const { return std::to_string(number); }
    std::string operator()(double number) const { return inWords(number, style); }
    std::string operator()(Amount amount) const {
        return amountInWords(amount, furtherDecimals(amount.dimension, all, style), style);
    }
    std::string operator()(Instant at) const { return inWords(at, style); }
    std::string operator()(Code code) const { return inWords(Message{code, {}}, style); }
    std::string operator()(const std::vector<Code>& codes) const {
        std::string text;
        for (const Code code : codes) text += (text.empty() ? "" : "; ") + (*this)(code);
        return text;
    }
};

std::string placeText(const Place& place) {
    std::string text = place.file;
    if (place.line > 0) text += ':' + std::to_string(place.line);
    if (place.column > 0) text += ':' + std::to_string(place.column);
    return text;
}

}  // namespace

bool standsApart(std::string_view symbol) {
    return !symbol.empty() && symbol.front() != '/' && symbol.front() != ':';
}

std::string inWords(double number, const Style& style) {
    const double size = std::abs(number);
    if (size == 0.0) return "0";
    return numberInWords(number, size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3, style);
}

std::string inWords(Amount amount, const Style& style) {
    return amountInWords(amount, 0, style);
}

std::string inWords(Instant at, const Style& style) {
    return toIso8601(style.zone.dayOf(at)) + ' ' + clockText(style.zone, at);
}

std::string inWords(const Message& message, const Style& style) {
    const std::string phrase = translated(kPhraseContext, phraseTemplate(message.code), style);
    const ArgumentInWords speaker{style, message.arguments};
    std::string text;
    for (std::size_t i = 0; i < phrase.size(); ++i) {
        const bool placeholder = phrase[i] == '{' && i + 2 < phrase.size() && phrase[i + 2] == '}' &&
                                 phrase[i + 1] >= '1' && phrase[i + 1] <= '9';
        const auto index = static_cast<std::size_t>(placeholder ? phrase[i + 1] - '1' : 0);
        if (!placeholder || index >= message.arguments.size()) {
            text += phrase[i];
            continue;
        }
        text += std::visit(speaker, message.arguments[index]);
        i += 2;
    }
    return text;
}

std::string inWords(const Error& error, const Style& style) {
    std::string text;
    for (const std::string& part : {placeText(error.place), fieldInWords(error.field)}) {
        if (!part.empty()) text += part + ": ";
    }
    return text + inWords(error.message, style);
}

std::string fieldInWords(std::string_view field) {
    std::string words;
    for (std::size_t i = 0; i < field.size(); ++i) {
        const char c = field[i];
        const std::size_t end = c == '[' ? field.find(']', i) : std::string_view::npos;
        if (end != std::string_view::npos) {
            // Lists count from 0 inside, people from 1.
            if (const auto index = integerFromText(field.substr(i + 1, end - i - 1))) {
                words += ' ' + std::to_string(*index + 1);
                i = end;
                continue;
            }
        }
        if (c == '.') {
            words += ' ';
        } else if (c >= 'A' && c <= 'Z' && i > 0 && field[i - 1] >= 'a' && field[i - 1] <= 'z') {
            words += ' ';
            words += static_cast<char>(c - 'A' + 'a');
        } else {
            words += c;
        }
    }
    return words;
}

}  // namespace treadwell::words
