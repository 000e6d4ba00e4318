#include "core/entries/entry.h"

#include <tuple>

namespace treadwell::entries {

Hash entryHash(const Hash& previous, const Header& header, std::string_view payload) {
    Sha256 hasher;
    hasher.add("treadwell entry 1").add(previous).add(header.id.value.bytes).add(header.device.value.bytes);
    hasher.add(header.deviceSequence).add(header.lamport).add(header.author.value.bytes);
    // Lengths before texts, so that no two different entries feed the same bytes.
    hasher.add(static_cast<std::int64_t>(header.kind.size())).add(header.kind);
    hasher.add(std::int64_t{header.kindVersion});
    hasher.add(toMicroseconds(header.happened)).add(toMicroseconds(header.recorded));
    hasher.add(std::int64_t{header.utcOffsetMinutes});
    hasher.add(std::int64_t{header.target.has_value()});
    if (header.target) hasher.add(header.target->value.bytes);
    hasher.add(static_cast<std::int64_t>(payload.size())).add(payload);
    return hasher.finish();
}

bool happenedBefore(const Header& a, const Header& b) noexcept {
    const auto key = [](const Header& h) {
        return std::tie(h.happened, h.lamport, h.device, h.deviceSequence);
    };
    return key(a) < key(b);
}

}  // namespace treadwell::entries
