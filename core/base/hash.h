#pragma once

#include <array>
#include <cstdint>
#include <memory>
#include <span>
#include <string_view>

namespace treadwell {

/// A SHA-256 digest.
using Hash = std::array<std::uint8_t, 32>;

/// SHA-256 over what it is fed. Reusable: finish() starts anew.
class Sha256 {
  public:
    Sha256();
    ~Sha256();
    Sha256(Sha256&&) noexcept;
    Sha256& operator=(Sha256&&) noexcept;

    Sha256& add(std::span<const std::uint8_t> bytes);
    Sha256& add(std::string_view text);
    /// Eight bytes, big-endian.
    Sha256& add(std::int64_t number);
    [[nodiscard]] Hash finish();

  private:
    struct State;
    std::unique_ptr<State> m_state;
};

[[nodiscard]] Hash sha256(std::string_view text);

}  // namespace treadwell
