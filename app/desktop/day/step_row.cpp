#include "app/desktop/day/step_row.h"

#include "app/desktop/fill/dry_matter_entry.h"
#include "app/desktop/fill/heights_entry.h"
#include "app/desktop/fill/layer_entry.h"
#include "app/desktop/fill/sheet.h"
#include "app/desktop/widgets/quantity_spin_box.h"

#include <QLabel>
#include <QPushButton>
#include <QTimeEdit>
#include <QVBoxLayout>

namespace treadwell::day_page {

StepRow::StepRow(const settings::Appearance& look, Step step, const StepContext& context, QWidget* parent)
    : QFrame{parent},
      m_appearance{look},
      m_step{std::move(step)},
      m_layout{new QVBoxLayout{this}},
      m_question{new QLabel{m_step.question}},
      m_leave{new QPushButton{tr("Leave it open")}} {
    setProperty("edged", true);
    m_question->setTextFormat(Qt::PlainText);
    m_question->setWordWrap(true);
    m_layout->addWidget(m_question);
    switch (m_step.kind) {
        case StepKind::tractorAway: {
            const auto tractor = std::get<farm::TractorId>(m_step.subject);
            addTime(context, tr("Away from then"),
                    [tractor](Instant at) { return tractorAway(tractor, at); });
            break;
        }
        case StepKind::shiftEnd: {
            const auto end =
                shiftEnded(context.day, std::get<entries::PersonId>(m_step.subject), context.happened);
            addTime(context, tr("Ended then"), [end](Instant at) {
                return session::Proposal{end.body, at, end.target};
            });
            break;
        }
        case StepKind::heights:
            addHeights(context);
            break;
        case StepKind::dryMatter:
            addSample(context);
            break;
        case StepKind::layer:
            addLayer(context.happened);
            break;
        case StepKind::tractorMass:
        case StepKind::tractorCost:
            addTractor(context);
            break;
        case StepKind::rows:
            addRows(context.happened);
            break;
        case StepKind::look:
            break;
    }
    m_leave->setCheckable(true);
    m_leave->setObjectName(QStringLiteral("leaveOpen"));
    m_leave->setMinimumHeight(look.pixels(settings::kControlMillimetres));
    m_leave->setAccessibleDescription(m_step.question);
    m_layout->addWidget(m_leave);
    connect(m_leave, &QPushButton::toggled, this, [this](bool open) {
        m_leave->setText(open ? tr("Left open") : tr("Leave it open"));
        emit leftOpen(open);
    });
}

bool StepRow::isLeftOpen() const {
    return m_leave->isChecked();
}

void StepRow::setQuestion(const QString& question) {
    m_question->setText(question);
    m_leave->setAccessibleDescription(question);
}

QPushButton* StepRow::addButton(const QString& text, const char* name) {
    auto* button = new QPushButton{text};
    button->setObjectName(QLatin1String{name});
    button->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    return button;
}

QTimeEdit* StepRow::makeTime(const StepContext& context) {
    auto* time = new QTimeEdit{fill::wallTime(context.season.zone(), context.happened)};
    time->setObjectName(QStringLiteral("stepTime"));
    time->setDisplayFormat(QStringLiteral("HH:mm"));
    time->setAccessibleName(tr("When"));
    time->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    return time;
}

void StepRow::addTime(const StepContext& context, const QString& text,
                      const std::function<session::Proposal(Instant)>& make) {
    QTimeEdit* time = makeTime(context);
    QPushButton* record = addButton(text, "stepRecord");
    auto* row = new QHBoxLayout;
    row->addWidget(time);
    row->addWidget(record, 1);
    m_layout->addLayout(row);
    const FarmZone zone = context.season.zone();
    connect(record, &QPushButton::clicked, this, [this, time, zone, make, happened = context.happened] {
        const Instant at = std::min(fill::instantAt(zone, happened, time->time()), happened);
        emit answered({make(at)});
    });
}

void StepRow::addFolded(QWidget* entry, const QString& text) {
    QPushButton* unfold = addButton(text, "stepUnfold");
    unfold->setCheckable(true);
    entry->hide();
    m_layout->addWidget(unfold);
    m_layout->addWidget(entry);
    connect(unfold, &QPushButton::toggled, entry, &QWidget::setVisible);
}

void StepRow::addHeights(const StepContext& context) {
    const auto id = std::get<farm::SiloId>(m_step.subject);
    const auto silo = context.day.farm().silos.find(id);
    if (silo == context.day.farm().silos.end()) return;
    auto* heights = new fill::HeightsEntry{m_appearance};
    heights->setSilo(silo->second, context.season, context.happened);
    addFolded(heights, tr("Read the heights"));
    connect(heights, &fill::HeightsEntry::refused, this, &StepRow::refused);
    connect(heights, &fill::HeightsEntry::recorded, this,
            [this, id, happened = context.happened](const std::vector<entries::HeightReading>& readings) {
                emit answered({{entries::HeightSurvey{id, readings}, happened, {}}});
            });
}

/// It counts from when it was taken, which is earlier than now.
void StepRow::addSample(const StepContext& context) {
    auto* folded = new QWidget;
    auto* layout = new QVBoxLayout{folded};
    layout->setContentsMargins(0, 0, 0, 0);
    auto* entry = new fill::DryMatterEntry{m_appearance};
    QTimeEdit* time = makeTime(context);
    auto* taken = new QLabel{tr("Taken at")};
    taken->setBuddy(time);
    auto* row = new QHBoxLayout;
    row->addWidget(taken);
    row->addWidget(time, 1);
    layout->addLayout(row);
    layout->addWidget(entry);
    addFolded(folded, tr("Enter a sample"));
    connect(entry, &fill::DryMatterEntry::refused, this, &StepRow::refused);
    connect(entry, &fill::DryMatterEntry::recorded, this,
            [this, time, zone = context.season.zone(),
             happened = context.happened](const entries::DryMatterSample& sample) {
                const Instant at = std::min(fill::instantAt(zone, happened, time->time()), happened);
                emit answered({{sample, at, {}}});
            });
}

void StepRow::addLayer(Instant happened) {
    const auto silo = std::get<farm::SiloId>(m_step.subject);
    auto* entry = new fill::LayerEntry{m_appearance};
    addFolded(entry, tr("Enter the layer"));
    connect(entry, &fill::LayerEntry::refused, this, &StepRow::refused);
    connect(entry, &fill::LayerEntry::recorded, this, [this, silo, happened](Length thickness) {
        emit answered({{entries::LayerSeen{silo, thickness, entries::LayerMethod::measured}, happened, {}}});
    });
}

void StepRow::addTractor(const StepContext& context) {
    const auto& tractors = context.day.farm().tractors;
    const auto found = tractors.find(std::get<farm::TractorId>(m_step.subject));
    if (found == tractors.end()) return;
    const bool weighs = m_step.kind == StepKind::tractorMass;
    auto* box =
        new widgets::QuantitySpinBox{m_appearance, weighs ? Dimension::machineMass : Dimension::costRate};
    box->setObjectName(QStringLiteral("stepAmount"));
    box->setAccessibleName(weighs ? tr("Mass") : tr("Cost an hour"));
    box->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    box->setSiRange(0.0, weighs ? MachineMass::fromTonnes(60).si() : CostRate::fromPerHour(2'000).si());
    QPushButton* record = addButton(tr("Record"), "stepRecord");
    auto* row = new QHBoxLayout;
    row->addWidget(box, 1);
    row->addWidget(record);
    m_layout->addLayout(row);
    connect(record, &QPushButton::clicked, this,
            [this, box, weighs, tractor = found->second, happened = context.happened]() mutable {
                box->interpretText();
                if (box->isWrong() || !(box->si() > 0.0)) {
                    emit refused(box->isWrong() ? box->echo() : tr("Enter a number above 0."));
                    return;
                }
                if (weighs) {
                    tractor.mass = box->quantity<MachineMass>();
                    tractor.massKnown = true;
                } else {
                    tractor.hourlyCost = box->quantity<CostRate>();
                }
                emit answered({{entries::TractorDefined{tractor}, happened, {}}});
            });
}

void StepRow::addRows(Instant happened) {
    for (const AsideRow& row : m_step.rows) {
        auto* text = new QLabel{row.text};
        text->setTextFormat(Qt::PlainText);
        text->setWordWrap(true);
        QPushButton* nothing = addButton(tr("It is nothing"), "stepRecord");
        nothing->setAccessibleDescription(row.text);
        m_layout->addWidget(text);
        m_layout->addWidget(nothing);
        connect(nothing, &QPushButton::clicked, this, [this, happened, entry = row.entry] {
            emit answered({{entries::VoidEntry{}, happened, entry}});
        });
    }
}

}  // namespace treadwell::day_page
