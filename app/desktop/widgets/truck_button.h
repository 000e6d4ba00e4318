#pragma once

#include "app/desktop/widgets/truck_board.h"

#include <QPushButton>
#include <QToolButton>

namespace treadwell::widgets {

/// The face of a truck: name, usual load and what waits for its commit. A long press is told apart from a
/// touch.
class TruckFace final : public QPushButton {
    Q_OBJECT

  public:
    explicit TruckFace(const settings::Appearance& appearance);
    void setTruck(const TruckView& truck);

  signals:
    void longPressed();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

  private:
    [[nodiscard]] QString loadText() const;
    [[nodiscard]] QString pendingText() const;

    const settings::Appearance& m_appearance;
    TruckView m_truck;
    QTimer m_held;
};

/// A truck's face with the arrow to its details beside it.
class TruckButton final : public QWidget {
    Q_OBJECT

  public:
    TruckButton(const settings::Appearance& appearance, const TruckView& truck);
    void setTruck(const TruckView& truck);
    [[nodiscard]] const TruckView& truck() const noexcept { return m_truck; }

  signals:
    void loadRequested();
    void detailRequested();

  private:
    const settings::Appearance& m_appearance;
    TruckView m_truck;
    TruckFace* m_face;
    QToolButton* m_details;
};

}  // namespace treadwell::widgets
