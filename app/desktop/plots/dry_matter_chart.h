#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/base/farm_zone.h"
#include "core/samples/dry_matter.h"

#include <QWidget>
#include <vector>

class QCustomPlot;
class QCPGraph;

namespace treadwell::plots {

class WallClockTicker;

/// What came in: each load's dry matter as it is believed.
struct BelievedLoad {
    Instant at;
    samples::Belief dryMatter;
};

/// All lists in the order of time.
struct DryMatterView {
    FarmZone zone;
    Instant from;
    Instant to;
    std::vector<samples::TimedDryMatter> samples;
    std::vector<BelievedLoad> loads;
    DryMatter goalLow;
    DryMatter goalHigh;
};

/// The dry matter of a day: samples as marks, what the loads are taken for with its 80 % band, and the goal.
class DryMatterChart final : public QWidget {
    Q_OBJECT

  public:
    explicit DryMatterChart(const settings::Appearance& appearance, QWidget* parent = nullptr);

    void setView(const DryMatterView& view);
    /// What is shown, said in one sentence.
    [[nodiscard]] QString sentence() const;

  protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void refresh();
    void fill();
    void style();

    const settings::Appearance& m_appearance;
    DryMatterView m_view;
    QCustomPlot* m_plot;
    QCPGraph* m_believed;
    QCPGraph* m_low;
    QCPGraph* m_high;
    QCPGraph* m_samples;
    QCPGraph* m_goalLow;
    QCPGraph* m_goalHigh;
};

}  // namespace treadwell::plots
