#pragma once

#include <string_view>

namespace treadwell {

/// One thing the core has to say; app/words puts it into words. Each room lists its own in its codes.h, so
/// that a new one is news only to those who say it.
class Code {
  public:
    constexpr Code() = default;  ///< nothing said yet: it has no name and no phrase
    consteval explicit Code(std::string_view name) : m_name{name} {}

    /// The code's own name, as `--json` prints it.
    [[nodiscard]] constexpr std::string_view name() const noexcept { return m_name; }

    friend constexpr bool operator==(const Code&, const Code&) = default;

  private:
    std::string_view m_name;
};

[[nodiscard]] constexpr std::string_view toText(Code code) noexcept {
    return code.name();
}

}  // namespace treadwell

/// Makes `code::name` of each name in a room's list.
#define TREADWELL_CODE(name) inline constexpr Code name{#name};
