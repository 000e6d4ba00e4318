#include "app/desktop/fill/dry_matter_entry.h"

#include "app/desktop/fill/fill_presenter.h"
#include "app/desktop/widgets/choice_box.h"
#include "app/desktop/widgets/quantity_spin_box.h"

#include <QGridLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace treadwell::fill {

namespace {

constexpr std::array kMethods{entries::DryMatterMethod::oven, entries::DryMatterMethod::microwave,
                              entries::DryMatterMethod::meter, entries::DryMatterMethod::estimate};
constexpr double kHeaviestDishKilograms = 10.0;

void setItems(QComboBox* box, const QStringList& texts) {
    const QSignalBlocker quiet{box};
    const int chosen = std::max(0, box->currentIndex());
    box->clear();
    box->addItems(texts);
    box->setCurrentIndex(chosen);
}

}  // namespace

DryMatterEntry::DryMatterEntry(const settings::Appearance& look, QWidget* parent)
    : EntryPanel{look, parent},
      m_way{new widgets::ChoiceBox{look}},
      m_method{new widgets::ChoiceBox{look}},
      m_percent{new widgets::QuantityField{look, Dimension::dryMatter}},
      m_dish{new QWidget},
      m_wet{new widgets::QuantityField{look, Dimension::dishMass}},
      m_dry{new widgets::QuantityField{look, Dimension::dishMass}},
      m_wetTitle{new QLabel},
      m_dryTitle{new QLabel} {
    m_percent->box().setObjectName(QStringLiteral("dryMatterPercent"));
    m_wet->box().setObjectName(QStringLiteral("dishWet"));
    m_dry->box().setObjectName(QStringLiteral("dishDry"));
    m_way->setObjectName(QStringLiteral("dryMatterWay"));
    m_percent->box().setSiRange(0.10, 0.90);
    m_wet->box().setSiRange(0.0, kHeaviestDishKilograms);
    m_dry->box().setSiRange(0.0, kHeaviestDishKilograms);
    auto* dish = new QGridLayout{m_dish};
    dish->setContentsMargins(0, 0, 0, 0);
    dish->setVerticalSpacing(0);
    dish->addWidget(m_wetTitle, 0, 0);
    dish->addWidget(m_dryTitle, 0, 1);
    dish->addWidget(m_wet, 1, 0);
    dish->addWidget(m_dry, 1, 1);
    auto* choices = new QHBoxLayout;
    choices->addWidget(m_way, 1);
    choices->addWidget(m_method, 1);
    fields()->addLayout(choices);
    fields()->addWidget(m_percent);
    fields()->addWidget(m_dish);
    for (QComboBox* box : {m_way, m_method}) {
        box->setMinimumHeight(look.pixels(settings::kControlMillimetres));
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    }
    for (widgets::QuantityField* field : {m_percent, m_wet, m_dry}) watch(field);
    connect(m_way, &QComboBox::currentIndexChanged, this, &DryMatterEntry::showWay);
    DryMatterEntry::retranslate();
    showWay();
}

void DryMatterEntry::retranslate() {
    setWords(tr("Dry matter"), tr("Record the sample"));
    setItems(m_way, {tr("Percent"), tr("Dish weights")});
    QStringList methods;
    for (const entries::DryMatterMethod method : kMethods) methods << methodName(method);
    setItems(m_method, methods);
    m_way->setAccessibleName(tr("How the dry matter is entered"));
    m_method->setAccessibleName(tr("How the dry matter was measured"));
    m_percent->box().setAccessibleName(tr("Dry matter"));
    m_wet->box().setAccessibleName(tr("Weight before drying"));
    m_dry->box().setAccessibleName(tr("Weight after drying"));
    m_wetTitle->setText(tr("before"));
    m_dryTitle->setText(tr("after drying"));
}

bool DryMatterEntry::byWeight() const {
    return m_way->currentIndex() == 1;
}

void DryMatterEntry::showWay() {
    m_percent->setVisible(!byWeight());
    m_dish->setVisible(byWeight());
}

void DryMatterEntry::setSuggestion(DryMatter dryMatter) {
    suggest(m_percent, dryMatter.amount());
}

void DryMatterEntry::takeFocus() {
    (byWeight() ? m_wet : m_percent)->box().setFocus(Qt::ShortcutFocusReason);
    (byWeight() ? m_wet : m_percent)->box().selectAll();
}

void DryMatterEntry::record() {
    entries::DryMatterSample sample;
    sample.method = kMethods[static_cast<std::size_t>(m_method->currentIndex())];
    if (!byWeight()) {
        sample.dryMatter = m_percent->box().quantity<DryMatter>();
        emit recorded(sample);
        return;
    }
    const double wet = m_wet->box().si();
    const double dry = m_dry->box().si();
    if (!(wet > 0.0) || !(dry > 0.0) || dry > wet) {
        emit refused(tr("The dish is not recorded: it must weigh less after drying, and more than nothing"));
        return;
    }
    sample.wet = AsFedMass::fromKilograms(wet);
    sample.dry = DryMass::fromKilograms(dry);
    sample.dryMatter = DryMatter::fromFraction(dry / wet);
    emit recorded(sample);
}

}  // namespace treadwell::fill
