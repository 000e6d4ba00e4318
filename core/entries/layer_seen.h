#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/farm/silo.h"

#include <array>
#include <string>
#include <string_view>

namespace treadwell::entries {

enum class LayerMethod : std::uint8_t { measured, loadsPerCover };

constexpr std::array<std::string_view, 2> enumTexts(LayerMethod /*method*/) noexcept {
    return {"measured", "loadsPerCover"};
}

/// How thick the crop is spread from this moment on.
struct LayerSeen {
    static constexpr std::string_view kKind = "layer_seen";
    static constexpr int kVersion = 1;

    farm::SiloId silo;
    Length thickness;
    LayerMethod method = LayerMethod::measured;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("method", self.method);
        visit("silo", self.silo);
        visit("thickness_m", self.thickness);
    }
    friend bool operator==(const LayerSeen&, const LayerSeen&) = default;
};

/// Thickness 2-100 cm.
[[nodiscard]] Result<void> validate(const LayerSeen& entry);

}  // namespace treadwell::entries
