#pragma once

#include "app/desktop/practice/practice_presenter.h"
#include "app/desktop/settings/appearance.h"

#include <QWidget>

namespace treadwell::practice_page {

/// The practice pad in plan, back wall at the left, each column as dense as the newest layer there and dotted
/// where no tyre has been on it. A touch says where the first tractor is to drive; the arrow keys send it to
/// either end and change its track, the space bar lets it stand.
class PadView final : public QWidget {
    Q_OBJECT

  public:
    explicit PadView(const settings::Appearance& appearance, QWidget* parent = nullptr);

    void setScene(const PadScene& scene);
    void clear();
    /// What is drawn, said in words.
    [[nodiscard]] QString sentence() const;
    /// Where a point of the floor is drawn.
    [[nodiscard]] QPointF pixelOf(const passes::GroundPoint& point) const;
    [[nodiscard]] QSize minimumSizeHint() const override;

  signals:
    void goalAsked(treadwell::passes::GroundPoint goal);
    void haltAsked();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    [[nodiscard]] QRectF floorArea() const;
    [[nodiscard]] passes::GroundPoint pointAt(QPointF pixel) const;
    [[nodiscard]] passes::GroundPoint heading() const;
    void drawCrop();
    void paintWalls(QPainter& painter) const;
    void paintMachine(QPainter& painter, const PadMachine& machine) const;
    void paintGoal(QPainter& painter) const;

    const settings::Appearance& m_appearance;
    std::optional<PadScene> m_scene;
    QImage m_crop;
};

}  // namespace treadwell::practice_page
