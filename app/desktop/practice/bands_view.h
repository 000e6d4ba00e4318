#pragma once

#include "app/desktop/practice/real_day_presenter.h"
#include "app/desktop/settings/appearance.h"

#include <QWidget>

namespace treadwell::practice_page {

/// Densities with their 80 % bands on one axis, the simulation's beside the regression's.
class BandsView final : public QWidget {
    Q_OBJECT

  public:
    explicit BandsView(const settings::Appearance& appearance, QWidget* parent = nullptr);

    void setBands(std::vector<Band> bands, DryDensity target);
    /// What is drawn, said in words.
    [[nodiscard]] QString sentence() const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

  protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    [[nodiscard]] QString lineOf(const Band& band) const;
    [[nodiscard]] int rowHeight() const;
    void tell();
    void paintBand(QPainter& painter, const Band& band, const QRectF& row, double low, double high) const;

    const settings::Appearance& m_appearance;
    std::vector<Band> m_bands;
    DryDensity m_target;
};

}  // namespace treadwell::practice_page
