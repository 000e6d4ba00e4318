#include "core/base/uuid.h"

#include "core/base/hex.h"

#include <array>

namespace treadwell {

std::string Uuid::text() const {
    std::string digits = toHex(bytes);
    for (const std::size_t at : {20U, 16U, 12U, 8U}) digits.insert(at, 1, '-');
    return digits;
}

std::optional<Uuid> Uuid::fromText(std::string_view text) {
    if (text.size() != 36) return std::nullopt;
    std::array<char, 32> digits{};
    std::size_t count = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool dash = i == 8 || i == 13 || i == 18 || i == 23;
        if (dash != (text[i] == '-')) return std::nullopt;
        if (!dash) digits[count++] = text[i];
    }
    Uuid uuid;
    if (!fromHex({digits.data(), digits.size()}, uuid.bytes)) return std::nullopt;
    return uuid;
}

UuidSource::UuidSource(std::uint64_t seed) : m_random(seed) {}

Uuid UuidSource::next(Instant now) {
    const auto ms = static_cast<std::uint64_t>(
        std::chrono::floor<std::chrono::milliseconds>(now).time_since_epoch().count());
    const std::uint64_t high = m_random();
    const std::uint64_t low = m_random();
    Uuid uuid;
    for (std::size_t i = 0; i < 6; ++i) uuid.bytes[i] = static_cast<std::uint8_t>(ms >> (40 - 8 * i));
    uuid.bytes[6] = static_cast<std::uint8_t>(0x70 | (high >> 8 & 0x0f));
    uuid.bytes[7] = static_cast<std::uint8_t>(high);
    for (std::size_t i = 0; i < 8; ++i) uuid.bytes[8 + i] = static_cast<std::uint8_t>(low >> (56 - 8 * i));
    uuid.bytes[8] = static_cast<std::uint8_t>(0x80 | (uuid.bytes[8] & 0x3f));
    return uuid;
}

}  // namespace treadwell
