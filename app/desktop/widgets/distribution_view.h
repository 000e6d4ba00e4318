#pragma once

#include "app/desktop/widgets/density_gauge.h"

#include <QAccessibleWidget>

namespace treadwell::widgets {

/// The density axis of a drawing, in the units shown.
struct DensityAxis {
    double low = 0.0;
    double high = 1.0;
    QRectF area;

    [[nodiscard]] double x(double shown) const {
        return area.left() + (shown - low) / (high - low) * area.width();
    }
};

/// The curve of a density over its axis, or the reason why there is none.
class DistributionView final : public QWidget {
    Q_OBJECT

  public:
    explicit DistributionView(const settings::Appearance& appearance, QWidget* parent = nullptr);

    void setView(const GaugeView& view);
    /// Null while there is only a reason.
    [[nodiscard]] const GaugeDensity* density() const noexcept { return std::get_if<GaugeDensity>(&m_view); }
    [[nodiscard]] DensityAxis axis() const;
    /// Round numbers on the axis, also where it begins between two of them.
    [[nodiscard]] std::vector<double> ticks() const;
    [[nodiscard]] const settings::Appearance& appearance() const noexcept { return m_appearance; }
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void paintCurve(QPainter& painter, const GaugeDensity& shown) const;
    void paintLimit(QPainter& painter, const GaugeDensity& shown) const;
    void paintAxis(QPainter& painter) const;
    void paintBand(QPainter& painter, const GaugeDensity& shown) const;
    void paintMarks(QPainter& painter, const GaugeDensity& shown) const;
    void paintTitle(QPainter& painter, double end) const;

    const settings::Appearance& m_appearance;
    GaugeView m_view;
};

/// The median as a readable value between the ends of the axis.
class AccessibleDistribution final : public QAccessibleWidget, public QAccessibleValueInterface {
  public:
    explicit AccessibleDistribution(DistributionView* view);
    /// For QAccessible::installFactory().
    static QAccessibleInterface* make(const QString& className, QObject* object);

    void* interface_cast(QAccessible::InterfaceType type) override;
    QString text(QAccessible::Text which) const override;
    QVariant currentValue() const override;
    void setCurrentValue(const QVariant& value) override;
    QVariant maximumValue() const override;
    QVariant minimumValue() const override;
    QVariant minimumStepSize() const override;

  private:
    [[nodiscard]] const DistributionView& view() const;
};

}  // namespace treadwell::widgets
