#include "core/entries/entry.h"

#include <array>
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
    const auto number = [&add](std::int64_t value) {
        std::array<std::uint8_t, 8> bigEndian{};
        for (std::size_t i = 0; i < 8; ++i) {
            bigEndian[i] = static_cast<std::uint8_t>(static_cast<std::uint64_t>(value) >> (56 - 8 * i));
        }
        add(bigEndian);
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
