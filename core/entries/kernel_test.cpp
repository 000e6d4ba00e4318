#include "core/entries/kernel_test.h"

#include "core/base/codes.h"

namespace treadwell::entries {

Result<std::optional<samples::ProcessingScore>> scoreOf(const KernelTest& entry) {
    if (!entry.whole && !entry.coarse && !entry.wholeStarch && !entry.coarseStarch)
        return std::optional<samples::ProcessingScore>{};
    if (!entry.whole) return fail(code::valueMissing, "whole");
    if (!entry.coarse) return fail(code::valueMissing, "coarse");
    if (!entry.wholeStarch) return fail(code::valueMissing, "wholeStarch");
    if (!entry.coarseStarch) return fail(code::valueMissing, "coarseStarch");
    return samples::processingScore(
               {*entry.whole, *entry.coarse, *entry.wholeStarch, *entry.coarseStarch, entry.material})
        .map([](const samples::ProcessingScore& score) { return std::optional{score}; });
}

Result<void> validate(const KernelTest& entry) {
    const auto score = scoreOf(entry);
    if (!score) return Unexpected{score.error()};
    if (!*score && !entry.kernels) return fail(code::valueMissing, "kernels");
    if (!entry.kernels) return {};
    const samples::CupCount count{*entry.kernels, entry.material};
    auto counted = samples::cupMeans({&count, 1}).map([](const auto&) {});
    if (!counted) counted.error().field = "kernels";
    return counted;
}

}  // namespace treadwell::entries
