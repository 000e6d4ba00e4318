// Bytes as a wire may bring them: every byte but line ends stands in one frame, in whatever pieces they come,
// and what is read is a weight that a scale can show.
#include "core/formats/scale_frames.h"

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

using namespace treadwell;

namespace {

void require(bool holds) {
    if (!holds) std::abort();
}

void checkReading(const formats::ScaleReading& reading) {
    const bool isBeyond =
        reading.state == formats::ScaleState::overload || reading.state == formats::ScaleState::underload;
    require(reading.weight.has_value() != isBeyond);
    if (reading.weight) require(std::isfinite(reading.weight->si()));
    if (reading.tare) require(std::isfinite(reading.tare->si()) && reading.tare->si() > 0);
}

void check(const formats::ScaleProfile& profile, std::string_view bytes, std::size_t split) {
    formats::ScaleFrames whole{profile};
    formats::ScaleFrames parted{profile};
    const auto frames = whole.take(bytes);
    auto others = parted.take(bytes.substr(0, split));
    for (auto& frame : parted.take(bytes.substr(split))) others.push_back(std::move(frame));
    require(frames.size() == others.size());
    std::size_t kept = whole.pending().size();
    for (std::size_t i = 0; i < frames.size(); ++i) {
        require(frames[i].raw == others[i].raw && frames[i].reading == others[i].reading);
        require(!frames[i].raw.empty() && frames[i].raw.size() <= formats::kLongestFrame + 1);
        kept += frames[i].raw.size();
        if (frames[i].reading) checkReading(*frames[i].reading);
    }
    require(profile.isBlock() ? kept == bytes.size() : kept <= bytes.size());
}

}  // namespace

// The first byte chooses the profile, the second where the rest is parted.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size < 2) return 0;
    const auto profiles = formats::scaleProfiles();
    const std::string_view bytes(reinterpret_cast<const char*>(data) + 2, size - 2);
    check(profiles[data[0] % profiles.size()], bytes, bytes.empty() ? 0 : data[1] % bytes.size());
    return 0;
}
