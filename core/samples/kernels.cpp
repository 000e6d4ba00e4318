#include "core/samples/kernels.h"

#include "core/base/codes.h"
#include "core/quantity/range.h"
#include "core/samples/codes.h"
#include "core/samples/grams.h"
#include "core/samples/item.h"
#include "core/stats/normal.h"

#include <algorithm>
#include <cmath>

namespace treadwell::samples {

namespace {

constexpr std::int64_t kMostKernels = 500;
constexpr Length kNarrowestGap = Length::fromMillimetres(1);

/// Quantile of a gamma variable of `shape` (0.5 or more), by Wilson & Hilferty's cube root, good to a few
/// hundredths here.
double gammaQuantile(double shape, double probability) {
    const double ninth = 1.0 / (9.0 * shape);
    const double root = 1.0 - ninth + stats::normalQuantile(probability) * std::sqrt(ninth);
    return shape * std::pow(std::max(0.0, root), 3);
}

Processing byCup(double perCup) {
    if (perCup <= 2.0) return Processing::optimal;
    return perCup <= 4.0 ? Processing::adequate : Processing::inadequate;
}

}  // namespace

Result<std::vector<CupMean>> cupMeans(std::span<const CupCount> counts) {
    std::vector<CupMean> means;
    for (const Material material : {Material::fresh, Material::fermented}) {
        CupMean mean;
        mean.material = material;
        std::int64_t sum = 0;
        for (std::size_t i = 0; i < counts.size(); ++i) {
            if (counts[i].kernels < 0 || counts[i].kernels > kMostKernels) {
                return fail(code::valueOutOfRange, item("counts", i), counts[i].kernels, std::int64_t{0},
                            kMostKernels);
            }
            if (counts[i].material != material) continue;
            sum += counts[i].kernels;
            ++mean.cups;
        }
        if (mean.cups == 0) continue;
        const auto cups = static_cast<double>(mean.cups), kernels = static_cast<double>(sum);
        mean.perCup = kernels / cups;
        mean.low80 = sum == 0 ? 0.0 : gammaQuantile(kernels + 0.5, 0.1) / cups;
        mean.high80 = gammaQuantile(kernels + 0.5, 0.9) / cups;
        mean.processing = byCup(mean.perCup);
        means.push_back(mean);
    }
    return means;
}

Result<ProcessingScore> processingScore(const ScoreTest& test) {
    const DryMass least = DryMass::fromKilograms(1e-6);
    const Share all = Share::fromFraction(1);
    const auto held = firstFailure(holdsGrams(test.whole, least, DryMass::fromKilograms(20), "whole"),
                                   holdsGrams(test.coarse, DryMass{}, test.whole, "coarse"),
                                   holdsWithin(test.wholeStarch, Share::fromPercent(0.1), all, "wholeStarch"),
                                   holdsWithin(test.coarseStarch, Share{}, all, "coarseStarch"));
    if (!held) return Unexpected{held.error()};
    const double coarse = test.coarse / test.whole * (test.coarseStarch / test.wholeStarch);
    if (coarse > 1.0)
        return fail(code::starchImpossible, "coarseStarch", test.coarseStarch.amount(),
                    test.wholeStarch.amount());
    ProcessingScore result{Share::fromFraction(1.0 - coarse), Processing::adequate, test.material};
    if (result.score > Share::fromPercent(70)) result.processing = Processing::optimal;
    if (result.score < Share::fromPercent(50)) result.processing = Processing::inadequate;
    return result;
}

Message rollGapAdvice(Processing processing, Material material, const std::optional<Length>& rollGap) {
    if (processing == Processing::optimal) return {code::kernelsOptimal, {}};
    if (material == Material::fermented) return {code::kernelsFermented, {}};
    if (!rollGap) return {code::kernelsCloseRolls, {}};
    const double step_mm = processing == Processing::inadequate ? 0.5 : 0.25;
    const Length to = std::max(kNarrowestGap, *rollGap - Length::fromMillimetres(step_mm));
    if (to >= *rollGap) return {code::kernelsCheckRolls, {rollGap->chopAmount()}};
    return {code::kernelsNarrowGap, {rollGap->chopAmount(), to.chopAmount()}};
}

}  // namespace treadwell::samples
