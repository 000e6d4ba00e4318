#include "core/entries/entry.h"

#include <span>
#include <string>
#include <tuple>

namespace treadwell::entries {

Hash entryHash(const Hash& previous, const Header& header, std::string_view payload) {
    thread_local std::string bytes;  // a season has many entries
    bytes.assign("treadwell entry 1");
    const auto add = [](std::span<const std::uint8_t> more) {
        bytes.append(reinterpret_cast<const char*>(more.data()), more.size());
    };
    const auto number = [](std::int64_t value) {
        for (int shift = 56; shift >= 0; shift -= 8) {
            bytes += static_cast<char>(static_cast<std::uint64_t>(value) >> shift);
        }
    };
    // Lengths before texts, so that no two different entries feed the same bytes.
    const auto text = [&](std::string_view value) {
        number(static_cast<std::int64_t>(value.size()));
        bytes += value;
    };
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
    return sha256(bytes);
}

bool happenedBefore(const Header& a, const Header& b) noexcept {
    const auto key = [](const Header& h) {
        return std::tie(h.happened, h.lamport, h.device, h.deviceSequence);
    };
    return key(a) < key(b);
}

}  // namespace treadwell::entries
