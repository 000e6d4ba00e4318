#include "core/density/wedge_stack.h"

#include "core/density/wedge_section.h"

#include <cmath>
#include <limits>

namespace treadwell::density {

namespace {

constexpr int kMostSteps = 100;
constexpr double kContentTolerance = 1e-12;  ///< of a layer's content
constexpr double kFootTolerance = 1e-13;     ///< of all that was placed
constexpr double kLargestMisfit = 1e-9;

/// A front with what lies under it.
struct Front {
    double at;
    WedgeSection::Content under;
};

/// Edges of all layers under one section.
struct Edges {
    std::vector<double> fronts;  ///< upper ones, bottom up
    double left_kg = 0.0;        ///< of what does not fit under the section, for a metre of width
    double room_kg = 0.0;        ///< what more would fit, as dense as the topmost layer
    int steps = 0;
    double misfit = 0.0;
};

/// Lays the layers under the fronts of one section.
class Laying {
  public:
    Laying(const WedgeSection& section, std::span<const LaidLayer> layers, Length width)
        : m_section(section), m_layers(layers), m_width{width.metres()} {}

    Edges lay() {
        Edges edges;
        edges.fronts.reserve(m_layers.size());
        Front front{0.0, {0.0, 0.0}};
        bool capped = false;
        double whole = -1.0;  // content of the whole section, while nothing is capped
        for (const LaidLayer& layer : m_layers) {
            const LayerLaw law{layer.bracket.si(), layer.limit.si()};
            const bool limited = law.cappedFrom_m() < m_section.deepest_m();
            // Laws without a limit in reach share one integral; any other begins with its own.
            if (limited || capped) front.under = m_section.under(front.at, law);
            if (limited || capped || whole < 0.0) {
                whole = m_section.under(m_section.foot_m(), law).integral;
            }
            capped = limited;
            const double content = layer.dry.si() / m_width / law.bracket();
            const double room = whole - front.under.integral;
            if (content >= room) {
                edges.left_kg += (content - std::max(0.0, room)) * law.bracket();
                front = {m_section.foot_m(), {std::max(whole, front.under.integral), front.under.slope}};
            } else if (content > 0.0) {
                front = advance(front, content, law, edges);
            }
            edges.fronts.push_back(front.at);
            edges.room_kg = std::max(0.0, whole - front.under.integral) * law.bracket();
        }
        return edges;
    }

  private:
    /// The front under which `content` more lies: Newton's method, held between fronts that are too near and
    /// too far.
    Front advance(const Front& from, double content, const LayerLaw& law, Edges& edges) const {
        const double wanted = from.under.integral + content;
        const double tolerance =
            kContentTolerance * content + 4.0 * std::numeric_limits<double>::epsilon() * wanted;
        double near = from.at, far = m_section.foot_m();
        double at = from.at + content / from.under.slope;
        WedgeSection::Content under{};
        int steps = 0;
        while (true) {
            if (!(at > near && at < far)) at = 0.5 * (near + far);
            under = m_section.under(at, law);
            const double error = under.integral - wanted;
            if (++steps == kMostSteps || std::abs(error) <= tolerance) break;
            (error < 0.0 ? near : far) = at;
            at -= error / under.slope;
        }
        edges.steps = std::max(edges.steps, steps);
        edges.misfit = std::max(edges.misfit, (std::abs(under.integral - wanted) - tolerance) / content);
        // What is wanted, not what was met: so that the errors of the edges do not add up.
        return {at, {wanted, under.slope}};
    }

    const WedgeSection& m_section;
    std::span<const LaidLayer> m_layers;
    double m_width;
};

/// The planned section, or the one that just holds what was placed.
class Wedge {
  public:
    Wedge(const farm::Silo& silo, std::span<const LaidLayer> layers)
        : m_silo(silo),
          m_layers(layers),
          m_run{silo.rampSlope.runPerRise()},
          m_top{levelTop_m(silo.length.metres(), m_run, silo.rampEnds, silo.plannedDepth.metres())} {}

    Stack solve(Filled filled) {
        double content = 0.0;
        for (const LaidLayer& layer : m_layers) {
            content += layer.dry.si() / m_silo.width.metres() / layer.bracket.si();
            m_dry += layer.dry.si() / m_silo.width.metres();
        }
        const double planned = m_silo.length.metres();
        double foot = footFor_m(content, m_top, m_run, m_silo.rampEnds);
        if (filled == Filled::whenFull) foot = std::max(foot, planned);
        Edges edges = layTo(foot);
        if (edges.left_kg > kFootTolerance * m_dry) edges = moveFootOut(foot);
        Stack stack = stackOf(foot, edges);
        stack.overfull = foot > planned * (1.0 + kFootTolerance);
        return stack;
    }

  private:
    [[nodiscard]] WedgeSection sectionTo(double foot) const { return {m_top, foot, m_run, m_silo.rampEnds}; }
    [[nodiscard]] Edges layTo(double foot) const {
        const WedgeSection section = sectionTo(foot);
        return Laying{section, m_layers, m_silo.width}.lay();
    }

    /// Where a limit binds, more room is needed than footFor_m() says: the foot where nothing is left and no
    /// room either, between one too near and one too far (false position, Illinois variant).
    Edges moveFootOut(double& foot) const {
        const auto leftAt = [&](double at, Edges& edges) {
            edges = layTo(at);
            return edges.left_kg > 0.0 ? edges.left_kg : -edges.room_kg;
        };
        Edges edges;
        double near = foot, nearLeft = leftAt(near, edges);
        double far = near, farLeft = nearLeft;
        int steps = 0;
        for (double stretch = 0.05; farLeft > 0.0 && steps < kMostSteps; stretch *= 2.0, ++steps) {
            far = foot * (1.0 + stretch);
            farLeft = leftAt(far, edges);
        }
        int lastSide = 0;
        double left = farLeft;
        while (std::abs(left) > kFootTolerance * m_dry && ++steps < kMostSteps) {
            foot = (near * farLeft - far * nearLeft) / (farLeft - nearLeft);
            left = leftAt(foot, edges);
            const int side = left > 0.0 ? 1 : -1;
            if (side > 0) {
                near = foot, nearLeft = left;
                if (lastSide == side) farLeft *= 0.5;
            } else {
                far = foot, farLeft = left;
                if (lastSide == side) nearLeft *= 0.5;
            }
            lastSide = side;
        }
        edges.steps = std::max(edges.steps, steps);
        edges.misfit = std::max(edges.misfit, std::abs(left) / m_dry);
        return edges;
    }

    [[nodiscard]] Stack stackOf(double foot, const Edges& edges) const {
        const WedgeSection section = sectionTo(foot);
        const WedgeSection::Outline whole = section.outline(foot);
        Stack stack;
        stack.top = Length::fromMetres(section.deepest_m());
        stack.foot = Length::fromMetres(foot);
        if (whole.area > 0.0) stack.meanDepth = Length::fromMetres(2.0 * whole.depthArea / whole.area);
        stack.steps = edges.steps;
        stack.misfit = std::max(0.0, edges.misfit);
        stack.converged = stack.misfit <= kLargestMisfit;
        stack.layers.reserve(m_layers.size());
        double lower = 0.0;
        WedgeSection::Outline below{0.0, 0.0, 0.0, 0.0};
        for (std::size_t k = 0; k < m_layers.size(); ++k) {
            const double upper = edges.fronts[k];
            const WedgeSection::Outline under = upper > lower ? section.outline(upper) : below;
            stack.layers.push_back(layerBetween(lower, below, upper, under, m_layers[k], section));
            lower = upper;
            below = under;
        }
        return stack;
    }

    [[nodiscard]] StackedLayer layerBetween(double lower, const WedgeSection::Outline& below, double upper,
                                            const WedgeSection::Outline& under, const LaidLayer& laid,
                                            const WedgeSection& section) const {
        const LayerLaw law{laid.bracket.si(), laid.limit.si()};
        StackedLayer layer{.lower = Length::fromMetres(lower),
                           .upper = Length::fromMetres(upper),
                           .thickness = Length::fromMetres((upper - lower) / std::hypot(1.0, m_run)),
                           .depth = Length::fromMetres(section.deepest_m()),
                           .volume = {},
                           .density = {},
                           .limited = law.cappedFrom_m() < section.deepestOver_m(lower, upper)};
        const double area = under.area - below.area;
        if (area > 0.0) {
            // Held to what can be: of the thinnest of layers rounding leaves little.
            const double depth = (under.depthArea - below.depthArea) / area;
            layer.depth = Length::fromMetres(std::clamp(depth, 0.0, section.deepest_m()));
            layer.volume = Area::fromSquareMetres(area) * m_silo.width;
        } else if (under.areaSlope > 0.0) {
            layer.depth = Length::fromMetres(under.depthSlope / under.areaSlope);
        }
        layer.density = layer.volume > Volume{} && laid.dry > DryMass{}
                            ? laid.dry / layer.volume
                            : DryDensity::fromSi(law.density(layer.depth.metres()));
        return layer;
    }

    const farm::Silo& m_silo;
    std::span<const LaidLayer> m_layers;
    double m_run;
    double m_top;
    double m_dry = 0.0;  ///< of all layers, for a metre of width
};

}  // namespace

Stack wedge(const farm::Silo& silo, std::span<const LaidLayer> layers, Filled filled) {
    return Wedge{silo, layers}.solve(filled);
}

}  // namespace treadwell::density
