#include "core/practice/track_findings.h"

#include "core/packing/passes.h"
#include "core/practice/codes.h"
#include "core/practice/limits.h"

#include <algorithm>
#include <limits>

namespace treadwell::practice {

namespace {

using passes::Counted;
using passes::DrivenLayer;
using passes::Patch;

/// Of a layer's way, so that its passes are judged (assumed).
constexpr double kPrecise = 0.5;
constexpr int kStrips = 10;

struct Judged {
    std::size_t place;  ///< in the grid
    DrivenLayer layer;
};

/// Of the passes that are possible on the judged layers, the tenth of the width or of the length with fewest.
Patch leastRolledStrip(const passes::DrivenGrid& grid, const std::vector<Judged>& layers) {
    const passes::PadShape& shape = grid.shape();
    std::array<double, kStrips> lanes{}, belts{};
    std::array<double, kStrips> laneCells{}, beltCells{};
    for (const Judged& judged : layers) {
        const auto counts = grid.passes(judged.place, Counted::most);
        for (std::size_t i = 0; i < counts.size(); ++i) {
            const std::size_t column = i % shape.along(), row = i / shape.along();
            if (!grid.holds(judged.place, column)) continue;
            const std::size_t lane = row * kStrips / shape.across(), belt = column * kStrips / shape.along();
            lanes[lane] += counts[i];
            belts[belt] += counts[i];
            laneCells[lane] += 1.0;
            beltCells[belt] += 1.0;
        }
    }
    const double width_m = shape.width.si(), length_m = shape.length.si();
    Patch strip{0.0, length_m, 0.0, width_m};
    double fewest = std::numeric_limits<double>::infinity();
    for (int i = 0; i < kStrips; ++i) {
        const auto at = static_cast<std::size_t>(i);
        if (laneCells[at] > 0.0 && lanes[at] / laneCells[at] < fewest) {
            fewest = lanes[at] / laneCells[at];
            strip = {0.0, length_m, i * width_m / kStrips, (i + 1) * width_m / kStrips};
        }
        if (beltCells[at] > 0.0 && belts[at] / beltCells[at] < fewest) {
            fewest = belts[at] / beltCells[at];
            strip = {i * length_m / kStrips, (i + 1) * length_m / kStrips, 0.0, width_m};
        }
    }
    return strip;
}

}  // namespace

std::vector<Finding> trackFindings(const passes::DrivenGrid& grid) {
    std::vector<Judged> judged;
    double driven_m = 0.0, precise_m = 0.0, time_s = 0.0;
    for (std::size_t k = 0; k < grid.layers(); ++k) {
        const DrivenLayer layer = grid.layer(k);
        driven_m += layer.distance.si();
        precise_m += layer.distance.si() * layer.precise.fraction();
        time_s += layer.time.count();
        if (layer.distance > Length{} && layer.precise.fraction() >= kPrecise) judged.push_back({k, layer});
    }
    std::vector<Finding> findings;
    const auto tell = [&](double weight, Message message, std::optional<Patch> place = {}) {
        findings.push_back({std::move(message), place, {}, weight});
    };
    if (driven_m > 0.0 && precise_m < kPrecise * driven_m) {
        tell(10.0, {code::debriefCoarse, {Share::fromFraction(precise_m / driven_m).amount()}});
    }
    if (!judged.empty()) {
        double unrolled = 0.0, passes = 0.0;
        for (const Judged& each : judged) {
            unrolled += each.layer.most.unrolled.fraction() / static_cast<double>(judged.size());
            passes += each.layer.most.meanPasses / static_cast<double>(judged.size());
        }
        if (unrolled > kUnrolled) {
            tell(2.0 + unrolled, {code::debriefUnrolled, {Share::fromFraction(unrolled).amount()}},
                 leastRolledStrip(grid, judged));
        }
        if (passes < packing::kLeastPasses) {
            tell(2.0, {code::debriefFewPasses, {passes, packing::kLeastPasses}},
                 leastRolledStrip(grid, judged));
        }
    }
    // The first layers' passes beside the last ones'; the very last is still under the wheels.
    if (const std::size_t third = judged.size() / 3; third > 0) {
        double first = 0.0, last = 0.0;
        for (std::size_t i = 0; i < third; ++i) {
            first += judged[i].layer.counted.meanPasses / static_cast<double>(third);
            last += judged[judged.size() - 2 - i].layer.counted.meanPasses / static_cast<double>(third);
        }
        if (first > 0.0 && last < kOutrun * first) tell(2.5, {code::debriefOutrun, {first, last}});
    }
    if (const Speed speed = Speed::fromSi(time_s > 0.0 ? driven_m / time_s : 0.0); speed > kHurried) {
        tell(1.5, {code::debriefTooFast, {speed.amount(), packing::kUsualSpeed.amount()}});
    }
    std::stable_sort(findings.begin(), findings.end(),
                     [](const Finding& a, const Finding& b) { return a.weight > b.weight; });
    return findings;
}

}  // namespace treadwell::practice
