#pragma once

#include "app/words/words.h"
#include "core/base/json_writer.h"
#include "core/review/document.h"

namespace treadwell::words {

inline constexpr int kTextWidth = 78;

/// The document as plain text in lines of at most `width` columns (40 or more), to print or to paste into a
/// message. Tables are set in columns, numbers to the right; a table that is too wide is written as one line
/// a cell, so that nothing is cut. Series are for drawing and are left to the tables beside them.
[[nodiscard]] std::string plainText(const review::Document& document, const Style& style,
                                    int width = kTextWidth);

/// The document as one JSON object: sections, tables with rows by their columns' keys; quantities as value
/// and metric unit, times in UTC, sentences as code and text.
void writeJson(JsonWriter& json, const review::Document& document, const Style& style);

}  // namespace treadwell::words
