#pragma once

#include "app/desktop/fill/day_trace.h"
#include "app/desktop/fill/say.h"
#include "app/desktop/settings/appearance.h"
#include "core/density/readings.h"

#include <QTimer>
#include <QWidget>
#include <array>
#include <cstdint>
#include <memory>

class QBoxLayout;
class QGridLayout;
class QPushButton;
class QStackedWidget;
class QTableView;

namespace treadwell::plots {
class Timeline;
class TimelineTable;
}  // namespace treadwell::plots
namespace treadwell::widgets {
class SectionView;
}

namespace treadwell::fill {

class ChopEntry;
class HeightsEntry;

enum class View : std::uint8_t { timeline, section, table, heights, chop };
inline constexpr std::array kViews{View::timeline, View::section, View::table, View::heights, View::chop};

/// The foot of the Fill page: one of the pictures of the filling, or the entry of heights or chop, at a
/// touch. Only what is in sight is kept up to date, and after the rest of the page has been painted.
class ViewStrip final : public QWidget {
    Q_OBJECT

  public:
    explicit ViewStrip(const settings::Appearance& appearance, QWidget* parent = nullptr);

    using SeasonPointer = std::shared_ptr<const season::Season>;
    /// Readings of `season` at their moment.
    void follow(const SeasonPointer& season, const density::Readings& readings);
    /// Another silo, day or clock: nothing that was zoomed into or made for the old one stays.
    void startAnew();
    void choose(View view);
    [[nodiscard]] View chosen() const noexcept { return m_chosen; }
    [[nodiscard]] QSize minimumSizeHint() const override;

  signals:
    /// To be recorded; `name` is what it is called if it fails.
    void proposed(const treadwell::entries::Body& body, const QString& name);
    void refused(const QString& why);

  protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

  private:
    void retranslate();
    void fitButtons();
    void place();
    void show();
    void showDay();
    void recordHeights(std::vector<entries::HeightReading> readings);
    [[nodiscard]] Speech speech() const;

    const settings::Appearance& m_appearance;
    SeasonPointer m_season;
    density::Readings m_readings;
    DayTrace m_trace;
    SeasonPointer m_shownSeason;  ///< that the chosen view shows, as of m_shownAt
    Instant m_shownAt;
    View m_chosen = View::timeline;
    QTimer m_later;

    std::optional<bool> m_narrow;  ///< as the buttons were placed last
    QBoxLayout* m_row;
    QGridLayout* m_choice;
    std::array<QPushButton*, kViews.size()> m_buttons{};
    QStackedWidget* m_stack;
    plots::Timeline* m_timeline;
    widgets::SectionView* m_section;
    plots::TimelineTable* m_rows;
    QTableView* m_table;
    HeightsEntry* m_heights;
    ChopEntry* m_chop;
};

}  // namespace treadwell::fill
