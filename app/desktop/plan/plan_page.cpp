#include "app/desktop/plan/plan_page.h"

#include "app/desktop/plan/chain_band.h"
#include "app/desktop/plan/plan_sheets.h"
#include "app/desktop/plan/silo_drawing.h"
#include "app/desktop/widgets/choice_box.h"

#include <QEvent>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <tuple>

namespace treadwell::plan_page {

namespace {

constexpr std::size_t kBeside = kQuestions;  ///< the section of the plans side by side
constexpr std::size_t kMostKept = 100;       ///< steps that can be taken back

std::set<std::string>& idleIn(Scenario& scenario, Decisions::Group group) {
    switch (group) {
        case Decisions::Group::tractors:
            return scenario.idleTractors;
        case Decisions::Group::fields:
            return scenario.idleFields;
        case Decisions::Group::silos:
            break;
    }
    return scenario.idleSilos;
}

}  // namespace

PlanPage::PlanPage(desk::SeasonDesk& desk, const settings::Appearance& look, QWidget* parent)
    : QWidget{parent},
      m_desk{desk},
      m_appearance{look},
      m_messages{new widgets::MessageBar{look}},
      m_plans{new widgets::ChoiceBox{look}},
      m_plansTitle{new QLabel},
      m_state{new QLabel},
      m_decisions{new Decisions{look}},
      m_sections{new QStackedWidget},
      m_siloSwitch{new widgets::SwitchRow{look}},
      m_drawing{new SiloDrawing{look}},
      m_fieldSwitch{new widgets::SwitchRow{look}},
      m_chain{new ChainBand{look}},
      m_sealing{new SealingPanel{look}},
      m_cards{new ScenarioCards{look}} {
    auto* layout = new QVBoxLayout{this};
    layout->addWidget(m_messages);
    auto* columns = new QHBoxLayout;
    layout->addLayout(columns, 1);
    columns->addWidget(makeLeft());
    columns->addWidget(makeRight(), 1);
    makeKeys();
    connect(&m_work, &PlanWork::answered, this, &PlanPage::showAnswers);
    connect(&m_work, &PlanWork::compared, this, &PlanPage::showCompared);
    connect(&m_work, &PlanWork::adoptionReady, this,
            [this](const std::shared_ptr<const Result<entries::PlanAdopted>>& plan) {
                const QString fails = tr("The plan is not adopted: %1");
                if (*plan) return record(**plan, fails);
                m_messages->post(widgets::Weight::error, fails.arg(speech().say(plan->error())));
            });
    connect(&desk, &desk::SeasonDesk::committed, this, &PlanPage::settle);
    connect(&desk, &desk::SeasonDesk::failed, this, &PlanPage::fail);
    connect(&desk, &desk::SeasonDesk::changed, this, &PlanPage::refresh);
    connect(&look, &settings::Appearance::changed, this, &PlanPage::refresh);
    retranslate();
}

void PlanPage::retranslate() {
    m_plansTitle->setText(tr("Plan"));
    m_plans->setAccessibleName(tr("Plan"));
    for (const auto& [button, name] : m_buttons) button->setText(name());
    m_sealing->setTitle(tr("Step by step: a touch records when it was done"));
    m_siloSwitch->setTitle(tr("Silo"));
    m_fieldSwitch->setTitle(tr("From"));
    for (std::size_t i = 0; i < kQuestions; ++i) m_lines[i]->setTitle(questionName(Question(i)));
    refresh();
}

fill::Speech PlanPage::speech() const {
    return {m_appearance.units(), m_desk.season()->zone()};
}

bool PlanPage::isUpToDate() const {
    return m_answers != nullptr && !m_scenarios.empty() &&
           m_answers->inputs == m_scenarios[m_current].chosen();
}

/// The first plan, and two that are near it, so that there is something to compare.
void PlanPage::begin() {
    const Scenario first = firstOf(*m_desk.season(), m_desk.season()->zone().dayOf(m_desk.now()));
    m_scenarios = {first};
    for (const auto& [variation, name] :
         {std::pair{Variation::oneTruckFewer, tr("One truck fewer")},
          std::pair{Variation::withoutTheLightest, tr("Without the lightest tractor")}}) {
        m_scenarios.push_back(variationOf(first, variation, freeName(m_scenarios, name.toStdString())));
    }
}

void PlanPage::change(Scenario scenario) {
    if (scenario == current()) return;
    m_before.emplace_back(m_scenarios, m_current);
    if (m_before.size() > kMostKept) m_before.erase(m_before.begin());
    current() = std::move(scenario);
    ask();
    refresh();
}

void PlanPage::toggle(Decisions::Group group, const QString& name, bool counts) {
    Scenario changed = current();
    auto& idle = idleIn(changed, group);
    counts ? void(idle.erase(name.toStdString())) : void(idle.insert(name.toStdString()));
    change(std::move(changed));
}

void PlanPage::lookAt(std::size_t scenario) {
    m_current = scenario;
    ask();
    refresh();
}

void PlanPage::addScenario(Variation variation) {
    const std::array names{tr("A copy"), tr("One truck fewer"), tr("Two more trucks"),
                           tr("Without the lightest tractor")};
    m_before.emplace_back(m_scenarios, m_current);
    const QString& name = names[static_cast<std::size_t>(variation)];
    m_scenarios.push_back(variationOf(current(), variation, freeName(m_scenarios, name.toStdString())));
    lookAt(m_scenarios.size() - 1);
}

void PlanPage::removeScenario() {
    if (m_scenarios.size() < 2) return;
    m_before.emplace_back(m_scenarios, m_current);
    m_scenarios.erase(m_scenarios.begin() + static_cast<std::ptrdiff_t>(m_current));
    lookAt(std::min(m_current, m_scenarios.size() - 1));
}

void PlanPage::takeBack() {
    if (m_before.empty()) return;
    std::tie(m_scenarios, m_current) = m_before.back();
    m_before.pop_back();
    ask();
    refresh();
}

void PlanPage::openSheet(const QString& title, std::vector<Number> numbers, bool named) {
    auto* sheet = new PlanSheet{m_appearance,
                                title,
                                current().all,
                                std::move(numbers),
                                [this](const Error& error) { return speech().say(error); },
                                this};
    if (named) sheet->addName();
    connect(sheet, &PlanSheet::changed, this, [this](const plan::Inputs& inputs) {
        Scenario changed = current();
        changed.all = inputs;
        change(std::move(changed));
    });
    sheet->open();
}

void PlanPage::openDetails(Decisions::Group group, std::size_t index) {
    const plan::Inputs& all = current().all;
    if (group == Decisions::Group::tractors)
        return openSheet(QString::fromStdString(all.tractors[index].name), tractorNumbers(index), false);
    if (group == Decisions::Group::fields)
        return openSheet(QString::fromStdString(all.grounds[index].name), fieldNumbers(index), false);
    openSheet(QString::fromStdString(all.silos[index].name), siloNumbers(index), false);
}

void PlanPage::ask() {
    std::vector<plan::Inputs> all;
    for (const Scenario& scenario : m_scenarios) all.push_back(scenario.chosen());
    m_work.ask(current().chosen(), std::move(all));
}

void PlanPage::showAnswers(const std::shared_ptr<const Answers>& answers) {
    if (m_scenarios.empty() || answers->inputs != current().chosen()) return;  // of an older question
    m_answers = answers;
    write();
    emit shown();
}

void PlanPage::showCompared(const std::shared_ptr<const Compared>& compared) {
    m_compared = compared;
    refresh();
}

void PlanPage::adopt(std::size_t scenario) {
    if (scenario < m_scenarios.size()) m_work.askForAdoption(m_scenarios[scenario].chosen());
}

void PlanPage::record(const entries::Body& body, const QString& whatFails) {
    m_pending.emplace(m_desk.propose(body), whatFails);
}

void PlanPage::settle(desk::Ticket ticket) {
    if (m_pending.erase(ticket) > 0) refresh();
}

void PlanPage::fail(desk::Ticket ticket, const Error& error) {
    const auto pending = m_pending.find(ticket);
    if (pending == m_pending.end()) return;
    m_messages->post(widgets::Weight::error, pending->second.arg(speech().say(error)));
    m_pending.erase(pending);
}

void PlanPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_scenarios.empty()) {
        begin();
        ask();
    }
    refresh();
}

void PlanPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

}  // namespace treadwell::plan_page
