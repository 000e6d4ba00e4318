#pragma once

#include "core/base/error.h"
#include "core/base/hash.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace treadwell::entries {

/// A row of a file that could not be read: an open question until it is read after all or taken back. The row
/// itself is the evidence.
struct RowSetAside {
    static constexpr std::string_view kKind = "row_set_aside";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    std::string file;  ///< its name, without folders
    std::string list;  ///< what the file holds: `tickets`
    std::int64_t line = 0;
    std::int64_t column = 0;  ///< 0 where the row as a whole is wrong
    std::string field;        ///< what the column tells
    std::string code;         ///< the reason's stable name
    std::string reason;       ///< as it was told
    Hash evidence{};

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("code", self.code);
        visit("column", self.column);
        visit("evidence", self.evidence);
        visit("field", self.field);
        visit("file", self.file);
        visit("line", self.line);
        visit("list", self.list);
        visit("reason", self.reason);
    }
    friend bool operator==(const RowSetAside&, const RowSetAside&) = default;
};

/// A file, a reason and a line from 1.
[[nodiscard]] Result<void> validate(const RowSetAside& entry);

}  // namespace treadwell::entries
