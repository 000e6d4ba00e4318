// A season's JSON document: whatever is read must come back the same when it is written and read again.
#include "tests/support/document_reading.h"

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
