#pragma once

#include "core/base/codes.h"
#include "core/base/error.h"
#include "core/base/hash.h"
#include "core/entries/density_evidence.h"
#include "core/entries/entry.h"
#include "core/quantity/fraction.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace treadwell::entries {

/// An earlier season's file as it stood when something was carried over from it.
struct EarlierSeason {
    std::string farm;
    Hash head{};                         ///< that its printed sheets carry
    EntryId season;                      ///< its first entry
    std::optional<Instant> begins = {};  ///< when that happened; from version 2 on

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("begins_us", self.begins);
        visit("farm", self.farm);
        visit("head", self.head);
        visit("season", self.season);
    }
    friend bool operator==(const EarlierSeason&, const EarlierSeason&) = default;
};

/// Says from which earlier seasons the definitions at a season's start were carried over, carries their
/// measured densities, since their files may not be at hand later, and says what their crop was like.
struct SeasonCarried {
    static constexpr std::string_view kKind = "season_carried";
    static constexpr int kVersion = 2;
    static constexpr bool kRecord = true;

    std::vector<EarlierSeason> from;
    std::optional<std::vector<DensityEvidence>> evidence = {};  ///< from version 2 on
    std::optional<DryMatter> dryMatter =
        {};  ///< mean by mass of the last that was sampled; from version 2 on

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("dry_matter", self.dryMatter);
        visit("evidence", self.evidence);
        visit("from", self.from);
    }
    friend bool operator==(const SeasonCarried&, const SeasonCarried&) = default;
};

/// It names at least one, every evidence is of one of those that it names, dry matter 10-90 %.
[[nodiscard]] Result<void> validate(const SeasonCarried& entry);

}  // namespace treadwell::entries
