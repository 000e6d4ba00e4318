#include "app/desktop/fill/incident_dialog.h"

#include "app/desktop/fill/id_box.h"
#include "app/desktop/fill/say.h"
#include "app/desktop/widgets/choice_box.h"
#include "app/desktop/widgets/step_field.h"
#include "app/words/entry.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>

namespace treadwell::fill {

using entries::IncidentSort;

IncidentDialog::IncidentDialog(const settings::Appearance& look, farm::SiloId silo,
                               const season::Season& season, Instant now, QWidget* parent)
    : Sheet{look, tr("Something happened"), parent},
      m_silo{silo},
      m_zone{season.zone()},
      m_now{now},
      m_sorts{new QButtonGroup{this}},
      m_time{new widgets::ClockEdit{wallTime(season.zone(), now)}},
      m_tractor{new widgets::ChoiceBox{look}},
      m_text{new QLineEdit} {
    addSorts(tr("A person"), {IncidentSort::injury, IncidentSort::nearMiss, IncidentSort::gas});
    addSorts(tr("A machine"), {IncidentSort::tippedOver, IncidentSort::slid, IncidentSort::stuck,
                               IncidentSort::collision, IncidentSort::breakdown});
    addSorts(tr("The place"),
             {IncidentSort::spill, IncidentSort::fire, IncidentSort::wallMoved, IncidentSort::other});
    m_time->setObjectName(QStringLiteral("incidentTime"));
    addStepRow(tr("Time"), m_time);
    m_tractor->setObjectName(QStringLiteral("incidentTractor"));
    m_tractor->addItem(tr("none, or not known"));
    fillBox(*m_tractor, season.farm().tractors, std::optional<farm::TractorId>{});
    addRow(tr("Tractor"), m_tractor);
    m_text->setObjectName(QStringLiteral("incidentText"));
    m_text->setPlaceholderText(tr("may stay empty; no names"));
    addRow(tr("In words"), m_text);
    QPushButton* record = addDecision(tr("Record it"));
    record->setEnabled(false);
    connect(m_sorts, &QButtonGroup::idClicked, record, [record] { record->setEnabled(true); });
}

void IncidentDialog::addSorts(const QString& about, std::initializer_list<IncidentSort> sorts) {
    const words::Style style = styleOf(look().units(), m_zone);
    auto* row = new QWidget;
    auto* buttons = new QHBoxLayout{row};
    buttons->setContentsMargins(0, 0, 0, 0);
    for (const IncidentSort sort : sorts) {
        auto* button = new QPushButton{QString::fromStdString(words::wordInWords(enumText(sort), style))};
        button->setCheckable(true);
        button->setMinimumHeight(look().pixels(settings::kYardButtonMillimetres));
        m_sorts->addButton(button, static_cast<int>(sort));
        buttons->addWidget(button);
    }
    addRow(about, row);
}

void IncidentDialog::record() {
    if (m_sorts->checkedId() < 0) return;
    entries::Incident incident;
    incident.sort = static_cast<IncidentSort>(m_sorts->checkedId());
    incident.text = m_text->text().trimmed().toStdString();
    incident.silo = m_silo;
    incident.tractor = chosenIn<farm::TractorId>(*m_tractor);
    if (!validate(incident)) return refuse(tr("Say in a few words what happened."));
    const bool moved = m_time->time() != wallTime(m_zone, m_now);
    const Instant at = moved ? instantAt(m_zone, m_now, m_time->time()) : m_now;
    if (at > m_now) return refuse(tr("This time has not come yet."));
    emit recorded(incident, at);
    accept();
}

}  // namespace treadwell::fill
