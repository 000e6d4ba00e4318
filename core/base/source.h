#pragma once

#include "core/base/enum_text.h"

#include <array>
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

constexpr std::array<std::string_view, 5> enumTexts(Evidence /*evidence*/) noexcept {
    return {"published", "fromMemory", "derived", "commonPractice", "assumed"};
}

/// Where a number comes from, as a reader would look it up. Citations are names and are never translated.
struct Source {
    std::string_view citation;  ///< authors, year, journal; empty where there is none
    Evidence evidence;
    friend bool operator==(const Source&, const Source&) = default;
};

}  // namespace treadwell
