#include "app/desktop/fill/mass_dialog.h"

#include "app/desktop/widgets/quantity_spin_box.h"

namespace treadwell::fill {

MassDialog::MassDialog(const settings::Appearance& look, const farm::Tractor& tractor, QWidget* parent)
    : Sheet{look, tr("Mass of %1").arg(QString::fromStdString(tractor.name)), parent},
      m_tractor{tractor},
      m_mass{new widgets::QuantityField{look, Dimension::machineMass}} {
    m_mass->box().setObjectName(QStringLiteral("machineMass"));
    m_mass->box().setAccessibleName(tr("Mass with ballast and blade"));
    m_mass->box().setSiRange(1000.0, 60000.0);
    m_mass->box().setQuantity(tractor.mass);
    addRow(tr("Mass with ballast and blade"), m_mass);
    addDecision(tr("Record the mass"));
    m_mass->box().setFocus();
    m_mass->box().selectAll();
}

void MassDialog::record() {
    if (m_mass->box().isWrong()) return;  // its echo says why
    m_mass->box().interpretText();        // a touch need not take the focus from it
    m_tractor.mass = m_mass->box().quantity<MachineMass>();
    m_tractor.massKnown = true;
    emit recorded(m_tractor);
    accept();
}

}  // namespace treadwell::fill
