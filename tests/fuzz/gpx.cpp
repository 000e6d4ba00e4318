// Bytes of any sort as GPX: what is read is a place on Earth, and pieces make no difference.
#include "core/formats/gpx.h"

#include "tests/fuzz/track_check.h"

using namespace treadwell::formats;

namespace {

void readIn(fuzz::ReadTrack& read, std::string_view bytes, std::size_t split) {
    GpxReader reader{read.sink()};
    auto result = reader.take(bytes.substr(0, split));
    if (result) result = reader.take(bytes.substr(split));
    if (result) result = reader.finish();
    read.failed = !result;
}

}  // namespace

// The first byte chooses where the rest is parted.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size < 2) return 0;
    const std::string_view bytes(reinterpret_cast<const char*>(data) + 1, size - 1);
    fuzz::ReadTrack whole, parted;
    readIn(whole, bytes, 0);
    readIn(parted, bytes, data[0] % bytes.size());
    fuzz::require(whole.fixes == parted.fixes && whole.faults == parted.faults &&
                  whole.failed == parted.failed);
    whole.check();
    return 0;
}
