#pragma once

#include "core/base/error.h"
#include "core/entries/entry.h"
#include "core/journal/people.h"

#include <filesystem>
#include <functional>

namespace treadwell::journal {

using Take = std::function<Result<void>(entries::StoredEntry&&)>;

/// Makes a new file of entries that stood in another, in the order of arrival, and of the names that
/// `source` gives in the end; whole or not at all. Errors: journalExists, fileUnwritable, entryOutOfOrder
/// where an entry does not follow from those before it, and those of `source`.
[[nodiscard]] Result<void> build(const std::filesystem::path& path,
                                 const std::function<Result<People>(const Take&)>& source);

}  // namespace treadwell::journal
