#pragma once

#include "app/desktop/settings/appearance.h"

#include <QScrollArea>
#include <optional>

class QGridLayout;

namespace treadwell::fill {

/// What stands beside the loads: the gauge with the pad, what is entered and said beside it, and the pictures
/// at the foot. With large letters on a small screen the side comes under the gauge, and what does not fit is
/// scrolled to, downwards alone.
class Columns final : public QScrollArea {
    Q_OBJECT

  public:
    Columns(const settings::Appearance& appearance, QWidget* middle, QWidget* side, QWidget* foot);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void place();

    const settings::Appearance& m_appearance;
    QWidget* m_middle;
    QWidget* m_side;
    QWidget* m_foot;
    QGridLayout* m_grid;
    std::optional<bool> m_stacked;  ///< as the grid was filled last
};

}  // namespace treadwell::fill
