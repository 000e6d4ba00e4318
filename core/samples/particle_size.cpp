#include "core/samples/particle_size.h"

#include "core/quantity/range.h"
#include "core/samples/codes.h"
#include "core/stats/normal.h"
#include "core/stats/straight_line.h"

#include <cmath>

namespace treadwell::samples {

namespace {

constexpr Source kStandard{"ANSI/ASAE S424.1, as printed in Lisowski et al. 2008", Evidence::published};
constexpr Source kLogNormal{"", Evidence::derived};
constexpr Source kOneScreen{"Armentano & Taysom 2005, J. Dairy Sci. 88:3982", Evidence::published};

}  // namespace

Result<ParticleSize> standardSize(const SieveParts& parts, std::optional<Length> topLength) {
    const auto& openings = parts.openings;
    const bool onTop = parts.parts.front() > Share{};
    if (onTop && !topLength) return fail(code::topLengthMissing, "topLength", openings.front().chopAmount());
    if (topLength) {
        const auto held = within(*topLength, openings.front(), Length::fromMillimetres(500), "topLength");
        if (!held) return Unexpected{held.error()};
    }
    std::vector<double> lengths_mm{topLength.value_or(openings.front()).millimetres()};
    for (std::size_t i = 1; i < openings.size(); ++i) {
        lengths_mm.push_back(std::sqrt(openings[i].millimetres() * openings[i - 1].millimetres()));
    }
    lengths_mm.push_back(openings.back().millimetres() / 2.0);
    double mean = 0.0, variance = 0.0;
    for (std::size_t i = 0; i < lengths_mm.size(); ++i)
        mean += parts.parts[i].fraction() * std::log(lengths_mm[i]);
    for (std::size_t i = 0; i < lengths_mm.size(); ++i)
        variance += parts.parts[i].fraction() * std::pow(std::log(lengths_mm[i]) - mean, 2);
    return ParticleSize{SizeMethod::standard, Length::fromMillimetres(std::exp(mean)),
                        std::exp(std::sqrt(variance)), kStandard};
}

Result<ParticleSize> logNormalSize(const SieveParts& parts) {
    std::vector<stats::Point> points;
    double coarser = 0.0;
    for (std::size_t i = 0; i < parts.openings.size(); ++i) {
        coarser += parts.parts[i].fraction();
        constexpr double kRounding = 1e-12;
        const double passes = 1.0 - coarser;
        if (!(parts.parts[i] > Share{}) || passes < kRounding || passes > 1.0 - kRounding) continue;
        points.push_back({std::log(parts.openings[i].millimetres()), stats::normalQuantile(passes)});
    }
    const auto line = stats::lineThrough(points);
    if (!line || !(line->slope > 0.0)) return fail(code::sievesTooFew, "masses", std::int64_t(points.size()));
    const double mean_mm = std::exp(line->meanX - line->meanY / line->slope);
    const double spread = std::exp(1.0 / line->slope);
    // A line that hardly rises has no length of its own to tell.
    if (!(mean_mm < 1000.0 && spread < 100.0))
        return fail(code::sievesTooFew, "masses", std::int64_t(points.size()));
    return ParticleSize{SizeMethod::logNormal, Length::fromMillimetres(mean_mm), spread, kLogNormal};
}

Result<ParticleSize> oneScreenSize(const SieveParts& parts) {
    for (const Length opening : parts.openings) {
        if (std::abs(opening.millimetres() - 9.0) > 0.5) continue;
        const double coarser = parts.coarserThan(opening)->fraction();
        return ParticleSize{
            SizeMethod::oneScreen, Length::fromMillimetres(1.16 + 13.00 * coarser), {}, kOneScreen};
    }
    return fail(code::screenMissing, "openings", Length::fromMillimetres(9).chopAmount());
}

Result<EffectiveFibre> effectiveFibre(const SieveParts& parts, Length from, Share fibre) {
    const auto held = within(fibre, Share{}, Share::fromFraction(1), "fibre");
    if (!held) return Unexpected{held.error()};
    const auto coarser = parts.coarserThan(from);
    if (!coarser) return fail(code::screenMissing, "from", from.chopAmount());
    return EffectiveFibre{*coarser, Share::fromFraction(coarser->fraction() * fibre.fraction())};
}

}  // namespace treadwell::samples
