#pragma once

#include "app/desktop/widgets/pad_plan.h"

#include <QTimer>

class QToolButton;

namespace treadwell::widgets {

/// A tractor on the plan: name, mass, minutes in its zone, and while it packs a button with the share of its
/// time, which a touch turns through its steps.
class TractorChip final : public QWidget {
    Q_OBJECT

  public:
    TractorChip(const settings::Appearance& appearance, QWidget* pad);

    void setTractor(const TractorView& tractor);
    [[nodiscard]] const TractorView& tractor() const noexcept { return m_tractor; }
    void setPicked(bool picked);
    [[nodiscard]] static QSize sizeIn(const settings::Appearance& appearance, Zone zone);

  signals:
    void clicked();
    void dropped(QPoint onPad);
    void zoneAsked(int direction);
    void shareAsked(treadwell::Share share);
    void dragging();
    void massAsked();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    [[nodiscard]] QString facts() const;
    [[nodiscard]] QString massText() const;
    [[nodiscard]] QString runningText() const;
    [[nodiscard]] QRect textRect(int lines) const;
    void placeShare();
    void stepShare(int direction);
    void turnShare();

    const settings::Appearance& m_appearance;
    TractorView m_tractor;
    bool m_picked = false;
    bool m_pressed = false;
    bool m_dragged = false;
    QPoint m_grip;
    QTimer m_held;
    QToolButton* m_share;
};

}  // namespace treadwell::widgets
