#pragma once

#include "app/desktop/desk/season_desk.h"
#include "app/desktop/fill/advice_state.h"
#include "app/desktop/fill/fill_presenter.h"
#include "app/desktop/fill/movement_watch.h"
#include "app/desktop/fill/notices.h"
#include "app/desktop/fill/trial.h"
#include "app/desktop/widgets/message_bar.h"

#include <QTimer>
#include <QWidget>
#include <map>
#include <set>

class QStackedWidget;

namespace treadwell::widgets {
class AdviceLine;
class AttentionPanel;
}  // namespace treadwell::widgets

namespace treadwell::fill {

class DayLoads;
class DryMatterEntry;
class FillHeader;
class LayerEntry;
class ViewStrip;
class YardTools;

/// The page of the filling: trucks, the pad, the density, advice, samples and the day's timeline of one silo.
/// What is entered shows as pending until the desk says that it lies on the disk.
class FillPage final : public QWidget {
    Q_OBJECT

  public:
    FillPage(desk::SeasonDesk& desk, const settings::Appearance& appearance, QWidget* parent = nullptr);

    void selectSilo(farm::SiloId silo);
    void post(widgets::Weight weight, const QString& text);
    /// Reads season and clock anew. Comes with every commit, every change of look, and every few seconds.
    void refresh();

  signals:
    /// The crew wants the other language.
    void languageTouched();

  protected:
    void changeEvent(QEvent* event) override;

  private:
    struct PendingMove {
        widgets::Zone zone;
        Share share;
    };
    struct Pending {
        std::optional<Uuid> truck;
        std::optional<std::pair<Uuid, PendingMove>> move;
        std::function<QString()> name;  ///< for the message if it fails
        std::string caution = {};       ///< that was shown
    };

    [[nodiscard]] QWidget* makeYard();
    [[nodiscard]] QWidget* makeColumns();
    void connectWidgets();
    void connectYard();
    void addShortcuts();
    void retranslate();

    [[nodiscard]] Speech speech() const;
    [[nodiscard]] const season::Season& season() const { return *m_desk.season(); }
    [[nodiscard]] std::optional<entries::Load> usualLoad(Uuid truck) const;

    void logLoad(Uuid truck);
    void recordSample(entries::DryMatterSample sample);
    void recordLayer(Length thickness);
    /// Whether a sheet with a time can be asked for; says why not.
    [[nodiscard]] bool canWriteTimes();
    void askDetails(Uuid truck);
    void askCorrection(entries::EntryId load);
    void correctMass(entries::EntryId load, AsFedMass mass);
    void askCatchUp();
    void askHired();
    void askIncident();
    void askTablet();
    void askMass(Uuid tractor);
    void recordLoad(const session::Proposal& load, bool usual);
    void takeBack(entries::EntryId load);
    void togglePause();
    void tellRadio();
    void showList(bool shown);
    void undo();
    void moveTractor(Uuid tractor, widgets::Zone zone, Share share);
    void decide(entries::AdviceDecision decision);
    void doTrial();
    void setTrying(bool trying);
    void propose(const entries::Body& body, Pending pending);
    void propose(std::vector<session::Proposal> proposals, Pending pending);
    void await(desk::Ticket ticket, Pending pending);
    void settle(desk::Ticket ticket);
    void fail(desk::Ticket ticket, const Error& error);

    void refreshHeader(Instant now);
    void refreshTrucks(Instant now);
    void refreshTractors(const season::Rolling& rolling);
    void refreshAdvice(const density::Readings& readings);
    void refreshSamples(const season::Rolling& rolling);
    void followClock(Instant now);
    void refreshLater();
    [[nodiscard]] bool recordsByItself() const;
    void recordShownAdvice(Instant now);
    void recordShown(const std::vector<attention::CautionNow>& cautions, Instant now);
    void showWorking(widgets::Reading reading);

    desk::SeasonDesk& m_desk;
    const settings::Appearance& m_appearance;
    std::optional<farm::SiloId> m_silo;
    density::ReadingsHistory m_readings;
    std::map<desk::Ticket, Pending> m_pending;
    AdviceState m_advice;
    std::string m_recordedAdvice;                 ///< said and on its way to the journal
    std::set<std::string> m_recordedCautions;     ///< shown and on their way, or failed
    std::optional<entries::EntryId> m_takenBack;  ///< on its way
    std::optional<desk::Ticket> m_undoAfter;      ///< a load that is taken back as soon as it is there
    std::optional<Instant> m_lastLook;            ///< at the clock
    MovementWatch m_movement;
    density::Readings m_shown;
    bool m_trying = false;
    Trial m_trial;
    Notices m_notices;
    QTimer m_tick;
    QTimer m_later;

    FillHeader* m_header;
    widgets::TruckBoard* m_trucks;
    DayLoads* m_dayLoads;
    QStackedWidget* m_yard;  ///< trucks, or the day's loads
    YardTools* m_tools;
    widgets::AdviceLine* m_adviceLine;
    widgets::DensityGauge* m_gauge;
    widgets::PadPlan* m_pad;
    ViewStrip* m_views;
    DryMatterEntry* m_dryMatter;
    LayerEntry* m_layer;
    widgets::AttentionPanel* m_attention;
};

/// The keys of the Fill page and what they do, for the list in the menu.
[[nodiscard]] std::vector<std::pair<QString, QString>> fillKeys();

}  // namespace treadwell::fill
