#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/density/distribution.h"

#include <QWidget>
#include <array>
#include <cstdint>
#include <optional>
#include <variant>

class QGridLayout;
class QLabel;
class QPushButton;

namespace treadwell::widgets {

class DistributionView;

enum class Reading : std::uint8_t { layerNow, today, silo };
inline constexpr std::array kReadings{Reading::layerNow, Reading::today, Reading::silo};

[[nodiscard]] QString readingName(Reading reading);

/// A density that can be shown.
struct GaugeDensity {
    density::Distribution density;
    DryDensity target;
    std::optional<DryDensity> atPorosity;  ///< the density at which the pores are as few as asked
    Chance chance;                         ///< of reaching the target
    std::optional<density::Distribution> asItLies = {};  ///< before the crop to come lies upon it
};

/// A density, or in words why there is none yet.
using GaugeView = std::variant<QString, GaugeDensity>;

/// The packed density as a distribution over a density axis: curve, what lies at the saturation limit, 80 %
/// band, target and porosity lines, with the median as a large number and the chance of reaching the target.
/// Three readings are held, one of them is drawn.
class DensityGauge final : public QWidget {
    Q_OBJECT

  public:
    explicit DensityGauge(const settings::Appearance& appearance, QWidget* parent = nullptr);

    /// In the order of kReadings.
    void setViews(std::array<GaugeView, kReadings.size()> views);
    /// What moved each of them, in words; may come later than the views.
    void setMoved(std::array<QString, kReadings.size()> moved);
    void select(Reading reading);
    [[nodiscard]] Reading selected() const noexcept { return m_selected; }
    /// What is drawn, said in one sentence.
    [[nodiscard]] QString sentence() const;

  signals:
    void readingSelected(treadwell::widgets::Reading reading);
    /// The working behind the shown reading is asked for.
    void workingRequested(treadwell::widgets::Reading reading);

  protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    [[nodiscard]] QString shortText(Reading reading) const;
    [[nodiscard]] QString bandText(const GaugeDensity& shown) const;
    void refresh();
    void fit();
    void place();
    void tellMoved();

    const settings::Appearance& m_appearance;
    std::array<GaugeView, kReadings.size()> m_views;
    std::array<QString, kReadings.size()> m_moved;
    Reading m_selected = Reading::layerNow;
    bool m_narrow = false;
    QGridLayout* m_grid;
    QLabel* m_number;
    QLabel* m_band;
    QLabel* m_chance;
    QLabel* m_movedLabel;
    DistributionView* m_distribution;
    QPushButton* m_working;
    std::array<QPushButton*, kReadings.size()> m_buttons;
};

}  // namespace treadwell::widgets
