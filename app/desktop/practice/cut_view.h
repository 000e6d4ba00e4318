#pragma once

#include "app/desktop/practice/practice_presenter.h"
#include "app/desktop/settings/appearance.h"

#include <QWidget>

namespace treadwell::practice_page {

/// The practice pad cut from wall to wall: every layer as high and as dense as it lies, heights drawn larger
/// than widths, with the colours' scale beside it.
class CutView final : public QWidget {
    Q_OBJECT

  public:
    explicit CutView(const settings::Appearance& appearance, QWidget* parent = nullptr);

    void setCut(const PadCut& cut, DryDensity wanted);
    void clear();
    [[nodiscard]] QString sentence() const;
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    [[nodiscard]] double highest_m() const;
    [[nodiscard]] QRectF area() const;
    void paintCrop(QPainter& painter) const;
    void paintAxes(QPainter& painter) const;
    void paintScale(QPainter& painter) const;

    const settings::Appearance& m_appearance;
    std::optional<PadCut> m_cut;
    DryDensity m_wanted;
};

}  // namespace treadwell::practice_page
