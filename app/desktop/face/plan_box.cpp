#include "app/desktop/face/plan_box.h"

#include "app/desktop/widgets/date_field.h"
#include "app/desktop/widgets/quantity_spin_box.h"

#include <QDateEdit>
#include <QEvent>
#include <QFormLayout>
#include <QLabel>

namespace treadwell::face_page {

namespace {

template <class Q>
std::optional<Q> planned(const widgets::QuantitySpinBox* box) {
    if (box->isWrong() || !(box->si() > 0.0)) return std::nullopt;
    return box->quantity<Q>();
}

}  // namespace

PlanBox::PlanBox(const settings::Appearance& look, QWidget* parent)
    : QWidget{parent},
      m_appearance{look},
      m_form{new QFormLayout{this}},
      m_from{addDate("planFrom")},
      m_perDay{addBox("planPerDay", Dimension::asFedMass, AsFedMass::fromTonnes(500).si())},
      m_dryMatter{addBox("planDryMatter", Dimension::dryMatter, 0.9)},
      m_loss{addBox("planLoss", Dimension::loss, 0.6)},
      m_face{addBox("planFace", Dimension::length, 500.0)},
      m_week{addDate("planWeek")},
      m_hint{new QLabel} {
    m_hint->setTextFormat(Qt::PlainText);
    m_hint->setWordWrap(true);
    m_form->addRow(m_hint);
    connect(&look, &settings::Appearance::changed, this, &PlanBox::followLook);
    followLook();
    retranslate();
}

void PlanBox::addRow(QWidget* widget) {
    auto* title = new QLabel;
    title->setBuddy(widget);
    m_form->addRow(title, widget);
    m_rows.emplace_back(title, widget);
}

widgets::QuantitySpinBox* PlanBox::addBox(const char* name, Dimension dimension, double highest) {
    auto* box = new widgets::QuantitySpinBox{m_appearance, dimension};
    box->setObjectName(QLatin1String{name});
    box->setSiRange(0.0, highest);
    addRow(box);
    connect(box, &widgets::QuantitySpinBox::siEdited, this, &PlanBox::edited);
    return box;
}

QDateEdit* PlanBox::addDate(const char* name) {
    QDateEdit* edit = widgets::makeDateField(name);
    addRow(edit);
    connect(edit, &QDateEdit::dateChanged, this, &PlanBox::edited);
    return edit;
}

review::FeedQuestion PlanBox::question() const {
    return {widgets::dayOf(*m_from), planned<AsFedMass>(m_perDay), planned<DryMatter>(m_dryMatter),
            planned<Loss>(m_loss),   widgets::dayOf(*m_week),      planned<Length>(m_face)};
}

void PlanBox::retranslate() {
    const std::array titles{tr("First day"),
                            tr("Fed each day"),
                            tr("Its dry matter"),
                            tr("Lost until fed"),
                            tr("The face, from the back wall"),
                            tr("Week from")};
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        m_rows[i].first->setText(titles[i]);
        m_rows[i].second->setAccessibleName(titles[i]);
    }
    m_hint->setText(
        tr("What is left at nothing is taken from what was fed so far. The plan is not recorded."));
}

void PlanBox::followLook() {
    for (const auto& [title, widget] : m_rows)
        widget->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
}

void PlanBox::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

}  // namespace treadwell::face_page
