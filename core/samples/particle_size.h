#pragma once

#include "core/base/source.h"
#include "core/quantity/fraction.h"
#include "core/samples/sieve.h"

namespace treadwell::samples {

/// How a geometric mean length was found: the methods differ by a tenth on one sample, so the name stands
/// beside the number.
enum class SizeMethod : std::uint8_t {
    standard,   ///< the sums of ANSI/ASAE S424.1
    logNormal,  ///< a line through the cumulative parts
    oneScreen   ///< from the part on a 9 mm screen alone
};
constexpr std::array<std::string_view, 3> enumTexts(SizeMethod /*method*/) noexcept {
    return {"standard", "logNormal", "oneScreen"};
}

struct ParticleSize {
    SizeMethod method;
    Length geometricMean;
    std::optional<double> spread;  ///< geometric standard deviation, a factor; none by one screen
    Source source;
};

/// The sums of the standard: Xgm = exp(sum(M ln X) / sum M), Sgm = exp(sqrt(sum(M (ln X - ln Xgm)^2) / sum
/// M)), X the geometric mean of a screen's and the next wider screen's holes, of the pan half the last
/// screen's, of the top screen `topLength`, a length measured on what lies there. Source: ANSI/ASAE S424.1,
/// as printed in Lisowski et al. 2008. Errors: topLengthMissing where something lies on the top screen and no
/// length is given; valueNotFinite; valueOutOfRange unless it is the top opening to 500 mm (`topLength`).
[[nodiscard]] Result<ParticleSize> standardSize(const SieveParts& parts, std::optional<Length> topLength);

/// The least-squares line of the normal quantile of what passes a sieve on ln(opening), a + b ln X: Xgm =
/// exp(-a/b), Sgm = exp(1/b). A sieve with nothing on it drops out, and so does one that all or nothing
/// passes. Source: derived; the usual reading of stacked sieves. Errors: sievesTooFew below two points or
/// where they do not rise.
[[nodiscard]] Result<ParticleSize> logNormalSize(const SieveParts& parts);

/// Mean length from the part F on screens of 9 mm and wider of silage: 1.16 + 13.00 F [mm]. Source: Armentano
/// & Taysom 2005, J. Dairy Sci. 88:3982. Errors: screenMissing unless a sieve of 8.5-9.5 mm is in the stack.
[[nodiscard]] Result<ParticleSize> oneScreenSize(const SieveParts& parts);

/// Physically effective fibre: the part on sieves of `from` and wider, times the fibre (NDF) of the dry
/// matter. `from` 8, 4 or 1.18 mm by the school one follows. Source: J. Anim. Sci. 2023, skac322 (check
/// values). Errors: valueNotFinite; valueOutOfRange unless fibre is 0-100 % (`fibre`); screenMissing unless
/// the stack has that sieve.
struct EffectiveFibre {
    Share factor;  ///< the part
    Share fibre;   ///< of the dry matter
};
[[nodiscard]] Result<EffectiveFibre> effectiveFibre(const SieveParts& parts, Length from, Share fibre);

}  // namespace treadwell::samples
