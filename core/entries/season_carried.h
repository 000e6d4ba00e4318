#pragma once

#include "core/base/codes.h"
#include "core/base/error.h"
#include "core/base/hash.h"
#include "core/entries/entry.h"

#include <string>
#include <string_view>
#include <vector>

namespace treadwell::entries {

/// An earlier season's file as it stood when something was carried over from it.
struct EarlierSeason {
    std::string farm;
    Hash head{};     ///< that its printed sheets carry
    EntryId season;  ///< its first entry

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("farm", self.farm);
        visit("head", self.head);
        visit("season", self.season);
    }
    friend bool operator==(const EarlierSeason&, const EarlierSeason&) = default;
};

/// Says from which earlier seasons the definitions and evidence at a season's start were carried over.
struct SeasonCarried {
    static constexpr std::string_view kKind = "season_carried";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    std::vector<EarlierSeason> from;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("from", self.from);
    }
    friend bool operator==(const SeasonCarried&, const SeasonCarried&) = default;
};

/// It names at least one.
[[nodiscard]] inline Result<void> validate(const SeasonCarried& entry) {
    if (entry.from.empty()) return fail(code::valueMissing, "from");
    return {};
}

}  // namespace treadwell::entries
