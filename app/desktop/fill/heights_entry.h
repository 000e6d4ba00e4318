#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/entries/height_survey.h"
#include "core/season/season.h"

#include <QWidget>
#include <array>
#include <optional>
#include <set>
#include <vector>

class QComboBox;
class QGridLayout;
class QLabel;
class QPushButton;

namespace treadwell::widgets {
class QuantitySpinBox;
}

namespace treadwell::fill {

/// Takes twelve heights of the crop along the middle of a silo, by staff from the floor or by a laser that
/// hangs at a known height. Enter goes on to the next place and, after the last, to the button; what cannot
/// be is refused at its place with the reason.
class HeightsEntry final : public QWidget {
    Q_OBJECT

  public:
    static constexpr std::size_t kPlaces = 12;

    explicit HeightsEntry(const settings::Appearance& appearance, QWidget* parent = nullptr);

    /// Asks for places over as much of the floor as the loads of the season may cover; what was typed for the
    /// same silo stays.
    void setSilo(const farm::Silo& silo, const season::Season& season, Instant now);
    void takeFocus();
    /// Of what has been read so far; none before the first.
    [[nodiscard]] std::optional<Length> mean() const;
    [[nodiscard]] QSize minimumSizeHint() const override;

  signals:
    void recorded(const std::vector<treadwell::entries::HeightReading>& readings);
    /// Why nothing was recorded.
    void refused(const QString& why);

  protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void place();
    [[nodiscard]] int boxWidth() const;
    [[nodiscard]] bool byLaser() const;
    [[nodiscard]] Length heightAt(std::size_t place) const;
    [[nodiscard]] std::vector<entries::HeightReading> readings() const;
    void goOn(std::size_t place);
    void setRanges();
    void startAnew();
    void record();
    void tell();
    void retranslate();
    void followLook();

    const settings::Appearance& m_appearance;
    farm::Silo m_silo;
    std::array<Length, kPlaces> m_along{};
    std::set<std::size_t> m_read;  ///< places with a reading
    QString m_measured;            ///< what the last survey says
    QString m_range;               ///< that a reading can have
    std::optional<bool> m_narrow;  ///< as the grid was filled last
    QGridLayout* m_grid;
    QComboBox* m_instrument;
    widgets::QuantitySpinBox* m_laserAt;
    QLabel* m_laserTitle;
    std::array<widgets::QuantitySpinBox*, kPlaces> m_boxes{};
    std::array<QLabel*, kPlaces> m_titles{};
    QLabel* m_mean;
    QLabel* m_trouble;
    QPushButton* m_record;
};

}  // namespace treadwell::fill
