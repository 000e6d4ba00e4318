#include "app/desktop/fill/load_dialog.h"

#include "app/desktop/fill/id_box.h"
#include "app/desktop/widgets/choice_box.h"
#include "app/desktop/widgets/quantity_spin_box.h"
#include "app/desktop/widgets/step_field.h"

#include <QPushButton>

namespace treadwell::fill {

namespace {

constexpr std::array kSources{entries::MassSource::weighed, entries::MassSource::box,
                              entries::MassSource::usual};

}  // namespace

LoadDialog::LoadDialog(const settings::Appearance& look, Purpose purpose, const entries::Load& load,
                       Instant at, const season::Season& season, Instant now, QWidget* parent)
    : Sheet{look, tr("Load"), parent},
      m_load{load},
      m_at{at},
      m_now{now},
      m_zone{season.zone()},
      m_mass{new widgets::QuantityField{look, Dimension::asFedMass}},
      m_source{new widgets::ChoiceBox{look}},
      m_truck{new widgets::ChoiceBox{look}},
      m_field{new widgets::ChoiceBox{look}},
      m_silo{new widgets::ChoiceBox{look}},
      m_time{new widgets::ClockEdit{wallTime(season.zone(), at)}},
      m_usual{new QPushButton{tr("the usual load of this truck from now on")}} {
    const season::FarmBook& farm = season.farm();
    const auto truck = load.truck ? farm.trucks.find(*load.truck) : farm.trucks.end();
    if (truck != farm.trucks.end())
        setWindowTitle(tr("Load of %1").arg(QString::fromStdString(truck->second.name)));
    addMass();
    addPlaces(farm);
    m_time->setObjectName(QStringLiteral("loadTime"));
    addStepRow(tr("Time"), m_time);
    m_usual->setObjectName(QStringLiteral("loadUsual"));
    m_usual->setCheckable(true);
    m_usual->setAutoDefault(false);  // Enter records the load
    addRow({}, m_usual);
    addDecision(purpose == Purpose::newLoad ? tr("Record the load") : tr("Correct the load"));
    m_mass->box().setFocus();
    m_mass->box().selectAll();
}

void LoadDialog::addMass() {
    m_mass->box().setObjectName(QStringLiteral("loadMass"));
    m_mass->box().setAccessibleName(tr("Mass as fed"));
    m_mass->box().setSiRange(kLightestLoad.si(), kHeaviestLoad.si());
    m_mass->box().setQuantity(m_load.mass);
    m_source->addItems({tr("weighed"), tr("from the box"), tr("usual load")});
    m_source->setCurrentIndex(
        static_cast<int>(std::find(kSources.begin(), kSources.end(), m_load.source) - kSources.begin()));
    addRow(tr("Mass as fed"), m_mass);
    addRow(tr("Known"), m_source);
    m_source->setAccessibleName(tr("How the mass is known"));
    // A mass that somebody enters has been read somewhere.
    connect(&m_mass->box(), &widgets::QuantitySpinBox::siEdited, this, [this] {
        if (kSources[static_cast<std::size_t>(m_source->currentIndex())] == entries::MassSource::usual)
            m_source->setCurrentIndex(0);
    });
}

void LoadDialog::addPlaces(const season::FarmBook& farm) {
    m_truck->addItem(tr("not known"));
    fillBox(*m_truck, farm.trucks, m_load.truck);
    m_field->addItem(tr("not known"));
    fillBox(*m_field, farm.fields, m_load.field);
    fillBox(*m_silo, farm.silos, std::optional{m_load.silo});
    m_truck->setObjectName(QStringLiteral("loadTruck"));
    m_field->setObjectName(QStringLiteral("loadField"));
    m_silo->setObjectName(QStringLiteral("loadSilo"));
    addRow(tr("Truck"), m_truck);
    addRow(tr("Field"), m_field);
    addRow(tr("Silo"), m_silo);
}

void LoadDialog::record() {
    if (m_mass->box().isWrong()) return;  // its echo says why
    m_mass->box().interpretText();        // a touch need not take the focus from it
    // Untouched it keeps its seconds.
    const bool moved = m_time->time() != wallTime(m_zone, m_at);
    const Instant at = moved ? instantAt(m_zone, m_at, m_time->time()) : m_at;
    if (at > m_now) return refuse(tr("This time has not come yet."));
    m_load.mass = m_mass->box().quantity<AsFedMass>();
    m_load.source = kSources[static_cast<std::size_t>(m_source->currentIndex())];
    m_load.truck = chosenIn<farm::TruckId>(*m_truck);
    m_load.field = chosenIn<farm::FieldId>(*m_field);
    if (const auto silo = chosenIn<farm::SiloId>(*m_silo)) m_load.silo = *silo;
    if (moved) m_load.timeSpread.reset();
    emit recorded(m_load, at, m_usual->isChecked());
    accept();
}

}  // namespace treadwell::fill
