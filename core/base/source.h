#pragma once

#include <cstdint>
#include <string_view>

namespace treadwell {

/// How well a number is known.
enum class Evidence : std::uint8_t {
    published,       ///< printed in the source and read there
    fromMemory,      ///< recalled from the literature, not read again
    derived,         ///< computed here from published values
    commonPractice,  ///< the trade's habit, without a source
    assumed,         ///< ours
};

[[nodiscard]] constexpr std::string_view toText(Evidence evidence) noexcept {
    switch (evidence) {
        case Evidence::published:
            return "published";
        case Evidence::fromMemory:
            return "fromMemory";
        case Evidence::derived:
            return "derived";
        case Evidence::commonPractice:
            return "commonPractice";
        case Evidence::assumed:
            return "assumed";
    }
    return {};
}

/// Where a number comes from, as a reader would look it up. Citations are names and are never translated.
struct Source {
    std::string_view citation;  ///< authors, year, journal; empty where there is none
    Evidence evidence;
    friend bool operator==(const Source&, const Source&) = default;
};

}  // namespace treadwell
