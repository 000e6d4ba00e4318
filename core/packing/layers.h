#pragma once

#include "core/crop/crop.h"
#include "core/season/season.h"

#include <cstdint>
#include <map>
#include <memory>
#include <span>
#include <vector>

namespace treadwell::packing {

/// How a layer's thickness came to be known; the less certain, the later.
enum class ThicknessBasis : std::uint8_t {
    measured,       ///< somebody measured it
    loadsPerCover,  ///< somebody counted the loads that cover the surface
    assumed,        ///< nobody has said
};
constexpr std::array<std::string_view, 3> enumTexts(ThicknessBasis /*basis*/) noexcept {
    return {"measured", "loadsPerCover", "assumed"};
}

/// As spread, where nobody has said (assumed: rule B5).
inline constexpr Length kAssumedThickness = Length::fromCentimetres(15);

/// A minute of packing works on the crop this deep below the surface, as packed (30-50 cm, published).
inline constexpr Length kPackingReach = Length::fromMetres(0.40);
/// ... and at least on the last loads, which lie about the surface however thinly they are spread.
inline constexpr std::int64_t kFewestLoadsUnderWheels = 3;

/// Standard deviations of ln(mass) of crop whose loads were weighed or not (rule B10).
struct MassSpread {
    double common = 0.0;  ///< the same for all such loads: scale, loose density
    double own = 0.0;     ///< of each load by itself, in the sum of these
};

/// Errors of a load's mass as standard deviations of ln(mass). A truck scale of 20 kg divisions that errs as
/// much as it may in service (2 divisions, uniform) and rounds twice, on 12 t (assumed); a load that was not
/// weighed errs as the loose density does.
inline constexpr MassSpread kWeighedSpread{0.002, 0.0007};
inline constexpr MassSpread kUnweighedSpread{crop::kLooseCommonLogSd, crop::kLooseLoadLogSd};

/// The part of a load that lies in one layer.
struct LayerLoad {
    const season::LoadTipped* load;  ///< lives as long as the book
    AsFedMass mass;                  ///< of the part

    [[nodiscard]] DryMass dry() const noexcept { return mass * load->dryMatter; }
};

/// A layer as it was spread: what lies in it, how thick, and how long it has been packed.
struct Layer {
    std::int64_t number = 0;  ///< from 1 in its silo, bottom up
    Instant begin;            ///< tipping of its first crop
    Instant end;              ///< and of its last
    std::vector<LayerLoad> loads;
    AsFedMass mass;
    DryMass dry;
    Volume spread;     ///< as spread: mass / loose density
    Area area;         ///< of the surface that it covers, or will once it is closed
    Length thickness;  ///< as spread, not yet held to what the regression takes
    ThicknessBasis basis = ThicknessBasis::measured;  ///< the least certain of its parts
    std::map<farm::TractorId, Seconds> packing;       ///< credited by rule B3; only tractors that packed
    Share buried;  ///< mean part of the packing's reach that lies on its loads; 1 once it is out of reach
    bool closed = false;  ///< covers its surface; only the topmost may not

    /// Mass-weighted. A layer holds crop, so there is one.
    [[nodiscard]] DryMatter dryMatter() const noexcept { return dry / mass; }
    [[nodiscard]] Seconds packingTime() const noexcept;
    /// All machines' time credited so far for each tonne.
    [[nodiscard]] PackingIntensity intensity() const noexcept { return packingTime() / mass; }
};

/// All layers of one silo at one moment.
struct LayerBook {
    std::vector<std::shared_ptr<const Layer>> layers;    ///< bottom up
    std::map<farm::TractorId, Seconds> beforeFirstLoad;  ///< packed on the bare floor: listed, not credited
    std::int64_t weighedLoads = 0;
    AsFedMass underWheels;  ///< over which a minute is shared now; 0 without a load
    AsFedMass reach;        ///< the same once so much has been placed
    std::vector<std::shared_ptr<const season::Day>> days;  ///< hold the loads that the layers point to
};

/// Errors of the mass of a layer or of several layers' loads together. A box is taken at the loose density of
/// its crop, a usual load at what `weighed` loads (0 or more) of the silo have taught. Nothing without loads.
[[nodiscard]] MassSpread massSpread(std::span<const LayerLoad> loads, std::int64_t weighed) noexcept;

/// How often each point of the layer was rolled so far on average, by the machines as the farm knows them;
/// one that it does not know drives at the usual speed on the usual tracks.
[[nodiscard]] double passesOn(const Layer& layer, const season::FarmBook& farm);

/// The layers of `silo` as known at `now`; facts that happen later are not seen. Without loads it has none.
///
/// A layer is closed when its crop, at the loose density of its kind and dry matter, covers the working
/// surface (farm::workingArea) to the thickness last seen; loads are split where one ends and the next
/// begins. The ramp's height is the newest survey's highest reading, or else follows from the dry matter
/// tipped at the site's usual filling density. Minutes: rule B3. Their sum over the layers is what was packed
/// since the first load.
[[nodiscard]] LayerBook layersOf(const season::Season& season, const farm::Silo& silo, Instant now);

}  // namespace treadwell::packing
