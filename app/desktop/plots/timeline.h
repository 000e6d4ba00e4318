#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/base/farm_zone.h"
#include "core/quantity/fraction.h"
#include "core/quantity/mass.h"

#include <QWidget>
#include <memory>
#include <optional>
#include <vector>

class QCustomPlot;

namespace treadwell::plots {

class TimelinePlot;

struct DeliveryMark {
    Instant at;
    AsFedMass mass;
};

struct RatePoint {
    Instant at;
    AsFedRate delivered;                ///< over the last 60 minutes
    std::optional<AsFedRate> capacity;  ///< what the packing tractors can take
};

/// A point without a density is a gap in the curve.
struct DensityPoint {
    Instant at;
    std::optional<DryDensity> median, low80, high80;
};

struct SampleMark {
    Instant at;
    DryMatter dryMatter;
};

struct Pause {
    Instant from;
    Instant to;
};

/// All lists in order of time.
struct TimelineView {
    FarmZone zone;
    Instant from;
    Instant to;
    std::vector<DeliveryMark> deliveries;
    std::vector<RatePoint> rates;
    std::vector<DensityPoint> densities;
    std::optional<DryDensity> target;
    std::vector<SampleMark> samples;
    std::vector<Pause> pauses;
};

/// The filling over the day on one time axis in the farm's zone: loads and samples as marks, rate of delivery
/// and packing capacity in one unit on the left, density with its band on the right, pauses hatched.
class Timeline final : public QWidget {
    Q_OBJECT

  public:
    explicit Timeline(const settings::Appearance& appearance, QWidget* parent = nullptr);
    ~Timeline() override;

    /// A zoom that the user has set stays; without one the whole span is shown.
    void setView(const TimelineView& view);
    void showAll();
    /// What is shown, said in one sentence.
    [[nodiscard]] QString sentence() const;
    /// The span of time that is in sight.
    [[nodiscard]] Instant shownFrom() const;
    [[nodiscard]] Instant shownTo() const;

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

  private:
    void zoom(double factor, double about);
    void pan(double spans);
    void keepWithin(double from, double to);
    void followScreen();
    void refresh();

    const settings::Appearance& m_appearance;
    TimelineView m_view;
    bool m_zoomed = false;
    QCustomPlot* m_plot;
    std::unique_ptr<TimelinePlot> m_curves;
};

}  // namespace treadwell::plots
