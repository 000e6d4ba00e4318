#pragma once

#include "app/desktop/desk/season_desk.h"
#include "app/desktop/plan/decisions.h"
#include "app/desktop/plan/plan_presenter.h"
#include "app/desktop/plan/scenario.h"
#include "app/desktop/plan/scenario_cards.h"
#include "app/desktop/plan/sealing_panel.h"
#include "app/desktop/widgets/message_bar.h"
#include "app/desktop/widgets/switch_row.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QPushButton;
class QStackedWidget;

namespace treadwell::plan_page {

class ChainBand;
struct Number;
class SiloDrawing;

/// The page of the office before the harvest: what is decided on the left; on the right five questions with
/// their answers, of which one is laid out, and the plans side by side. Nothing is reckoned on its thread.
class PlanPage final : public QWidget {
    Q_OBJECT

  public:
    PlanPage(desk::SeasonDesk& desk, const settings::Appearance& appearance, QWidget* parent = nullptr);

    /// Reads season and clock anew.
    void refresh();
    /// Whether what is shown belongs to what is decided.
    [[nodiscard]] bool isUpToDate() const;

  signals:
    /// An answer has come in and is shown.
    void shown();

  protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

  private:
    [[nodiscard]] QWidget* makeLeft();
    [[nodiscard]] QWidget* makeRight();
    [[nodiscard]] QWidget* makeSection(std::size_t question);
    void makeKeys();
    void retranslate();

    // What is decided.
    [[nodiscard]] Scenario& current() { return m_scenarios[m_current]; }
    void begin();
    void change(Scenario scenario);
    void toggle(Decisions::Group group, const QString& name, bool counts);
    void lookAt(std::size_t scenario);
    void openVariations();
    void addScenario(Variation variation);
    void removeScenario();
    void takeBack();
    void openSheet(const QString& title, std::vector<Number> numbers, bool named);
    void openDetails(Decisions::Group group, std::size_t index);
    void ask();

    // What follows.
    void showAnswers(const std::shared_ptr<const Answers>& answers);
    void showCompared(const std::shared_ptr<const Compared>& compared);
    void showSection(std::size_t section);
    void write();
    void writePictures();
    void writeSealing();
    [[nodiscard]] fill::Speech speech() const;

    void adopt(std::size_t scenario);
    void record(const entries::Body& body, const QString& whatFails);
    void settle(desk::Ticket ticket);
    void fail(desk::Ticket ticket, const Error& error);

    desk::SeasonDesk& m_desk;
    const settings::Appearance& m_appearance;
    PlanWork m_work;
    std::vector<Scenario> m_scenarios;
    std::size_t m_current = 0;
    std::vector<std::pair<std::vector<Scenario>, std::size_t>> m_before;  ///< for taking back
    std::shared_ptr<const Answers> m_answers;
    std::shared_ptr<const Compared> m_compared;
    std::map<desk::Ticket, QString> m_pending;  ///< what to say when it fails

    widgets::MessageBar* m_messages;
    QComboBox* m_plans;
    QLabel* m_plansTitle;
    QLabel* m_state;
    std::vector<std::pair<QPushButton*, QString (*)()>> m_buttons;
    Decisions* m_decisions;
    std::vector<QPushButton*> m_headlines;  ///< five questions, and side by side
    QStackedWidget* m_sections;
    std::array<samples_page::LinesPanel*, kQuestions> m_lines{};
    widgets::SwitchRow* m_siloSwitch;
    SiloDrawing* m_drawing;
    widgets::SwitchRow* m_fieldSwitch;
    ChainBand* m_chain;
    SealingPanel* m_sealing;
    ScenarioCards* m_cards;
};

/// The keys of the Plan page and what they do, for the list in the menu.
[[nodiscard]] std::vector<std::pair<QString, QString>> planKeys();

}  // namespace treadwell::plan_page
