// A season's JSON document: whatever is read must come back the same when it is written and read again.
#include "core/entries/season_document.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>
#include <vector>

using namespace treadwell;
using namespace treadwell::entries;

namespace {

void require(bool holds) {
    if (!holds) std::abort();
}

struct Read {
    Result<DocumentFrame> frame;
    std::vector<StoredEntry> entries;
};

Read readAll(std::string_view json) {
    std::vector<StoredEntry> entries;
    auto frame = readDocument(json, [&](StoredEntry&& entry) -> Result<void> {
        entries.push_back(std::move(entry));
        return {};
    });
    return {std::move(frame), std::move(entries)};
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const Read first = readAll({reinterpret_cast<const char*>(data), size});
    if (!first.frame) {
        require(!toText(first.frame.error().code()).empty());
        return 0;
    }
    DocumentWriter writer;
    for (const StoredEntry& entry : first.entries) writer.add(entry);
    const Read second = readAll(writer.finish(*first.frame));
    require(second.frame && *second.frame == *first.frame && second.entries == first.entries);
    return 0;
}
