#include "core/density/wedge_section.h"

#include <cmath>

namespace treadwell::density {

WedgeSection::WedgeSection(double top_m, double foot_m, double run, int ramps) noexcept
    : m_run{run}, m_top{std::min(top_m, foot_m / (ramps * run))} {
    const auto add = [this](double x, double height) { m_corners[m_count++] = {x, height}; };
    if (ramps == 2) add(0.0, 0.0);
    add(ramps == 2 ? run * m_top : 0.0, m_top);
    add(std::max(m_corners[m_count - 1].x, foot_m - run * m_top), m_top);
    add(foot_m, 0.0);
}

template <class Take>
void WedgeSection::pieces(double front_m, Take take) const noexcept {
    for (std::size_t i = 0; i + 1 < m_count; ++i) {
        const auto& [x0, z0] = m_corners[i];
        const auto& [end, zEnd] = m_corners[i + 1];
        if (x0 >= front_m) return;
        if (!(end > x0)) continue;
        const double x1 = std::min(end, front_m);
        const double z1 = z0 + (zEnd - z0) * (x1 - x0) / (end - x0);
        // How far the front stands above the surface.
        const double above0 = (front_m - x0) / m_run - z0, above1 = (front_m - x1) / m_run - z1;
        if (above0 >= 0.0 && above1 >= 0.0) {
            take(Piece{x1 - x0, z0, z1, 0.0, 0.0, true});
        } else if (above0 <= 0.0 && above1 <= 0.0) {
            take(Piece{x1 - x0, z0, z1, -above0, -above1, false});
        } else {
            const double t = above0 / (above0 - above1);
            const double length = t * (x1 - x0), zAcross = z0 + t * (z1 - z0);
            const bool first = above0 > 0.0;
            take(Piece{length, z0, zAcross, first ? 0.0 : -above0, 0.0, first});
            take(Piece{x1 - x0 - length, zAcross, z1, 0.0, first ? -above1 : 0.0, !first});
        }
    }
}

double WedgeSection::deepestOver_m(double first_m, double last_m) const noexcept {
    double deepest = 0.0;
    for (std::size_t i = 0; i + 1 < m_count; ++i) {
        const auto& [x0, z0] = m_corners[i];
        const auto& [x1, z1] = m_corners[i + 1];
        if (!(x1 > x0) || x1 < first_m || x0 > last_m) continue;
        for (const double x : {std::max(x0, first_m), std::min(x1, last_m)}) {
            deepest = std::max(deepest, z0 + (z1 - z0) * (x - x0) / (x1 - x0));
        }
    }
    return deepest;
}

WedgeSection::Content WedgeSection::under(double front_m, const LayerLaw& law) const noexcept {
    Content content{0.0, 0.0};
    pieces(front_m, [&](const Piece& piece) {
        content.integral += piece.length * law.meanIntegral(piece.floor0, piece.floor1);
        if (piece.passed) return;
        content.integral -= piece.length * law.meanIntegral(piece.front0, piece.front1);
        content.slope += piece.length * law.meanFactor(piece.front0, piece.front1) / m_run;
    });
    return content;
}

WedgeSection::Outline WedgeSection::outline(double front_m) const noexcept {
    Outline outline{0.0, 0.0, 0.0, 0.0};
    const auto meanSquare = [](double a, double b) { return (a * a + a * b + b * b) / 3.0; };
    pieces(front_m, [&](const Piece& piece) {
        const auto& [length, floor0, floor1, front0, front1, passed] = piece;
        outline.area += length * 0.5 * (floor0 + floor1 - front0 - front1);
        outline.depthArea += length * 0.5 * (meanSquare(floor0, floor1) - meanSquare(front0, front1));
        if (passed) return;
        outline.areaSlope += length / m_run;
        outline.depthSlope += length * 0.5 * (front0 + front1) / m_run;
    });
    return outline;
}

double levelTop_m(double length_m, double run, int ramps, double meanDepth_m) noexcept {
    // D = H (L - 2/3 k H) / (L - k H / 2), k the run of all ramps; it grows with H up to H = L / k.
    const double k = ramps * run;
    const double linear = length_m + 0.5 * meanDepth_m * k;
    const double discriminant = linear * linear - 8.0 / 3.0 * k * meanDepth_m * length_m;
    const double highest = length_m / k;
    if (discriminant <= 0.0) return highest;
    return std::min(highest, 2.0 * meanDepth_m * length_m / (linear + std::sqrt(discriminant)));
}

double footFor_m(double content_m2, double top_m, double run, int ramps) noexcept {
    constexpr double a = FieldEquation::kSurfaceFactor, b = FieldEquation::kFactorSlope;
    const double k = ramps * run;
    const auto ramp = [&](double h) { return k * h * h * (a / 2.0 + b * h / 6.0); };
    const double beyond = content_m2 - ramp(top_m);
    if (beyond >= 0.0 && top_m > 0.0) return k * top_m + beyond / FieldEquation::factorIntegral(top_m);
    // A triangle of height h; its content is convex in h, so Newton's method falls to the root from above.
    double h = std::sqrt(2.0 * content_m2 / (k * a));
    for (int i = 0; i < 50 && h > 0.0; ++i) {
        const double next = h - (ramp(h) - content_m2) / (k * FieldEquation::factorIntegral(h));
        if (!(next < h)) break;
        h = next;
    }
    return k * h;
}

}  // namespace treadwell::density
