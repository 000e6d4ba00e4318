#pragma once

#include "core/base/error.h"
#include "core/farm/field.h"
#include "core/samples/kernels.h"

#include <optional>
#include <string_view>

namespace treadwell::entries {

/// Kernels of one load, counted in a cup or weighed on the screen of 4.75 mm.
struct KernelTest {
    static constexpr std::string_view kKind = "kernel_test";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    std::optional<farm::FieldId> field;
    samples::Material material = samples::Material::fresh;
    std::optional<std::int64_t> kernels;  ///< whole and half ones in the cup
    std::optional<DryMass> whole;         ///< of the dried sample
    std::optional<DryMass> coarse;        ///< that stays on 4.75 mm
    std::optional<Share> wholeStarch;
    std::optional<Share> coarseStarch;

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("coarse_kg", self.coarse);
        visit("coarse_starch", self.coarseStarch);
        visit("field", self.field);
        visit("kernels", self.kernels);
        visit("material", self.material);
        visit("whole_kg", self.whole);
        visit("whole_starch", self.wholeStarch);
    }
    friend bool operator==(const KernelTest&, const KernelTest&) = default;
};

/// The score of a test that was weighed; none of one that was counted. Errors: samples::processingScore's;
/// valueMissing where some of the four weights and starches are given and others not.
[[nodiscard]] Result<std::optional<samples::ProcessingScore>> scoreOf(const KernelTest& entry);

/// A count or a score; at least one of them, each within its range.
[[nodiscard]] Result<void> validate(const KernelTest& entry);

}  // namespace treadwell::entries
