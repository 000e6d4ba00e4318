// How the Plan page is laid out and what is written onto it.
#include "app/desktop/plan/chain_band.h"
#include "app/desktop/plan/plan_page.h"
#include "app/desktop/plan/plan_sheets.h"
#include "app/desktop/plan/silo_drawing.h"
#include "app/desktop/settings/dates.h"
#include "app/desktop/widgets/page_change.h"
#include "core/attention/shape_cautions.h"
#include "core/plan/from_farm.h"

#include <QComboBox>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace treadwell::plan_page {

namespace {

constexpr int kLeftWidth = 330;  // pixels, at least
constexpr std::size_t kSections = kQuestions + 1;
const std::array<Qt::Key, kSections> kSectionKeys{Qt::Key_F2, Qt::Key_F3, Qt::Key_F4,
                                                  Qt::Key_F5, Qt::Key_F6, Qt::Key_F7};

bool isSeen(const std::vector<attention::CautionNow>& cautions, attention::Caution caution) {
    return std::ranges::any_of(cautions, [&](const auto& each) { return each.caution == caution; });
}

SiloPicture pictureOf(const plan::PlannedSilo& silo, Length machineWidth, const fill::Speech& speech) {
    SiloPicture picture{.name = QString::fromStdString(silo.name), .shape = silo.shape};
    const auto cautions = attention::shapeCautions(silo.shape, machineWidth);
    picture.steepRamp = isSeen(cautions, attention::Caution::rampSlope);
    picture.steepCrown = isSeen(cautions, attention::Caution::crossSlope);
    picture.aboveWall = isSeen(cautions, attention::Caution::fillAboveWall);
    picture.narrowTop = isSeen(cautions, attention::Caution::workingWidth);
    for (const attention::CautionNow& caution : cautions)
        picture.cautions.push_back(speech.say(caution.message));
    return picture;
}

/// The chosen one while it is still among the choices, else the first.
template <class Things>
const auto& chosenOf(const Things& things, widgets::SwitchRow& row) {
    std::vector<widgets::SwitchChoice> choices;
    for (const auto& thing : things) {
        const QString name = QString::fromStdString(thing.name);
        choices.push_back({name, name, {}});
    }
    row.setChoices(choices);
    const auto chosen = std::ranges::find_if(
        things, [&](const auto& thing) { return QString::fromStdString(thing.name) == row.key(); });
    const auto& thing = chosen == things.end() ? things.front() : *chosen;
    row.select(QString::fromStdString(thing.name));
    row.setVisible(things.size() > 1);
    return thing;
}

}  // namespace

QWidget* PlanPage::makeLeft() {
    auto* left = new QWidget;
    auto* layout = new QVBoxLayout{left};
    layout->setContentsMargins(0, 0, 0, 0);
    const int height = m_appearance.pixels(settings::kControlMillimetres);
    m_plans->setObjectName(QStringLiteral("plans"));
    m_plans->setMinimumHeight(height);
    m_plans->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_plansTitle->setBuddy(m_plans);
    auto* which = new QHBoxLayout;
    which->addWidget(m_plansTitle);
    which->addWidget(m_plans, 1);
    layout->addLayout(which);
    connect(m_plans, &QComboBox::activated, this,
            [this](int plan) { lookAt(static_cast<std::size_t>(plan)); });
    const auto addButton = [&](QHBoxLayout* row, const char* key, QString (*name)(), const auto& touched) {
        auto* button = new QPushButton;
        button->setObjectName(QLatin1String{key});
        button->setMinimumHeight(height);
        row->addWidget(button, 1);
        m_buttons.emplace_back(button, name);
        connect(button, &QPushButton::clicked, this, touched);
        return button;
    };
    auto* first = new QHBoxLayout;
    addButton(
        first, "planBeside", [] { return tr("Try another"); }, [this] { openVariations(); });
    addButton(
        first, "planRemove", [] { return tr("Drop it"); }, [this] { removeScenario(); });
    addButton(
        first, "planTakeBack", [] { return tr("Back"); }, [this] { takeBack(); });
    layout->addLayout(first);
    layout->addWidget(m_decisions, 1);
    connect(m_decisions, &Decisions::toggled, this, &PlanPage::toggle);
    connect(m_decisions, &Decisions::detailsRequested, this, &PlanPage::openDetails);
    connect(m_decisions, &Decisions::trucksChanged, this, [this](int trucks) {
        Scenario changed = current();
        changed.all.haulage.trucks = trucks;
        change(std::move(changed));
    });
    auto* second = new QHBoxLayout;
    addButton(
        second, "planWork", [] { return tr("Crop and work"); },
        [this] { openSheet(tr("Crop and work"), workNumbers(), true); });
    addButton(
        second, "planPrices", [] { return tr("Prices"); },
        [this] { openSheet(tr("Prices, in the farm's own currency"), priceNumbers(), false); });
    auto* third = new QHBoxLayout;
    addButton(
        third, "planSealing", [] { return tr("Sealing"); },
        [this] { openSheet(tr("Sealing"), sealingNumbers(), false); });
    addButton(
        third, "planFeeding", [] { return tr("Feeding"); },
        [this] { openSheet(tr("Feeding"), feedingNumbers(), false); });
    layout->addLayout(second);
    layout->addLayout(third);
    left->setMinimumWidth(kLeftWidth);
    left->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    return left;
}

QWidget* PlanPage::makeSection(std::size_t question) {
    auto* section = new QWidget;
    auto* layout = new QVBoxLayout{section};
    layout->setContentsMargins(0, 0, 0, 0);
    m_lines[question] =
        new samples_page::LinesPanel{m_appearance, QStringLiteral("planLines%1").arg(question)};
    if (Question(question) == Question::fits) {
        layout->addWidget(m_siloSwitch);
        layout->addWidget(m_drawing);
    } else if (Question(question) == Question::flows) {
        layout->addWidget(m_fieldSwitch);
        layout->addWidget(m_chain);
    }
    layout->addWidget(m_lines[question]);
    if (Question(question) == Question::seals) layout->addWidget(m_sealing);
    layout->addStretch(1);
    return widgets::scrolled(section);
}

QWidget* PlanPage::makeRight() {
    auto* right = new QWidget;
    auto* layout = new QVBoxLayout{right};
    layout->setContentsMargins(0, 0, 0, 0);
    auto* row = new QHBoxLayout;
    row->setSpacing(m_appearance.pixels(1.0));
    for (std::size_t i = 0; i < kSections; ++i) {
        auto* headline = new QPushButton;
        headline->setObjectName(QStringLiteral("planHeadline%1").arg(i));
        headline->setCheckable(true);
        headline->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres) +
                                   fontMetrics().height());
        headline->setSizePolicy(QSizePolicy::Minimum, QSizePolicy::Fixed);
        row->addWidget(headline);
        m_headlines.push_back(headline);
        connect(headline, &QPushButton::clicked, this, [this, i] { showSection(i); });
    }
    layout->addLayout(row);
    m_state->setObjectName(QStringLiteral("planState"));
    layout->addWidget(m_state);
    for (std::size_t i = 0; i < kQuestions; ++i) m_sections->addWidget(makeSection(i));
    m_sections->addWidget(m_cards);
    layout->addWidget(m_sections, 1);
    m_siloSwitch->setObjectName(QStringLiteral("planSilo"));
    m_fieldSwitch->setObjectName(QStringLiteral("planField"));
    connect(m_siloSwitch, &widgets::SwitchRow::chosen, this, &PlanPage::writePictures);
    connect(m_fieldSwitch, &widgets::SwitchRow::chosen, this, &PlanPage::writePictures);
    connect(m_cards, &ScenarioCards::chosen, this, &PlanPage::lookAt);
    connect(m_cards, &ScenarioCards::adoptRequested, this, &PlanPage::adopt);
    connect(m_sealing, &SealingPanel::doneRequested, this, [this](const plan::SealTask& task) {
        const QString fails = tr("The step is not recorded: %1");
        const auto body = plan::doneEntry(task, {}, tr("Surface treatment").toStdString());
        if (body) return record(*body, fails);
        m_messages->post(widgets::Weight::error, fails.arg(speech().say(body.error())));
    });
    return right;
}

void PlanPage::makeKeys() {
    for (std::size_t i = 0; i < kSections; ++i) {
        auto* key = new QShortcut{QKeySequence{kSectionKeys[i]}, this};
        connect(key, &QShortcut::activated, this, [this, i] { showSection(i); });
    }
    auto* another = new QShortcut{QKeySequence{Qt::CTRL | Qt::Key_N}, this};
    connect(another, &QShortcut::activated, this, &PlanPage::openVariations);
    auto* back = new QShortcut{QKeySequence{Qt::CTRL | Qt::Key_Z}, this};
    connect(back, &QShortcut::activated, this, &PlanPage::takeBack);
    auto* adopt = new QShortcut{QKeySequence{Qt::CTRL | Qt::Key_Return}, this};
    connect(adopt, &QShortcut::activated, this, [this] { this->adopt(m_current); });
    showSection(0);
}

void PlanPage::openVariations() {
    auto* menu = new QMenu{this};
    menu->setAttribute(Qt::WA_DeleteOnClose);
    const std::array names{tr("A copy to change"), tr("One truck fewer"), tr("Two more trucks"),
                           tr("Without the lightest tractor")};
    for (std::size_t i = 0; i < names.size(); ++i)
        connect(menu->addAction(names[i]), &QAction::triggered, this,
                [this, i] { addScenario(Variation(i)); });
    menu->popup(m_plans->mapToGlobal(m_plans->rect().bottomLeft()));
}

void PlanPage::showSection(std::size_t section) {
    m_sections->setCurrentIndex(static_cast<int>(section));
    for (std::size_t i = 0; i < m_headlines.size(); ++i) m_headlines[i]->setChecked(i == section);
}

void PlanPage::refresh() {
    if (!isVisible() || m_scenarios.empty()) return;
    const QSignalBlocker quiet{m_plans};
    m_plans->clear();
    for (const Scenario& scenario : m_scenarios) m_plans->addItem(QString::fromStdString(scenario.all.name));
    m_plans->setCurrentIndex(static_cast<int>(m_current));
    m_decisions->setScenario(current());
    for (const auto& [button, name] : m_buttons) {
        if (button->objectName() == u"planRemove") button->setEnabled(m_scenarios.size() > 1);
        if (button->objectName() == u"planTakeBack") button->setEnabled(!m_before.empty());
    }
    write();
    if (m_compared == nullptr) return;
    const entries::PlanAdopted* adopted = plan::adoptedIn(*m_desk.season());
    m_cards->setCards(*m_compared, m_current,
                      adopted == nullptr ? QString{} : QString::fromStdString(adopted->name), speech(),
                      m_desk.standing().writable);
}

void PlanPage::write() {
    m_state->setText(isUpToDate() ? QString{} : tr("Reckoning …"));
    QPushButton* beside = m_headlines.back();
    beside->setText(tr("Side by side") + u'\n' + tr("%n plan(s)", "", static_cast<int>(m_scenarios.size())));
    beside->setAccessibleName(tr("Plans side by side"));
    if (m_answers == nullptr) return;
    const PlanView view = viewOf(*m_answers, speech());
    for (std::size_t i = 0; i < kQuestions; ++i) {
        const Headline& headline = view.headlines[i];
        m_headlines[i]->setText((headline.caution ? QStringLiteral("⚠ ") : QString{}) + headline.question +
                                u'\n' + headline.answer);
        m_headlines[i]->setAccessibleName(headline.question + u' ' + headline.answer);
        m_lines[i]->setLines(view.lines[i]);
    }
    writePictures();
    writeSealing();
}

void PlanPage::writePictures() {
    if (m_answers == nullptr) return;
    const plan::Inputs& inputs = m_answers->inputs;
    m_drawing->setPicture(pictureOf(chosenOf(inputs.silos, *m_siloSwitch), inputs.machineWidth, speech()));
    const plan::PlannedField& field = chosenOf(inputs.grounds, *m_fieldSwitch);
    m_chain->setVisible(m_answers->flow.has_value());
    if (!m_answers->flow) return;
    for (const plan::FieldFlow& flow : m_answers->flow->fields) {
        if (flow.field == field.name) m_chain->setPicture({QString::fromStdString(flow.field), flow.chain});
    }
}

void PlanPage::writeSealing() {
    if (!m_answers->seals) return m_sealing->setRows({}, false);
    const settings::DisplayUnits& units = m_appearance.units();
    const std::array steps{tr("side sheets"),           tr("surface treatment"), tr("barrier film"),
                           tr("black-and-white sheet"), tr("weights"),           tr("edges sealed")};
    std::vector<SealRow> rows;
    for (plan::SealTask& task :
         plan::sealingList(*m_answers->seals, m_answers->inputs.begins, *m_desk.season(), m_desk.now())) {
        SealRow row;
        row.text = tr("%1: %2, by %3", "silo, step, day")
                       .arg(QString::fromStdString(task.silo), steps[static_cast<std::size_t>(task.step)],
                            settings::dayText(task.due, units.locale()));
        if (task.area) row.text += QStringLiteral(", ") + units.text(*task.area);
        if (task.litres)
            row.text += QStringLiteral(", ") + units.text(ProductVolume::fromLitres(*task.litres));
        if (task.tyres)
            row.text += QStringLiteral(", ") + tr("%n tyre(s)", "", static_cast<int>(*task.tyres));
        if (task.at) {
            const FarmZone& zone = m_desk.season()->zone();
            row.done =
                tr("%1 done, last on %2 at %3", "part, day, time")
                    .arg(units.text(task.done), settings::dayText(zone.dayOf(*task.at), units.locale()),
                         QString::fromStdString(clockText(zone, *task.at)));
        }
        row.task = std::move(task);
        rows.push_back(std::move(row));
    }
    m_sealing->setRows(rows, m_desk.standing().writable);
}

std::vector<std::pair<QString, QString>> planKeys() {
    return {{QStringLiteral("F2 … F6"), PlanPage::tr("The five questions: fits, flows, pays, seals, feeds")},
            {QStringLiteral("F7"), PlanPage::tr("The plans side by side")},
            {PlanPage::tr("Ctrl+N"), PlanPage::tr("Try another plan beside this one")},
            {PlanPage::tr("Ctrl+Z"), PlanPage::tr("Take the last change of the plans back")},
            {PlanPage::tr("Ctrl+Enter"), PlanPage::tr("Adopt this plan as the season's")}};
}

}  // namespace treadwell::plan_page
