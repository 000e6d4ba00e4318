#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <string_view>

namespace treadwell::formats {

/// What a part of a frame tells; the parts stand in the order of the pattern's brackets.
enum class FramePart : std::uint8_t { nothing, status, kind, weight, tare, unit };

struct StatusBits {
    std::size_t byte;  ///< which of the status bytes
    unsigned mask;
};

/// Where the numbers of a block of fixed length stand, and what the bits of its status bytes say.
struct StatusBlock {
    std::size_t status = 1;  ///< place of the first status byte; the start byte stands at 0
    std::size_t weight = 4;
    std::size_t tare = 10;
    std::size_t digits = 6;
    std::size_t end = 16;  ///< place of the end byte
    bool hasSum = false;   ///< one more byte makes the sum of all a multiple of 128
    char startByte = '\x02';
    char endByte = '\r';
    /// Power of ten by which the digits count: the bits' value less this, downwards.
    StatusBits decimals{0, 0x07};
    int wholeUnits = 2;
    StatusBits net{1, 0x01};
    StatusBits negative{1, 0x02};
    StatusBits outOfRange{1, 0x04};
    StatusBits motion{1, 0x08};
    StatusBits kilograms{1, 0x10};  ///< else pounds
    StatusBits otherUnit{2, 0x07};  ///< any of these: neither of the two
    StatusBits tenfold{2, 0x10};    ///< shown with one more digit

    [[nodiscard]] constexpr std::size_t size() const noexcept { return end + (hasSum ? 2U : 1U); }
};

/// How one sort of scale talks. A frame is a line of text that holds to the pattern, or a block.
struct ScaleProfile {
    std::string_view name;     ///< stable
    std::string_view example;  ///< a frame as it looks, control characters left out
    std::string_view pattern;  ///< ECMAScript; empty for a block
    std::array<FramePart, 6> parts{};
    StatusBlock block{};

    [[nodiscard]] constexpr bool isBlock() const noexcept { return pattern.empty(); }
};

/// All that are known.
[[nodiscard]] std::span<const ScaleProfile> scaleProfiles() noexcept;

/// None where no profile has that name.
[[nodiscard]] const ScaleProfile* scaleProfileNamed(std::string_view name) noexcept;

}  // namespace treadwell::formats
