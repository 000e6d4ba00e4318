#pragma once

#include "core/density/weak_places.h"
#include "core/outcome/loss.h"

#include <optional>
#include <vector>

namespace treadwell::face {

/// What is to be fed each day, and what is lost until then.
struct FeedPlan {
    LocalDay from;        ///< the first day of feeding
    AsFedMass perDay;     ///< 0.01 t to 500 t
    DryMatter dryMatter;  ///< of what is fed, 10-90 %
    Loss loss;            ///< of dry matter until it is fed, 0-60 %
    Loss lowLoss;         ///< the 80 % band of it; low <= loss <= high
    Loss highLoss;
    std::optional<Length> face = {};  ///< from the back wall that morning; none: at the open end
};

/// A day's feed, cut from the face.
struct FeedDay {
    LocalDay day;
    Length from;                    ///< the face in the morning, from the back wall
    Length to;                      ///< and in the evening
    std::vector<LocalDay> laid;     ///< days whose layers it cuts, oldest first
    density::Distribution density;  ///< mean of what is cut
    DryDensity loosest;             ///< of the layers at their places, away from the walls
    [[nodiscard]] Length advance() const noexcept { return from - to; }
};

struct FeedOut {
    DryMass placed;       ///< dry matter as tipped, behind the face
    DryMass toFeed;       ///< what is left of it
    double days = 0.0;    ///< from the plan's first
    LocalDay end{};       ///< the last day on which there is feed
    LocalDay earlyEnd{};  ///< the 80 % band
    LocalDay lateEnd{};
    std::vector<FeedDay> coming;  ///< seven days from the one asked for, as far as the crop reaches
};

/// sd of ln(dry matter tipped) that stays when many loads were weighed and sampled: the dry-matter method
/// (rule B10).
inline constexpr double kPlacedLogSd = 0.015;

/// Where the face will stand, and until when there is feed. The face is upright and goes from where it
/// stands to the back wall, as far each day as the day's dry matter, with its loss, asks for at the predicted
/// density. The end's band: the plan's band of loss and kPlacedLogSd together. Errors: valueNotFinite and
/// valueOutOfRange naming `perDay`, `dryMatter`, `loss`.
[[nodiscard]] Result<FeedOut> feedOutOf(const season::Season& season, const density::SiloLayers& layers,
                                        const density::Field& field, const FeedPlan& plan, LocalDay week);

/// As fed and dry matter, in and out of a silo.
struct Balance {
    Shrink shrink;  ///< on as fed
    Loss loss;      ///< on dry matter
};

/// What a silo that is fed out has lost. Errors: valueOutOfRange naming `massIn`, `massOut` (0.01 t on, out
/// at most in), `dryIn` and `dryOut` (each at most its mass as fed, out at most in).
[[nodiscard]] Result<Balance> balanceOf(AsFedMass massIn, DryMass dryIn, AsFedMass massOut, DryMass dryOut);

/// A face that heats: more than 5 K between 20 cm behind it and the core. Source: Borreani & Tabacco 2010, J.
/// Dairy Sci. 93:2620 (published).
inline constexpr double kHeatingAlarm_k = 5.0;
[[nodiscard]] constexpr bool heats(Temperature behindFace, Temperature core) noexcept {
    return behindFace.si() - core.si() > kHeatingAlarm_k + 1e-9;  // 5 K are not more than 5 K
}

/// Below this a face is said to heat in warm weather (published and from memory).
inline constexpr Length kLeastAdvance = Length::fromMetres(0.30);

}  // namespace treadwell::face
