#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/samples/chop.h"

#include <QWidget>
#include <optional>

class QCustomPlot;
class QCPGraph;

namespace treadwell::plots {

/// A sieved sample, and what its crop should hold.
struct SieveView {
    std::optional<samples::SieveParts> parts;
    samples::ChopRanges ranges;
};

/// How much of a sample passes an opening, as a curve through its sieves and between them, with a bar at 19,
/// 8 and 4 mm over what should pass there: where the sample lies between sieves.
class SieveChart final : public QWidget {
    Q_OBJECT

  public:
    explicit SieveChart(const settings::Appearance& appearance, QWidget* parent = nullptr);

    void setView(const SieveView& view);
    /// What is shown, said in one sentence.
    [[nodiscard]] QString sentence() const;

  protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void refresh();
    void fillCurve();
    void fillRanges();
    void style();

    const settings::Appearance& m_appearance;
    SieveView m_view;
    QCustomPlot* m_plot;
    QCPGraph* m_curve;
    QCPGraph* m_sieves;
    std::array<QCPGraph*, samples::kChopBounds.size()> m_ranges{};
};

}  // namespace treadwell::plots
