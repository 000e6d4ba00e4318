#pragma once

#include "core/base/enum_text.h"
#include "core/base/error.h"
#include "core/quantity/relations.h"

#include <array>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace treadwell::samples {

/// The stacks that are known by name; any other is a list of openings.
enum class SieveStack : std::uint8_t {
    threeTo4,    ///< three sieves of 19, 8 and 4 mm and a pan, shaken by hand
    threeTo118,  ///< the same with 1.18 mm as the third
    fiveScreens  ///< the five screens of ANSI/ASAE S424.1 and a pan
};
constexpr std::array<std::string_view, 3> enumTexts(SieveStack /*stack*/) noexcept {
    return {"threeTo4", "threeTo118", "fiveScreens"};
}

/// Holes' nominal widths from the top down. The five screens' are the diagonals of their square holes, as the
/// standard counts: 26.9 (value from memory), 18.0, 8.98, 5.61 and 1.65 mm (ANSI/ASAE S424.1 as printed in
/// Lisowski et al. 2008).
[[nodiscard]] std::span<const Length> openingsOf(SieveStack stack);

/// What lay on the sieves after shaking: from the top down, the pan last.
struct SieveTest {
    std::vector<Length> openings;  ///< one fewer than the masses
    std::vector<AsFedMass> masses;
    std::optional<AsFedMass> before;  ///< the sample's mass before it was sieved
    bool wet = false;                 ///< rain or dew on the sample: fine parts stick to coarse ones
};

/// What of a sample may be missing after sieving before this is said; assumed, the user's own.
inline constexpr Share kUsualSieveLoss = Share::fromPercent(3);

/// Parts of the sample by sieve.
struct SieveParts {
    std::vector<Length> openings;  ///< from the top down
    std::vector<Share> parts;      ///< as `openings`, the pan last; together 1
    std::vector<Share> sds;        ///< between the tests that were pooled; empty for one
    std::int64_t tests = 1;
    std::vector<Message> remarks;  ///< an empty sieve, a loss, a wet sample

    /// The part that stays on sieves of `opening` or wider. Exact where a sieve has that opening, else none.
    [[nodiscard]] std::optional<Share> coarserThan(Length opening) const;
    /// The same for any opening within the stack, on a straight line in ln(opening) and normal quantile
    /// between the sieves; held to the nearest sieve beyond them.
    [[nodiscard]] Share coarserThanAny(Length opening) const;
};

/// The parts of one test by mass. Errors: readingsMissing without a sieve; sieveCountWrong; sievesNotInOrder
/// unless openings fall from 0.1 m down to above 0.1 mm; valueNotFinite; valueOutOfRange for a mass below 0
/// or above 20 kg (`masses[i]`), or a sample before of less than the sieves hold by more than the loss
/// (`before`); sieveNothing where all is 0.
[[nodiscard]] Result<SieveParts> partsOf(const SieveTest& test, Share usualLoss = kUsualSieveLoss);

/// The parts of a test given in percent of the whole. Errors: as above; percentSum unless the parts make
/// 99-101 %.
[[nodiscard]] Result<SieveParts> partsOfPercent(std::span<const Length> openings,
                                                std::span<const double> percent);

/// Tests of one stack pooled, each counting alike. Errors: readingsMissing; sieveStacksDiffer.
[[nodiscard]] Result<SieveParts> pooled(std::span<const SieveParts> tests);

}  // namespace treadwell::samples
