#pragma once

#include "core/base/codes.h"
#include "core/base/error.h"
#include "core/base/hash.h"
#include "core/entries/codes.h"
#include "core/farm/machines.h"
#include "core/quantity/range.h"

#include <string>
#include <string_view>

namespace treadwell::entries {

/// The track of a tractor, in a file that stays where it lies: too long for a season's own file, and known
/// again by its hash.
struct TrackAttached {
    static constexpr std::string_view kKind = "track_attached";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    farm::TractorId tractor;
    std::string file;   ///< its name, without folders
    std::string place;  ///< the folder where it lay
    std::int64_t bytes = 0;
    Hash sha256{};
    std::int64_t fixes = 0;  ///< positions with a time
    Instant begin;           ///< the first of them
    Instant end;             ///< the last of them

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("begin_us", self.begin);
        visit("bytes", self.bytes);
        visit("end_us", self.end);
        visit("file", self.file);
        visit("fixes", self.fixes);
        visit("place", self.place);
        visit("sha256", self.sha256);
        visit("tractor", self.tractor);
    }
    friend bool operator==(const TrackAttached&, const TrackAttached&) = default;
};

/// A file with a name and a folder, one fix or more, in bytes that hold them, and no end before the begin.
[[nodiscard]] inline Result<void> validate(const TrackAttached& entry) {
    if (entry.file.empty()) return fail(code::textEmpty, "file");
    if (entry.place.empty()) return fail(code::textEmpty, "place");
    if (entry.bytes < 1) return fail(code::valueMissing, "bytes");
    if (entry.fixes < 1) return fail(code::valueMissing, "fixes");
    if (entry.end < entry.begin) return fail(code::spanEmpty, "end", entry.begin);
    return {};
}

}  // namespace treadwell::entries
