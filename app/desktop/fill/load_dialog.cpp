#include "app/desktop/fill/load_dialog.h"

#include "app/desktop/widgets/choice_box.h"
#include "app/desktop/widgets/quantity_spin_box.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QPushButton>

namespace treadwell::fill {

namespace {

constexpr std::array kSources{entries::MassSource::weighed, entries::MassSource::box,
                              entries::MassSource::usual};

}  // namespace

LoadDialog::LoadDialog(const settings::Appearance& look, const entries::Load& usual,
                       const season::FarmBook& farm, QWidget* parent)
    : QDialog{parent},
      m_load{usual},
      m_mass{new widgets::QuantityField{look, Dimension::asFedMass}},
      m_source{new widgets::ChoiceBox{look}},
      m_field{new widgets::ChoiceBox{look}} {
    setAttribute(Qt::WA_DeleteOnClose);
    const auto truck = usual.truck ? farm.trucks.find(*usual.truck) : farm.trucks.end();
    setWindowTitle(truck == farm.trucks.end()
                       ? tr("Load")
                       : tr("Load of %1").arg(QString::fromStdString(truck->second.name)));
    m_mass->box().setObjectName(QStringLiteral("loadMass"));
    m_mass->box().setAccessibleName(tr("Mass as fed"));
    m_mass->box().setSiRange(100.0, 80000.0);
    m_mass->box().setQuantity(usual.mass);
    m_source->addItems({tr("weighed"), tr("from the box"), tr("usual load")});
    m_source->setAccessibleName(tr("How the mass is known"));
    m_field->setAccessibleName(tr("Field"));
    m_field->addItem(tr("not known"));
    m_fields.push_back(std::nullopt);
    for (const auto& [id, field] : farm.fields) {
        m_field->addItem(QString::fromStdString(field.name));
        m_fields.push_back(id);
        if (usual.field == id) m_field->setCurrentIndex(m_field->count() - 1);
    }
    auto* form = new QFormLayout{this};
    form->addRow(tr("Mass as fed"), m_mass);
    form->addRow(tr("Known"), m_source);
    form->addRow(tr("Field"), m_field);
    auto* buttons = new QDialogButtonBox;
    QPushButton* record = buttons->addButton(tr("Record the load"), QDialogButtonBox::AcceptRole);
    QPushButton* leave = buttons->addButton(tr("Leave it"), QDialogButtonBox::RejectRole);
    form->addRow(buttons);
    for (QWidget* widget : std::initializer_list<QWidget*>{m_source, m_field, record, leave}) {
        widget->setMinimumHeight(look.pixels(settings::kControlMillimetres));
    }
    connect(buttons, &QDialogButtonBox::accepted, this, &LoadDialog::record);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    m_mass->box().setFocus();
    m_mass->box().selectAll();
}

void LoadDialog::record() {
    if (m_mass->box().isWrong()) return;  // its echo says why
    m_load.mass = m_mass->box().quantity<AsFedMass>();
    m_load.source = kSources[static_cast<std::size_t>(m_source->currentIndex())];
    m_load.field = m_fields[static_cast<std::size_t>(m_field->currentIndex())];
    emit recorded(m_load);
    accept();
}

}  // namespace treadwell::fill
