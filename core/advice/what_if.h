#pragma once

#include "core/advice/situation.h"
#include "core/density/effect.h"
#include "core/density/target.h"

#include <optional>
#include <vector>

namespace treadwell::advice {

/// What a tractor would do instead.
struct Duty {
    std::size_t tractor;  ///< index into AdviceSituation::tractors
    farm::Activity activity;
    Share share = Share::fromFraction(1.0);  ///< while packing
    friend bool operator==(const Duty&, const Duty&) = default;
};

/// What could be done otherwise; nothing: as now.
struct Change {
    std::vector<Duty> duties = {};
    std::optional<Length> layer = {};
    std::optional<AsFedRate> delivery = {};
    friend bool operator==(const Change&, const Change&) = default;
};

/// What a change would come to.
struct Outcome {
    DryDensity density;  ///< median that is counted on: a thinner layer alone adds nothing (rule B8)
    Chance chance;       ///< of the target, at that median
    std::optional<DryDensity> upTo;  ///< for a thinner layer: what the regression says of it
    bool saturated = false;          ///< the median is at the saturation limit
    double passes = 0.0;             ///< over the layer as spread
    PackingIntensity packing;        ///< of all tractors
    std::optional<CostRate> cost;    ///< change against now; none where it is not known
    double costForRanking = 0.0;     ///< money/s, unknown hours counted at the dearest known when added
};

/// A delivery that was slowed and lies within this of its limit is near it (assumed).
inline constexpr double kHeldPart = 1.25;

/// Compares changes of one situation, which check() has passed, by the density kernel: no search repeats what
/// does not change.
class Comparer final {
  public:
    explicit Comparer(const AdviceSituation& situation);

    /// Duties name tractors by index, shares are 0 to 1, layer and delivery above 0. Slowing the delivery
    /// costs the whole harvest, and no farm knows how much: its cost is not known.
    [[nodiscard]] Outcome outcomeOf(const Change& change) const;

    /// The delivery at which the tractors, with these duties, reach the target with the wanted chance,
    /// rounded down to a whole t/h; none unless it lies between 1 t/h and the present delivery.
    [[nodiscard]] std::optional<AsFedRate> slowerDelivery(const std::vector<Duty>& duties) const;
    /// That of the tractors as they work, but the present delivery where they carry it and would not carry
    /// kHeldPart of it: a pace that wavers about the limit is to be held, not let go.
    [[nodiscard]] std::optional<AsFedRate> steadyDelivery() const;

    [[nodiscard]] const density::Target& target() const noexcept { return m_target; }
    /// Indices of the tractors: heaviest first, equal ones by name.
    [[nodiscard]] const std::vector<std::size_t>& heaviestFirst() const noexcept { return m_order; }

  private:
    /// In whole t/h, rounded down; none where there is no limit.
    [[nodiscard]] std::optional<AsFedRate> limitWith(const std::vector<Duty>& duties) const;
    [[nodiscard]] std::vector<Share> sharesWith(const std::vector<Duty>& duties) const;
    [[nodiscard]] double passesOf(const std::vector<Share>& shares, AsFedRate delivery, Length layer) const;
    void price(const Change& change, Outcome& outcome) const;

    AdviceSituation m_situation;
    density::Situation m_density;
    density::CaseFrame m_frame;
    density::Target m_target;
    std::vector<std::size_t> m_order;
    CostRate m_dearest;  ///< known hour
};

/// One change, looked at by itself: the what-if at a touch. Errors: those of check(); valueOutOfRange for
/// `tractor`, `share`, `layer` (1 cm to 2 m) or `delivery` (0.1 to 5000 t/h) of the change.
[[nodiscard]] Result<Outcome> whatIf(const AdviceSituation& situation, const Change& change);

}  // namespace treadwell::advice
