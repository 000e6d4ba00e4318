#pragma once

#include "core/base/error.h"
#include "core/farm/field.h"
#include "core/samples/sieve.h"

#include <optional>
#include <string_view>
#include <vector>

namespace treadwell::entries {

/// What lay on a stack of sieves, weighed or as parts of the whole.
struct SieveTest {
    static constexpr std::string_view kKind = "sieve_test";
    static constexpr int kVersion = 1;
    static constexpr bool kRecord = true;

    std::optional<farm::FieldId> field;
    std::vector<Length> openings;     ///< from the top down
    std::vector<AsFedMass> masses;    ///< as `openings`, the pan last
    std::vector<Share> parts;         ///< the same in parts of the whole, where nothing was weighed
    std::optional<AsFedMass> before;  ///< the sample before it was sieved
    std::optional<Length> topLength;  ///< mean length of what lies on the top sieve, measured
    bool wet = false;                 ///< from rain or dew

    template <class Visit, class Self>
    static void fields(Visit& visit, Self& self) {
        visit("before_kg", self.before);
        visit("field", self.field);
        visit("masses_kg", self.masses);
        visit("openings_m", self.openings);
        visit("parts", self.parts);
        visit("top_length_m", self.topLength);
        visit("wet", self.wet);
    }
    friend bool operator==(const SieveTest&, const SieveTest&) = default;
};

/// The parts of the whole. Errors: those of samples::partsOf and samples::partsOfPercent; valueMissing
/// (`masses`) unless masses or parts are given, and not both.
[[nodiscard]] Result<samples::SieveParts> partsOf(const SieveTest& entry,
                                                  Share usualLoss = samples::kUsualSieveLoss);

/// As partsOf; a top length of 1-50 cm.
[[nodiscard]] Result<void> validate(const SieveTest& entry);

}  // namespace treadwell::entries
