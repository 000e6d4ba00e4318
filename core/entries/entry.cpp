#include "core/entries/entry.h"

#include <endian.h>

#include <cstring>
#include <string>
#include <tuple>

namespace treadwell::entries {

Hash entryHash(const Hash& previous, const Header& header, std::string_view payload) {
    constexpr std::string_view kTag = "treadwell entry 1";
    constexpr std::size_t kFixedParts = 256;  // more than all but the texts
    thread_local std::string bytes;           // a season has many entries
    const std::size_t room = kFixedParts + header.kind.size() + payload.size();
    if (bytes.size() < room) bytes.resize(room);
    char* end = bytes.data();
    const auto copy = [&end](const void* more, std::size_t size) {
        std::memcpy(end, more, size);
        end += size;
    };
    const auto add = [&copy](const auto& array) { copy(array.data(), array.size()); };
    const auto number = [&copy](std::int64_t value) {
        const std::uint64_t bigEndian = htobe64(static_cast<std::uint64_t>(value));
        copy(&bigEndian, sizeof bigEndian);
    };
    // Lengths before texts, so that no two different entries feed the same bytes.
    const auto text = [&](std::string_view value) {
        number(static_cast<std::int64_t>(value.size()));
        add(value);
    };
    add(kTag);
    add(previous);
    add(header.id.value.bytes);
    add(header.device.value.bytes);
    number(header.deviceSequence);
    number(header.lamport);
    add(header.author.value.bytes);
    text(header.kind);
    number(header.kindVersion);
    number(toMicroseconds(header.happened));
    number(toMicroseconds(header.recorded));
    number(header.utcOffsetMinutes);
    number(header.target.has_value());
    if (header.target) add(header.target->value.bytes);
    text(payload);
    return sha256({bytes.data(), static_cast<std::size_t>(end - bytes.data())});
}

bool happenedBefore(const Header& a, const Header& b) noexcept {
    const auto key = [](const Header& h) {
        return std::tie(h.happened, h.lamport, h.device, h.deviceSequence);
    };
    return key(a) < key(b);
}

}  // namespace treadwell::entries
