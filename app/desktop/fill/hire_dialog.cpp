#include "app/desktop/fill/hire_dialog.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <algorithm>

namespace treadwell::fill {

namespace {

using farm::TractorClass;
using farm::TruckClass;

constexpr int kTractors = static_cast<int>(enumTexts(TractorClass{}).size());
constexpr int kTrucks = static_cast<int>(enumTexts(TruckClass{}).size());

QString nameOf(TractorClass tractor) {
    switch (tractor) {
        case TractorClass::medium:
            return HireDialog::tr("Medium tractor");
        case TractorClass::large:
            return HireDialog::tr("Large tractor");
        case TractorClass::heavy:
            return HireDialog::tr("Heavy tractor");
        case TractorClass::articulated:
            return HireDialog::tr("Articulated tractor");
        case TractorClass::wheelLoader:
            break;
    }
    return HireDialog::tr("Wheel loader");
}

QString nameOf(TruckClass truck) {
    switch (truck) {
        case TruckClass::smallTrailer:
            return HireDialog::tr("Small trailer");
        case TruckClass::trailer:
            return HireDialog::tr("Trailer");
        case TruckClass::largeTrailer:
            return HireDialog::tr("Large trailer");
        case TruckClass::lorry:
            break;
    }
    return HireDialog::tr("Lorry");
}

/// `pattern` with the first number that no thing of the farm has yet.
template <class Things>
QString freeName(const QString& pattern, const Things& things) {
    for (int number = 1;; ++number) {
        const QString name = pattern.arg(number);
        const bool taken = std::any_of(things.begin(), things.end(), [&](const auto& each) {
            return QString::fromStdString(each.second.name) == name;
        });
        if (!taken) return name;
    }
}

}  // namespace

HireDialog::HireDialog(const settings::Appearance& look, const season::FarmBook& farm, QWidget* parent)
    : Sheet{look, tr("A hired machine is here"), parent},
      m_classes{new QButtonGroup{this}},
      m_name{new QLineEdit},
      m_tractorName{freeName(tr("Hired %1"), farm.tractors)},
      m_truckName{freeName(tr("Hired truck %1"), farm.trucks)} {
    addRow(tr("Tractor"), makeClasses(true));
    addRow(tr("Truck"), makeClasses(false));
    m_name->setObjectName(QStringLiteral("hiredName"));
    addRow(tr("Name"), m_name);
    QPushButton* here = addDecision(tr("It is here"));
    here->setEnabled(false);
    connect(m_classes, &QButtonGroup::idClicked, this, [this, here](int seen) {
        here->setEnabled(true);
        if (!m_name->isModified()) m_name->setText(seen < kTractors ? m_tractorName : m_truckName);
    });
}

QWidget* HireDialog::makeClasses(bool tractors) {
    auto* row = new QWidget;
    auto* buttons = new QHBoxLayout{row};
    buttons->setContentsMargins(0, 0, 0, 0);
    const settings::DisplayUnits& units = look().units();
    const QString error = units.text(Share::fromFraction(farm::kClassMassLogSd));
    for (int i = 0; i < (tractors ? kTractors : kTrucks); ++i) {
        QString text;
        if (tractors) {
            const auto seen = static_cast<TractorClass>(i);
            text = tr("%1\n%2 ± %3", "class, mass, its error")
                       .arg(nameOf(seen), units.text(massOf(seen)), error);
        } else {
            const auto seen = static_cast<TruckClass>(i);
            text = tr("%1\n%2 a load", "class, usual load").arg(nameOf(seen), units.text(usualLoadOf(seen)));
        }
        auto* button = new QPushButton{text};
        button->setCheckable(true);
        button->setMinimumHeight(look().pixels(settings::kYardButtonMillimetres));
        m_classes->addButton(button, tractors ? i : kTractors + i);
        buttons->addWidget(button);
    }
    return row;
}

void HireDialog::record() {
    const int seen = m_classes->checkedId();
    const QString name = m_name->text().trimmed();
    if (seen < 0) return;
    if (name.isEmpty()) return refuse(tr("Give it a name by which it is known in the yard."));
    if (seen < kTractors) {
        emit tractorCame(name, static_cast<TractorClass>(seen));
    } else {
        emit truckCame(name, static_cast<TruckClass>(seen - kTractors));
    }
    accept();
}

}  // namespace treadwell::fill
