#pragma once

#include "core/entries/season_document.h"

#include <string_view>
#include <utility>
#include <vector>

namespace treadwell::entries {

/// All of a season's document, or why it cannot be read.
struct Read {
    Result<DocumentFrame> frame;
    std::vector<StoredEntry> entries;
};

[[nodiscard]] inline Read readAll(std::string_view json) {
    std::vector<StoredEntry> entries;
    auto frame = readDocument(json, [&](StoredEntry&& entry) -> Result<void> {
        entries.push_back(std::move(entry));
        return {};
    });
    return {std::move(frame), std::move(entries)};
}

}  // namespace treadwell::entries
