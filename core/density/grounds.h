#pragma once

#include "core/density/estimate.h"
#include "core/density/stack.h"

#include <optional>
#include <vector>

namespace treadwell::density {

/// What the estimate of recorded layers rests on beside its situation; nothing for a typed-in one.
struct Grounds {
    std::vector<entries::EntryId> loads = {};
    std::vector<entries::EntryId> samples = {};
    std::vector<entries::EntryId> layersSeen = {};
    std::vector<entries::EntryId> work = {};  ///< of the tractors that packed

    struct Layers {
        Message what;         ///< which layers
        std::string formula;  ///< of that
        bool several;
        Filled filled;
        Length depth;  ///< mean over their volume
        double factor;
    };
    std::optional<Layers> layers = {};
};

/// The estimate of a checked situation from its frame and packing; `fixed` are the parts whose sum the frame
/// has.
[[nodiscard]] Estimate estimateFrom(const Situation& situation, const Options& options,
                                    const CaseFrame& frame, Packing packing, const SpreadParts& fixed,
                                    const Grounds& grounds);

}  // namespace treadwell::density
