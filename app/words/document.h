#pragma once

#include "app/words/words.h"
#include "core/base/json_writer.h"
#include "core/review/document.h"

namespace treadwell::words {

inline constexpr int kTextWidth = 78;

/// The document as plain text in lines of at most `width` columns (40 or more), to print. Tables are set in
/// columns, numbers to the right, units once below their heading; a table that is too wide goes on below
/// itself, its rows named again. Series are for drawing and are left to the tables beside them.
[[nodiscard]] std::string plainText(const review::Document& document, const Style& style,
                                    int width = kTextWidth);

/// Title and summary, a sentence a line: short enough to send.
[[nodiscard]] std::string messageText(const review::Document& document, const Style& style);

/// The document as RFC 4180 in UTF-8. Each line begins with its section's key and its block's; a table's
/// first line names the columns, quantities with their metric unit, times in UTC. Numbers are whole, not
/// rounded.
[[nodiscard]] std::string csvText(const review::Document& document, const Style& style);

/// The document as one JSON object: sections, tables with rows by their columns' keys; quantities as value
/// and metric unit, times in UTC, sentences as code and text.
void writeJson(JsonWriter& json, const review::Document& document, const Style& style);

}  // namespace treadwell::words
