#pragma once

#include "core/base/instant.h"

#include <array>
#include <compare>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <random>
#include <string>
#include <string_view>

namespace treadwell {

/// A UUID as 16 bytes in network order.
struct Uuid {
    std::array<std::uint8_t, 16> bytes{};

    [[nodiscard]] std::string text() const;
    [[nodiscard]] static std::optional<Uuid> fromText(std::string_view text);
    [[nodiscard]] bool isNil() const noexcept { return *this == Uuid{}; }

    friend auto operator<=>(const Uuid&, const Uuid&) = default;
};

/// A UUID that names one sort of thing; the id of a truck is not the id of a silo.
template <class Tag>
struct Id {
    Uuid value;
    friend auto operator<=>(const Id&, const Id&) = default;
};

/// Makes version 7 UUIDs (RFC 9562): 48 bits of Unix milliseconds, then random bits. Not thread-safe.
class UuidSource {
  public:
    /// A fixed seed makes the ids repeatable, for tests and generated examples.
    explicit UuidSource(std::uint64_t seed = std::random_device{}());
    [[nodiscard]] Uuid next(Instant now);

  private:
    std::mt19937_64 m_random;
};

}  // namespace treadwell

template <>
struct std::hash<treadwell::Uuid> {
    // The random tail of a version 7 UUID is a hash already.
    std::size_t operator()(const treadwell::Uuid& uuid) const noexcept {
        std::size_t value = 0;
        for (std::size_t i = 8; i < 16; ++i) value = value << 8 | uuid.bytes[i];
        return value;
    }
};

template <class Tag>
struct std::hash<treadwell::Id<Tag>> {
    std::size_t operator()(const treadwell::Id<Tag>& id) const noexcept {
        return std::hash<treadwell::Uuid>{}(id.value);
    }
};
