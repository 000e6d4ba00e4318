#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/density/field.h"

#include <QImage>
#include <QWidget>
#include <memory>
#include <optional>
#include <vector>

namespace treadwell::widgets {

/// A layer of a section, as it is told.
struct SectionLayer {
    std::int64_t number;
    QString when;  ///< `15 Sep 10:20–11:05`
    int day;       ///< of the filling, from 0
};

/// The crop in a silo as it lies, along the middle of its width, or in words why there is no picture.
struct Section {
    std::shared_ptr<const density::Field> field;  ///< null: `reason` says why
    QString reason;
    std::vector<SectionLayer> layers;  ///< bottom up, as the field counts them
    Length length;                     ///< of the floor
    Length width;
    Length wall;
    Length planned;  ///< mean depth when full
    DryDensity target;
};

/// The longitudinal section of a silo from its back wall, coloured by density, with the edges of the days,
/// and of the layers where there is room for them; what lies below the target is hatched. A place is read by
/// pointing at it, by touch or with the arrow keys.
class SectionView final : public QWidget {
    Q_OBJECT

  public:
    explicit SectionView(const settings::Appearance& appearance, QWidget* parent = nullptr);

    void setSection(Section section);
    /// A place in silo metres; held to the picture. Its layer, hour and density are told.
    void pointAt(Length along, Length up);
    /// What is at the place pointed at; before any, what the picture shows.
    [[nodiscard]] QString sentence() const;
    [[nodiscard]] QSize minimumSizeHint() const override;
    /// Where a place is drawn.
    [[nodiscard]] QPointF pixelOf(Length along, Length up) const;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;

  private:
    struct Spot {
        Length along;
        Length up;
    };
    [[nodiscard]] QRectF area() const;
    [[nodiscard]] Length highest() const;
    [[nodiscard]] std::optional<density::FieldPoint> placeAt(Spot spot) const;
    [[nodiscard]] Spot spotAt(QPointF pixel) const;
    void tell();
    /// What lies within one pair of edges.
    [[nodiscard]] std::size_t bandOf(std::size_t layer) const;
    void drawCrop();
    void paintOutline(QPainter& painter) const;
    void paintAxes(QPainter& painter) const;
    void paintRamp(QPainter& painter) const;
    void paintSpot(QPainter& painter) const;

    const settings::Appearance& m_appearance;
    Section m_section;
    std::optional<Spot> m_spot;
    QImage m_crop;  ///< the coloured crop; null when it must be drawn anew
};

}  // namespace treadwell::widgets
