#pragma once

#include "app/desktop/desk/season_desk.h"
#include "app/desktop/practice/real_day_presenter.h"
#include "app/desktop/settings/appearance.h"

#include <QWidget>
#include <set>

class QComboBox;
class QLabel;
class QListWidget;
class QPushButton;
class QTableWidget;

namespace treadwell::samples_page {
class LinesPanel;
}

namespace treadwell::practice_page {

class BandsView;
class CoverageView;
class PlaceForm;

/// A recorded day looked back on: where the tracks of its tractors ran, what they leave to say of the passes
/// over each layer, and what the simulation makes of the day beside the regression.
class RealDayView final : public QWidget {
    Q_OBJECT

  public:
    RealDayView(desk::SeasonDesk& desk, const settings::Appearance& look, QWidget* parent = nullptr);

    /// What is looked at, for the column that the page keeps at its left.
    [[nodiscard]] QWidget* choices() const noexcept { return m_choices; }
    void attach(const QString& file);
    /// The day's deliveries and tractors as a lesson of the trainer's own.
    void saveLesson(const QString& file);

  signals:
    void failed(const treadwell::Error& error);
    /// Of this file.
    void lessonMade(const QString& file);

  protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void makeChoices();
    [[nodiscard]] QWidget* makeMiddle();
    [[nodiscard]] QWidget* makeSide();
    void connectAll();
    [[nodiscard]] fill::Speech speech() const;
    [[nodiscard]] const season::Day* day() const;
    void follow();
    void fillDays();
    void fillTracks();
    void ask();
    void showDriven(const Result<Driven>& driven);
    void showOpinion(const Result<Opinion>& opinion);
    void take(const Result<passes::Attaching>& attaching);
    void showLayer();
    void showSilent();
    void fitSide();
    void retranslate();
    void askTrack();
    void askLesson();
    void propose(entries::Body body, Instant happened, std::optional<entries::EntryId> target = {});

    desk::SeasonDesk& m_desk;
    const settings::Appearance& m_appearance;
    TrackWork m_work;
    desk::SeasonPointer m_shown;  ///< the season that was asked about
    std::vector<DayRow> m_days;
    std::vector<TrackRow> m_tracks;
    std::set<Hash> m_leftOut;  ///< tracks that are not to be laid
    std::set<desk::Ticket> m_asked;
    std::shared_ptr<const Result<Driven>> m_driven;
    std::shared_ptr<const Result<Opinion>> m_opinion;

    QWidget* m_choices;
    QComboBox* m_silo;
    QComboBox* m_day;
    QListWidget* m_list;
    QComboBox* m_tractor;
    QPushButton* m_attach;
    QPushButton* m_lesson;
    PlaceForm* m_place;
    QLabel* m_state;
    CoverageView* m_map;
    QTableWidget* m_layers;
    samples_page::LinesPanel* m_wrong;
    samples_page::LinesPanel* m_files;
    QLabel* m_opinionTitle;
    BandsView* m_bands;
    QLabel* m_opinionText;
};

}  // namespace treadwell::practice_page
