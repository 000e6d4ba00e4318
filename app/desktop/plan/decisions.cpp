#include "app/desktop/plan/decisions.h"

#include "app/desktop/plan/plan_presenter.h"
#include "app/desktop/widgets/step_field.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QToolButton>
#include <algorithm>

namespace treadwell::plan_page {

namespace {

using Group = Decisions::Group;

QString keyOf(Group group) {
    const std::array keys{QStringLiteral("tractor"), QStringLiteral("field"), QStringLiteral("silo")};
    return keys[static_cast<std::size_t>(group)];
}

QString plainText(QString text) {
    return text.replace(QStringLiteral("&"), QStringLiteral("&&"));  // else it marks a shortcut
}

}  // namespace

Decisions::Decisions(const settings::Appearance& appearance, QWidget* parent)
    : QScrollArea{parent},
      m_appearance{appearance},
      m_titles{},
      m_grids{},
      m_trucksTitle{new QLabel},
      m_trucks{new QSpinBox},
      m_trucksField{new widgets::StepField{appearance, m_trucks}} {
    auto* all = new QWidget;
    auto* layout = new QVBoxLayout{all};
    layout->setContentsMargins(0, 0, 0, 0);
    for (std::size_t i = 0; i < m_grids.size(); ++i) {
        m_titles[i] = new QLabel;
        m_grids[i] = new QGridLayout;
        m_grids[i]->setColumnStretch(0, 1);
        m_grids[i]->setSpacing(4);
        layout->addWidget(m_titles[i]);
        layout->addLayout(m_grids[i]);
        if (i == 0) {
            layout->addWidget(m_trucksTitle);
            layout->addWidget(m_trucksField);
        }
    }
    layout->addStretch(1);
    m_trucksTitle->setBuddy(m_trucks);
    m_trucks->setObjectName(QStringLiteral("planTrucks"));
    m_trucks->setRange(1, plan::kMostTrucks);
    m_trucks->setKeyboardTracking(false);
    connect(m_trucks, &QSpinBox::valueChanged, this, &Decisions::trucksChanged);
    connect(&appearance, &settings::Appearance::changed, this, &Decisions::refresh);
    setWidget(all);
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    retranslate();
}

QSize Decisions::minimumSizeHint() const {
    const int bar = verticalScrollBar()->sizeHint().width();
    return {widget()->minimumSizeHint().width() + bar, QScrollArea::minimumSizeHint().height()};
}

QSize Decisions::sizeHint() const {
    return {minimumSizeHint().width(), QScrollArea::sizeHint().height()};
}

void Decisions::setScenario(const Scenario& scenario) {
    m_scenario = scenario;
    refresh();
}

std::vector<Decisions::Chip> Decisions::tractors() const {
    const settings::DisplayUnits& units = m_appearance.units();
    std::vector<Chip> chips;
    const auto& all = m_scenario.all.tractors;
    const bool last = all.size() == m_scenario.idleTractors.size() + 1;
    for (const plan::PlannedTractor& tractor : all) {
        const bool counts = !m_scenario.idleTractors.contains(tractor.name);
        chips.push_back(
            {QString::fromStdString(tractor.name),
             tr("%1, packs %2 of the time").arg(units.text(tractor.mass), units.text(tractor.share)), counts,
             counts && last});
    }
    return chips;
}

std::vector<Decisions::Chip> Decisions::fields() const {
    const settings::DisplayUnits& units = m_appearance.units();
    std::vector<Chip> chips;
    const auto& all = m_scenario.all.grounds;
    const bool last = all.size() == m_scenario.idleFields.size() + 1;
    for (const plan::PlannedField& field : all) {
        const bool counts = !m_scenario.idleFields.contains(field.name);
        chips.push_back({QString::fromStdString(field.name),
                         tr("%1, %2 of road").arg(units.text(field.crop), roadText(field.distance, units)),
                         counts, counts && last});
    }
    return chips;
}

std::vector<Decisions::Chip> Decisions::silos() const {
    const settings::DisplayUnits& units = m_appearance.units();
    std::vector<Chip> chips;
    const auto& all = m_scenario.all.silos;
    const bool last = all.size() == m_scenario.idleSilos.size() + 1;
    for (const plan::PlannedSilo& silo : all) {
        const bool counts = !m_scenario.idleSilos.contains(silo.name);
        chips.push_back({QString::fromStdString(silo.name),
                         tr("%1 by %2, %3 high")
                             .arg(units.text(silo.shape.width), units.text(silo.shape.length),
                                  units.text(silo.shape.height)),
                         counts, counts && last});
    }
    return chips;
}

void Decisions::refresh() {
    fill(Group::tractors, tractors());
    fill(Group::fields, fields());
    fill(Group::silos, silos());
    const QSignalBlocker quiet{m_trucks};
    m_trucks->setValue(m_scenario.all.haulage.trucks);
}

/// The buttons stay where they are, so that the focus does too.
void Decisions::fill(Group group, const std::vector<Chip>& chips) {
    QGridLayout* grid = m_grids[static_cast<std::size_t>(group)];
    const int height = m_appearance.pixels(settings::kControlMillimetres);
    for (int row = static_cast<int>(chips.size()); row < grid->rowCount(); ++row) {
        for (int column = 0; column < 2; ++column) {
            if (QLayoutItem* item = grid->itemAtPosition(row, column)) item->widget()->hide();
        }
    }
    for (std::size_t i = 0; i < chips.size(); ++i) {
        const int row = static_cast<int>(i);
        if (grid->itemAtPosition(row, 0) == nullptr) {
            auto* chip = new QPushButton;
            chip->setCheckable(true);
            chip->setObjectName(keyOf(group) + QStringLiteral("Chip%1").arg(i));
            auto* details = new QToolButton;
            details->setObjectName(keyOf(group) + QStringLiteral("Details%1").arg(i));
            details->setText(QString{u'…'});
            grid->addWidget(chip, row, 0);
            grid->addWidget(details, row, 1);
            connect(chip, &QPushButton::clicked, this, [this, group, chip](bool counts) {
                emit toggled(group, chip->property("name").toString(), counts);
            });
            connect(details, &QToolButton::clicked, this,
                    [this, group, i] { emit detailsRequested(group, i); });
        }
        auto* chip = static_cast<QPushButton*>(grid->itemAtPosition(row, 0)->widget());
        auto* details = static_cast<QToolButton*>(grid->itemAtPosition(row, 1)->widget());
        chip->setProperty("name", chips[i].name);
        chip->setText(plainText((chips[i].counts ? QStringLiteral("✓ ") : QString{}) + chips[i].name + u'\n' +
                                chips[i].detail));
        chip->setChecked(chips[i].counts);
        chip->setEnabled(!chips[i].last);
        chip->setMinimumHeight(height);
        chip->setAccessibleName(chips[i].counts ? tr("%1 counts").arg(chips[i].name)
                                                : tr("%1 is left out").arg(chips[i].name));
        chip->setAccessibleDescription(chips[i].last ? tr("%1; one has to stay").arg(chips[i].detail)
                                                     : chips[i].detail);
        details->setAccessibleName(tr("Change %1").arg(chips[i].name));
        details->setToolTip(details->accessibleName());
        details->setMinimumSize(height, height);
        chip->show();
        details->show();
    }
}

void Decisions::retranslate() {
    const std::array titles{tr("Tractors that pack"), tr("Fields"), tr("Silos")};
    for (std::size_t i = 0; i < titles.size(); ++i) m_titles[i]->setText(titles[i]);
    m_trucksTitle->setText(tr("Trucks"));
    m_trucksField->setName(tr("Trucks"));
    setAccessibleName(tr("What is decided"));
    refresh();
}

/// A scroll area does not hand on that what it holds has become wider.
bool Decisions::eventFilter(QObject* watched, QEvent* event) {
    if (watched == widget() && event->type() == QEvent::LayoutRequest) updateGeometry();
    return QScrollArea::eventFilter(watched, event);
}

void Decisions::changeEvent(QEvent* event) {
    QScrollArea::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

}  // namespace treadwell::plan_page
