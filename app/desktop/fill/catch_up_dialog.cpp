#include "app/desktop/fill/catch_up_dialog.h"

#include "app/desktop/fill/id_box.h"
#include "app/desktop/fill/load_dialog.h"
#include "app/desktop/widgets/choice_box.h"
#include "app/desktop/widgets/quantity_spin_box.h"
#include "app/desktop/widgets/step_field.h"

#include <QSpinBox>

namespace treadwell::fill {

namespace {

constexpr int kFirstGuess = 4;

}  // namespace

CatchUpDialog::CatchUpDialog(const settings::Appearance& look, const entries::Load& each, Instant since,
                             const season::Season& season, Instant now, QWidget* parent)
    : Sheet{look, tr("Loads to catch up with"), parent},
      m_each{each},
      m_now{now},
      m_zone{season.zone()},
      m_count{new QSpinBox},
      m_from{new widgets::ClockEdit{wallTime(season.zone(), since)}},
      m_to{new widgets::ClockEdit{wallTime(season.zone(), now)}},
      m_truck{new widgets::ChoiceBox{look}},
      m_mass{new widgets::QuantityField{look, Dimension::asFedMass}} {
    m_count->setObjectName(QStringLiteral("catchUpCount"));
    m_from->setObjectName(QStringLiteral("catchUpFrom"));
    m_to->setObjectName(QStringLiteral("catchUpTo"));
    m_mass->box().setObjectName(QStringLiteral("catchUpMass"));
    m_count->setRange(1, static_cast<int>(intake::kMostCaughtUp));
    m_count->setValue(kFirstGuess);
    addStepRow(tr("Loads"), m_count);
    addStepRow(tr("From"), m_from);
    addStepRow(tr("To"), m_to);
    m_truck->addItem(tr("several, or not known"));
    fillBox(*m_truck, season.farm().trucks, std::optional<farm::TruckId>{});
    addRow(tr("Truck"), m_truck);
    m_mass->box().setSiRange(kLightestLoad.si(), kHeaviestLoad.si());
    m_mass->box().setAccessibleName(tr("Mass of each load"));
    addRow(tr("Mass of each"), m_mass);
    suggestMass(season.farm());
    connect(m_truck, &QComboBox::currentIndexChanged, this,
            [this, farm = season.farm()] { suggestMass(farm); });
    addDecision(tr("Record the loads"));
}

void CatchUpDialog::suggestMass(const season::FarmBook& farm) {
    AsFedMass all;
    int trucks = 0;
    const auto chosen = chosenIn<farm::TruckId>(*m_truck);
    for (const auto& [id, truck] : farm.trucks) {
        if (chosen && *chosen != id) continue;
        all += truck.usualLoad;
        ++trucks;
    }
    m_mass->box().setQuantity(trucks > 0 ? all / trucks : m_each.mass);
}

void CatchUpDialog::record() {
    if (m_mass->box().isWrong()) return;  // its echo says why
    m_mass->box().interpretText();        // a touch need not take the focus from it
    m_each.truck = chosenIn<farm::TruckId>(*m_truck);
    m_each.mass = m_mass->box().quantity<AsFedMass>();
    m_each.source = entries::MassSource::usual;
    // The end is untouched where it means now, which has seconds.
    const bool untilNow = m_to->time() == wallTime(m_zone, m_now);
    const intake::CatchUp loads{m_each, m_count->value(), instantAt(m_zone, m_now, m_from->time()),
                                untilNow ? m_now : instantAt(m_zone, m_now, m_to->time())};
    if (loads.to > m_now) return refuse(tr("This time has not come yet."));
    if (loads.from >= loads.to) return refuse(tr("The first time must come before the last."));
    emit recorded(loads);
    accept();
}

}  // namespace treadwell::fill
