#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/farm/silo.h"
#include "core/quantity/relations.h"

#include <array>
#include <optional>
#include <string_view>

namespace treadwell::entries {

/// Where the material of a core came from. A face that was opened is never cored by a person standing at it.
enum class CoreOrigin : std::uint8_t {
    loaderRemoved,  ///< loose, from a loader's bucket: dry matter, chop and feed value, no density
    blockCut,       ///< an intact block, cut and weighed by machine
    machineCorer,   ///< a corer on a machine
    faceBalance,    ///< dry matter fed out over days, by what the face gave way
};
constexpr std::array<std::string_view, 4> enumTexts(CoreOrigin /*origin*/) noexcept {
    return {"loaderRemoved", "blockCut", "machineCorer", "faceBalance"};
}

/// A sample of silage from an opened silo, and where it came from.
struct Core {
    static constexpr std::string_view kKind = "core";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    farm::SiloId silo;
    Length along;                  ///< from the back wall
    Length across;                 ///< from the left wall, seen from the back wall
    std::optional<Length> depth;   ///< below the surface; this or
    std::optional<Length> height;  ///< above the floor
    CoreOrigin origin = CoreOrigin::machineCorer;
    std::optional<DryMatter> dryMatter;
    std::optional<AsFedMass> mass;  ///< with its volume, or the corer's diameter and length
    std::optional<Volume> volume;
    std::optional<Length> diameter;     ///< inside
    std::optional<Length> length;       ///< of the hole, as deep as it was cut
    std::optional<DryDensity> density;  ///< where it was worked out elsewhere

    /// As given, or dry matter x mass / volume; none for loose material. Of an entry that validate() passes.
    [[nodiscard]] std::optional<DryDensity> dryDensity() const;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("across_m", self.across);
        visit("along_m", self.along);
        visit("density_kg_dm_m3", self.density);
        visit("depth_m", self.depth);
        visit("diameter_m", self.diameter);
        visit("dry_matter", self.dryMatter);
        visit("height_m", self.height);
        visit("length_m", self.length);
        visit("mass_kg", self.mass);
        visit("origin", self.origin);
        visit("silo", self.silo);
        visit("volume_m3", self.volume);
    }
    friend bool operator==(const Core&, const Core&) = default;
};

/// Along 0-500 m, across 0-100 m, depth or height 0-12 m and one of them; dry matter 10-90 %; corer 1-50 cm
/// wide and 2-300 cm deep, mass 1 g to 5 t, volume 1e-5 to 10 m3. Loose material has its dry matter at least;
/// any other one way to a density of 30-900 kg DM/m3.
[[nodiscard]] Result<void> validate(const Core& entry);

}  // namespace treadwell::entries
