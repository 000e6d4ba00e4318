#pragma once

#include "core/packing/layers.h"

#include <array>
#include <optional>

namespace treadwell::packing {

/// The layers of one silo while they are laid, taken on day by day. A value that stays small: layers beyond
/// the reach of the wheels change no more and are handed out.
class LayerLedger {
  public:
    explicit LayerLedger(farm::Silo silo) : m_silo(std::move(silo)) {}

    /// Takes what happened at the silo on `day` up to and including `now`. Days come in order, each once.
    void take(const season::Day& day, Instant now);

    /// The layers that were settled since the last call.
    [[nodiscard]] std::vector<std::shared_ptr<const Layer>> takeSettled();
    /// The layers that can still be packed, and what else a book says.
    void addTo(LayerBook& book) const;

  private:
    /// Where a part of a load lies, and where the middle of its load does.
    struct Lying {
        double upper_kg;
        double loadMiddle_kg;
    };

    /// A layer that can still be packed, from `lower` to `upper` kilograms above the floor.
    struct Growing {
        Layer layer;
        std::vector<Lying> lying;  ///< of layer.loads
        double lower_kg = 0.0;
        double upper_kg = 0.0;
        double covered = 0.0;          ///< part of its surface
        std::vector<Seconds> packing;  ///< in the order of m_tractors
    };

    struct Spread {
        AsFedDensity loose;
        Area area;
        Length thickness;
        ThicknessBasis basis;
    };

    struct Stretch {
        std::size_t tractor;  ///< in m_tractors
        double share;
        Instant begin;
        Instant end;
    };

    [[nodiscard]] std::vector<Stretch> stretchesOn(const season::Day& day, Instant now);
    [[nodiscard]] std::size_t indexOf(farm::TractorId tractor);
    void see(const season::Survey& survey);
    void roll(const std::vector<Stretch>& stretches, Instant from, Instant to);
    void credit(const std::vector<Seconds>& packing);
    void place(const season::LoadTipped& load, const Spread& spread, DryDensity filling);
    void fill(Growing& growing, const season::LoadTipped& load, const Spread& spread, double part_kg,
              double loadMiddle_kg);
    [[nodiscard]] Spread spreadOf(const season::Day& day, const season::LoadTipped& load,
                                  const season::LayerNote* seen, DryDensity filling);
    void moveReach(double reach_kg);
    [[nodiscard]] double reach_kg() const noexcept;
    [[nodiscard]] Layer published(const Growing& growing) const;

    farm::Silo m_silo;
    std::vector<farm::TractorId> m_tractors;
    std::map<farm::TractorId, Seconds> m_beforeFirstLoad;
    std::vector<std::shared_ptr<const Layer>> m_settled;
    std::vector<Growing> m_growing;
    std::int64_t m_layers = 0;
    std::int64_t m_loads = 0;
    std::int64_t m_weighed = 0;
    double m_placed_kg = 0.0;
    double m_reach_kg = 0.0;   ///< how much lies within the wheels' reach, or would in a fuller silo
    double m_bottom_kg = 0.0;  ///< the lower edge of that; never sinks
    std::array<double, kFewestLoadsUnderWheels> m_lastLoads{};  ///< lower edges, the oldest first
    Volume m_rampVolume;  ///< of a ramp that ends at the foot, as seen or as filled since
    Length m_seenHeight;  ///< of the ramp, by the newest survey
};

}  // namespace treadwell::packing
