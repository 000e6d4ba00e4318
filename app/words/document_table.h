#pragma once

#include "app/words/words.h"
#include "core/review/document.h"

#include <string>
#include <vector>

namespace treadwell::words {

/// A table in words, the same to the digit on paper, on the screen and in a message. Where all quantities of
/// a column are in one unit it stands once in `units`, and the cells are bare numbers.
struct TableInWords {
    std::vector<std::string> headings;
    std::vector<std::string> units;              ///< of each column; empty where it has none
    std::vector<std::vector<std::string>> rows;  ///< a text for each column; `-` for nothing
    std::vector<bool> numbers;                   ///< columns of numbers, set to the right
    std::size_t names = 1;                       ///< leading columns that name a row
};

[[nodiscard]] TableInWords inWords(const review::Table& table, const Style& style);

/// One cell with its unit. Times are the clock's alone: a sheet is of one day, which stands in its title.
[[nodiscard]] std::string inWords(const review::Cell& cell, const Style& style);

/// How wide a text is where every letter is as wide as the next: code points of UTF-8.
[[nodiscard]] std::size_t columnsOf(std::string_view text);

/// The lines of a text at most `width` wide, broken at blanks; a longer word is broken where the line ends.
[[nodiscard]] std::vector<std::string> wrapped(std::string_view text, std::size_t width);

}  // namespace treadwell::words
