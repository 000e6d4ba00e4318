#pragma once

#include "app/desktop/plan/scenario.h"
#include "app/desktop/settings/appearance.h"

#include <QScrollArea>
#include <array>

class QGridLayout;
class QLabel;
class QSpinBox;

namespace treadwell::widgets {
class StepField;
}

namespace treadwell::plan_page {

/// What a person decides of a plan: which tractors pack, how many trucks go, which fields and silos count.
/// Each is a touch; what stands behind it is changed by the button beside it.
class Decisions final : public QScrollArea {
    Q_OBJECT

  public:
    explicit Decisions(const settings::Appearance& appearance, QWidget* parent = nullptr);

    void setScenario(const Scenario& scenario);

    /// As wide as what it holds: it scrolls up and down alone.
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] QSize sizeHint() const override;

    enum class Group : std::uint8_t { tractors, fields, silos };

  signals:
    void toggled(treadwell::plan_page::Decisions::Group group, const QString& name, bool counts);
    void trucksChanged(int trucks);
    /// By the button beside a thing: its numbers, by its place in the inputs.
    void detailsRequested(treadwell::plan_page::Decisions::Group group, std::size_t index);

  protected:
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    struct Chip {
        QString name;
        QString detail;
        bool counts;
        bool last;  ///< the only one that counts
    };
    void fill(Group group, const std::vector<Chip>& chips);
    void retranslate();
    [[nodiscard]] std::vector<Chip> tractors() const;
    [[nodiscard]] std::vector<Chip> fields() const;
    [[nodiscard]] std::vector<Chip> silos() const;
    void refresh();

    const settings::Appearance& m_appearance;
    Scenario m_scenario;
    std::array<QLabel*, 3> m_titles;
    std::array<QGridLayout*, 3> m_grids;
    QLabel* m_trucksTitle;
    QSpinBox* m_trucks;
    widgets::StepField* m_trucksField;
};

}  // namespace treadwell::plan_page
