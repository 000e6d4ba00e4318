#include "core/attention/shape_cautions.h"

#include <algorithm>

namespace treadwell::attention {

std::vector<CautionNow> shapeCautions(const farm::Shape& shape, Length machineWidth) {
    farm::Silo silo;
    silo.width = shape.width;
    silo.rampSlope = shape.rampSlope;
    silo.wallHeight = shape.wallHeight;
    silo.crown = std::max(Length{}, shape.height - shape.wallHeight);
    if (shape.kind == farm::ShapeKind::pile) {
        silo.width -= shape.height * (2.0 * shape.rampSlope.runPerRise());
        silo.wallHeight = shape.height;
        silo.crown = Length{};
    }
    std::vector<CautionNow> seen = cautionsFor(silo, {.machineWidth = machineWidth}, Instant{});
    std::erase_if(seen, [](const CautionNow& caution) { return caution.weight == Weight::standing; });
    return seen;
}

}  // namespace treadwell::attention
