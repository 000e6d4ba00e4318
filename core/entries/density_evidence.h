#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/farm/silo.h"
#include "core/quantity/relations.h"

#include <array>
#include <cmath>
#include <string>
#include <string_view>

namespace treadwell::entries {

enum class EvidenceKind : std::uint8_t {
    core,         ///< one spot of an opened face
    faceBalance,  ///< what was fed out over what the face gave way
    survey,       ///< tipped over the volume read while filling
};
constexpr std::array<std::string_view, 3> enumTexts(EvidenceKind /*kind*/) noexcept {
    return {"core", "faceBalance", "survey"};
}

/// A measured density beside the one that was predicted for that place without calibration: all that a farm's
/// calibration takes from it, so that later seasons can carry it on.
struct DensityEvidence {
    std::string season;  ///< the silo's filling: empty for the season at hand
    farm::SiloId silo;
    EvidenceKind kind = EvidenceKind::core;
    std::int64_t face = 0;   ///< of that filling; nothing to a survey
    std::int64_t place = 0;  ///< layer at that face; to cores alone
    DryDensity measured;
    DryDensity predicted;
    double inputs = 0.0;  ///< variance of ln(predicted) through the silo's entries, common to the silo
    double error = 0.0;   ///< this reading's own variance of ln(measured / predicted), place not included
    double layers = 1.0;  ///< how many layers a survey averages

    [[nodiscard]] double logRatio() const { return std::log(measured / predicted); }

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("error", self.error);
        visit("face", self.face);
        visit("inputs", self.inputs);
        visit("kind", self.kind);
        visit("layers", self.layers);
        visit("measured_kg_dm_m3", self.measured);
        visit("place", self.place);
        visit("predicted_kg_dm_m3", self.predicted);
        visit("season", self.season);
        visit("silo", self.silo);
    }
    friend bool operator==(const DensityEvidence&, const DensityEvidence&) = default;
};

/// Densities 1-1500 kg DM/m3 and within e^2 of each other, variances 0-1, an error of 1e-8 or more, layers
/// 1-1e6.
[[nodiscard]] Result<void> validate(const DensityEvidence& evidence);

}  // namespace treadwell::entries
