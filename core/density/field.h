#pragma once

#include "core/density/distribution.h"
#include "core/density/layer_law.h"
#include "core/density/spread.h"
#include "core/density/stack.h"

#include <optional>
#include <vector>

namespace treadwell::density {

/// A place in a silo: along the floor from the back wall, up from the floor, across from the left wall.
struct Position {
    Length along;
    Length up;
    Length across;
};

/// All between two corners of a silo.
struct Box {
    Position low;
    Position high;
};

/// What the field takes of a layer: its law, and variances of ln(density) in common to all layers and of this
/// one by itself.
struct FieldLayer {
    LayerLaw law;
    DryDensity limit;
    double commonVariance;
    double ownVariance;
};

struct FieldPoint {
    std::size_t layer;     ///< from 0, bottom up
    Length depth;          ///< below the surface
    Distribution density;  ///< of a single core taken here
};

struct FieldMean {
    DryMass dry;
    Volume volume;           ///< of crop
    Length depth;            ///< mean over the volume
    double effectiveLayers;  ///< 1 / sum(w^2), w each layer's part of the dry matter
    Distribution density;    ///< all dry matter / all volume
};

/// Crop beside a wall is looser: the middle is 9 % denser than within 0.5 m of the walls (D'Amours & Savoie
/// 2005, ASAE 051051, 13 sections of herbage silage, published; the width of the strip assumed).
inline constexpr double kMiddleToWall = 1.09;
inline constexpr Length kWallStrip = Length::fromMetres(0.5);

/// The density beside the mean over the width: 1/1.09 within 0.5 m of the walls, all divided by the mean
/// 1 - (1/W)(1 - 1/1.09) [dimensionless]. `across` 0 to `width`, which is above 1 m.
[[nodiscard]] double wallFactor(Length across, Length width) noexcept;

/// The density at every place of a silo: of the layer that lies there, at its depth below the surface (rule
/// B7: on a ramp the layer whose front passed the place), looser at the walls. Level across.
class Field {
  public:
    /// `layers` are those of `stack`; of the residual face and spot are taken, by which a single core differs
    /// from its layer, and the doubt of the variances.
    Field(const farm::Silo& silo, const Stack& stack, std::vector<FieldLayer> layers,
          const Residual& residual);

    /// None outside the silo and where no crop lies yet.
    [[nodiscard]] std::optional<FieldPoint> at(const Position& place) const;

    /// Over the crop in a box: exact for the layers' laws. The common parts of the layers' errors do not
    /// average out, their own parts do by the dry matter they hold. None where there is no crop in it.
    [[nodiscard]] std::optional<FieldMean> mean(const Box& box) const;

    /// Height of the surface above the floor; 0 beyond the foot.
    [[nodiscard]] Length surface(Length along) const noexcept;
    /// All that holds crop or will.
    [[nodiscard]] Box whole() const noexcept;

  private:
    struct Corner {
        double x, z;
    };
    struct Cut;

    [[nodiscard]] double surface_m(double x) const noexcept;
    /// Height of an edge at a distance from the back wall.
    [[nodiscard]] double edge_m(double edge, double x) const noexcept;
    /// Where an edge passes a place.
    [[nodiscard]] double front_m(double x, double z) const noexcept;
    [[nodiscard]] std::vector<double> kinks(std::size_t layer, double x0, double x1, double z0,
                                            double z1) const;
    [[nodiscard]] Cut cut(std::size_t layer, double x0, double x1, double z0, double z1) const;
    [[nodiscard]] FieldMean meanOf(const std::vector<std::pair<std::size_t, Cut>>& cuts, double width_m,
                                   double walls) const;

    std::vector<FieldLayer> m_layers;
    std::vector<double> m_edges;  ///< m_layers.size() + 1, bottom up
    std::vector<Corner> m_corners;
    double m_width;
    double m_run;  ///< 0 for lifts
    double m_spot;
    double m_doubt;
};

}  // namespace treadwell::density
