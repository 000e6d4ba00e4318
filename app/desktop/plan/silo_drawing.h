#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/farm/shape.h"

#include <QWidget>
#include <vector>

namespace treadwell::plan_page {

/// What a silo's drawing shows.
struct SiloPicture {
    QString name;
    farm::Shape shape;
    bool steepRamp = false;              ///< beyond the caution's slope of travel
    bool steepCrown = false;             ///< beyond the caution's slope across
    bool aboveWall = false;              ///< filled higher than the caution's limit
    bool narrowTop = false;              ///< less than the caution's machine widths
    std::vector<QString> cautions = {};  ///< in words
};

/// A silo or pile to scale: from the side with its ramps, from above with the edges of walls, ramps and
/// crown, and across, larger. What lies beyond a caution's limit is hatched and marked.
class SiloDrawing final : public QWidget {
    Q_OBJECT

  public:
    explicit SiloDrawing(const settings::Appearance& appearance, QWidget* parent = nullptr);

    void setPicture(const SiloPicture& picture);
    /// What is drawn, said in words.
    [[nodiscard]] QString sentence() const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    /// Pixels for a metre from the side and from above, and across.
    [[nodiscard]] double scaleAlong() const;
    [[nodiscard]] double scaleAcross() const;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void tell();
    [[nodiscard]] QRectF alongArea() const;
    [[nodiscard]] QRectF acrossArea() const;
    void paintSide(QPainter& painter, QPointF foot) const;
    void paintAbove(QPainter& painter, QPointF corner) const;
    void paintAcross(QPainter& painter, QPointF foot) const;
    void paintCrop(QPainter& painter, const QPolygonF& crop, bool hatched) const;
    void paintMark(QPainter& painter, QPointF place) const;

    const settings::Appearance& m_appearance;
    SiloPicture m_picture;
};

}  // namespace treadwell::plan_page
