#pragma once

#include "core/base/error.h"
#include "core/farm/silo.h"
#include "core/quantity/range.h"
#include "core/quantity/relations.h"

#include <optional>
#include <string_view>

namespace treadwell::entries {

/// Silage taken from an opened silo: since the removal before it, or since the opening.
struct FeedRemoved {
    static constexpr std::string_view kKind = "feed_removed";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    farm::SiloId silo;
    AsFedMass mass;
    std::optional<DryMatter> dryMatter;
    std::optional<Length> face;  ///< where it stands afterwards, from the back wall; 0 when all is out

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("dry_matter", self.dryMatter);
        visit("face_m", self.face);
        visit("mass_kg", self.mass);
        visit("silo", self.silo);
    }
    friend bool operator==(const FeedRemoved&, const FeedRemoved&) = default;
};

/// 10 kg to 5,000 t, so that a month fits into one line; dry matter 10-90 %, face 0-500 m.
[[nodiscard]] inline Result<void> validate(const FeedRemoved& entry) {
    return firstFailure(
        holdsWithin(entry.mass, AsFedMass::fromKilograms(10), AsFedMass::fromTonnes(5'000), "mass"),
        holdsWithin(entry.dryMatter.value_or(DryMatter::fromPercent(50)), DryMatter::fromPercent(10),
                    DryMatter::fromPercent(90), "dryMatter"),
        holdsWithin(entry.face.value_or(Length{}), Length{}, Length::fromMetres(500), "face"));
}

}  // namespace treadwell::entries
