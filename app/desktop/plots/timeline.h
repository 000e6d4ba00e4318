#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/base/farm_zone.h"
#include "core/entries/advice_decided.h"
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
    friend bool operator==(const DeliveryMark&, const DeliveryMark&) = default;
};

struct RatePoint {
    Instant at;
    AsFedRate delivered;                ///< over the last 60 minutes
    std::optional<AsFedRate> capacity;  ///< what the packing tractors can take
    friend bool operator==(const RatePoint&, const RatePoint&) = default;
};

/// A point without a density is a gap in the curve.
struct DensityPoint {
    Instant at;
    std::optional<DryDensity> median, low80, high80;
    friend bool operator==(const DensityPoint&, const DensityPoint&) = default;
};

struct SampleMark {
    Instant at;
    DryMatter dryMatter;
    friend bool operator==(const SampleMark&, const SampleMark&) = default;
};

struct Pause {
    Instant from;
    Instant to;
    friend bool operator==(const Pause&, const Pause&) = default;
};

struct AdviceMark {
    Instant at;
    entries::AdviceDecision decision;
    friend bool operator==(const AdviceMark&, const AdviceMark&) = default;
};
/// `advice accepted`
[[nodiscard]] QString adviceName(entries::AdviceDecision decision);

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
    std::vector<AdviceMark> advice;
};

/// The filling over the day on one time axis in the farm's zone: loads and samples as marks, rate of delivery
/// and packing capacity in one unit on the left, density with its band on the right, pauses hatched, advice
/// in a row of its own. Zoomed by wheel, pinch and keys; who looks at the right edge goes on looking at it. A
/// cursor by the arrow keys, pointer or touch reads one moment.
class Timeline final : public QWidget {
    Q_OBJECT

  public:
    explicit Timeline(const settings::Appearance& appearance, QWidget* parent = nullptr);
    ~Timeline() override;

    /// A zoom that the user has set stays, its right edge goes along with the data; without one the whole
    /// span is shown.
    void setView(const TimelineView& view);
    void showAll();
    /// What is shown, said in one sentence.
    [[nodiscard]] QString sentence() const;
    /// The span of time that is in sight.
    [[nodiscard]] Instant shownFrom() const;
    [[nodiscard]] Instant shownTo() const;
    /// The moment under the cursor; none before it is first set.
    [[nodiscard]] std::optional<Instant> cursor() const noexcept { return m_cursor; }
    /// What was at a moment, or at the last one known before it.
    [[nodiscard]] QString sentenceAt(Instant at) const;

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    bool event(QEvent* event) override;
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
    void restyle();
    void refill();
    void moveCursor(Instant at);
    void pointAt(double pixel);
    void stepCursor(int direction);
    void describe();

    const settings::Appearance& m_appearance;
    TimelineView m_view;
    bool m_zoomed = false;
    std::optional<Instant> m_cursor;
    QCustomPlot* m_plot;
    std::unique_ptr<TimelinePlot> m_curves;
};

}  // namespace treadwell::plots
