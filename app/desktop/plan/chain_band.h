#pragma once

#include "app/desktop/plan/plan_presenter.h"
#include "app/desktop/settings/appearance.h"

#include <QWidget>

namespace treadwell::plan_page {

/// The chain from a field as it is drawn.
struct ChainPicture {
    QString field;
    plan::Chain chain;
};

/// Harvester, trucks, tipping, spreading and packing as one channel, at each link as wide as what that link
/// could carry alone; through it runs the crop, no wider than the narrowest. That one is named.
class ChainBand final : public QWidget {
    Q_OBJECT

  public:
    explicit ChainBand(const settings::Appearance& appearance, QWidget* parent = nullptr);

    void setPicture(const ChainPicture& picture);
    [[nodiscard]] QString sentence() const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    /// Half of the channel's height at a link, in pixels.
    [[nodiscard]] double halfHeight(plan::Link link) const;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void tell();
    [[nodiscard]] QRectF channel() const;
    [[nodiscard]] AsFedRate widest() const;
    void paintLabels(QPainter& painter) const;

    const settings::Appearance& m_appearance;
    ChainPicture m_picture;
};

}  // namespace treadwell::plan_page
