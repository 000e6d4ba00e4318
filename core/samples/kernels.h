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

/// Kernels soften in the silo and score better for it, so fresh and fermented are never put together.
enum class Material : std::uint8_t { fresh, fermented };
constexpr std::array<std::string_view, 2> enumTexts(Material /*material*/) noexcept {
    return {"fresh", "fermented"};
}

enum class Processing : std::uint8_t { optimal, adequate, inadequate };
constexpr std::array<std::string_view, 3> enumTexts(Processing /*processing*/) noexcept {
    return {"optimal", "adequate", "inadequate"};
}

/// The cup in which kernels are counted.
inline constexpr Volume kKernelCup = Volume::fromCubicMetres(0.95e-3);

/// Whole and half kernels in one cup of one load.
struct CupCount {
    std::int64_t kernels = 0;
    Material material = Material::fresh;
};

struct CupMean {
    Material material = Material::fresh;
    double perCup = 0.0;
    double low80 = 0.0;  ///< of the mean, counts as Poisson, by the gamma posterior of Jeffreys
    double high80 = 0.0;
    std::int64_t cups = 0;
    Processing processing = Processing::optimal;
};

/// Mean kernels a cup of each material that was counted, fresh first: up to 2 ideal, up to 4 adequate
/// (extension practice, published). Errors: valueOutOfRange for a count outside 0-500 (`counts[i]`).
[[nodiscard]] Result<std::vector<CupMean>> cupMeans(std::span<const CupCount> counts);

/// The dried sample on the screen of 4.75 mm.
struct ScoreTest {
    DryMass whole;       ///< of the sample
    DryMass coarse;      ///< that stays on 4.75 mm
    Share wholeStarch;   ///< of the sample's dry matter
    Share coarseStarch;  ///< of what stays
    Material material = Material::fresh;
};

struct ProcessingScore {
    Share score;  ///< of the starch, through 4.75 mm
    Processing processing = Processing::optimal;
    Material material = Material::fresh;
};

/// Above 70 % of the starch optimal, 50-70 adequate, below 50 inadequate. Source: Mertens 2005. Errors:
/// valueNotFinite; valueOutOfRange unless 0 < whole <= 20 kg, coarse up to whole, starch within 0-100 % and
/// whole starch above 0; starchImpossible where the coarse part holds more starch than the whole.
[[nodiscard]] Result<ProcessingScore> processingScore(const ScoreTest& test);

/// What the kernels ask of the rolls: a gap of 1-3 mm is common practice, closed by half a millimetre where
/// kernels are inadequate and a quarter where adequate, never below 1 mm; there the rolls themselves are in
/// question. Nothing of fermented crop, whose harvest is over: that is said.
[[nodiscard]] Message rollGapAdvice(Processing processing, Material material,
                                    const std::optional<Length>& rollGap);

}  // namespace treadwell::samples
