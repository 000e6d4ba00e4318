#include "app/desktop/samples/visit_form.h"

#include "app/desktop/fill/say.h"
#include "app/desktop/widgets/date_field.h"
#include "app/desktop/widgets/quantity_spin_box.h"
#include "app/desktop/widgets/step_field.h"
#include "core/samples/dry_down.h"

#include <QDateEdit>
#include <QSpinBox>

namespace treadwell::samples_page {

namespace {

constexpr int kMostHybridDays = 140;
constexpr int kFewestHybridDays = 59;  // stands for nothing given

}  // namespace

VisitForm::VisitForm(const settings::Appearance& look, QWidget* parent)
    : Form{look, QStringLiteral("visitForm"), parent},
      m_dryMatter{addBox("visitDryMatter", Dimension::dryMatter, 0.0, 1.0)},
      m_milkLine{addBox("visitMilkLine", Dimension::share, 0.0, 1.0)},
      m_planted{widgets::makeDateField("visitPlanted")},
      m_silked{widgets::makeDateField("visitSilked")},
      m_hybridDays{new QSpinBox},
      m_hybridField{new widgets::StepField{look, m_hybridDays}} {
    m_hybridDays->setObjectName(QStringLiteral("visitHybridDays"));
    addRow(m_planted);
    addRow(m_silked);
    m_hybridDays->setRange(kFewestHybridDays, kMostHybridDays);
    m_hybridDays->setSpecialValueText(QStringLiteral("–"));
    addRow(m_hybridField);
    VisitForm::retranslate();
    follow();
}

void VisitForm::retranslate() {
    setTitle(m_dryMatter, tr("Whole plants"));
    setTitle(m_milkLine, tr("Milk line from the crown"));
    setTitle(m_planted, tr("Planted"));
    setTitle(m_silked, tr("Silked"));
    setTitle(m_hybridField, tr("Days of the hybrid"));
    m_hybridField->setName(tr("Days of the hybrid"));
    setRecordText(tr("Record the visit"));
}

std::optional<QString> VisitForm::notYet() const {
    if (!field()) return tr("choose the field above");
    return std::nullopt;
}

Result<entries::Body> VisitForm::body() const {
    entries::FieldObserved seen;
    seen.field = field().value_or(farm::FieldId{});
    if (m_dryMatter->si() > 0.0) seen.dryMatter = m_dryMatter->quantity<DryMatter>();
    if (m_milkLine->si() > 0.0) seen.milkLine = m_milkLine->quantity<Share>();
    seen.planted = widgets::dayOf(*m_planted);
    seen.silked = widgets::dayOf(*m_silked);
    if (m_hybridDays->value() > kFewestHybridDays) seen.hybridDays = m_hybridDays->value();
    return seen;
}

QString VisitForm::running() const {
    if (!(m_milkLine->si() > 0.0)) return tr("What is left at nothing stays as it was seen before.");
    const auto says = samples::milkLineSays(m_milkLine->quantity<Share>());
    if (!says) return fill::Speech{appearance().units(), FarmZone{}}.say(says.error());
    return says->sampleNow ? tr("Sample whole plants now: the line alone does not tell the dry matter.")
                           : tr("Below a third: too early to sample.");
}

void VisitForm::clear() {
    Form::clear();
    for (QDateEdit* edit : {m_planted, m_silked}) widgets::leaveOpen(*edit);
    m_hybridDays->setValue(kFewestHybridDays);
}

}  // namespace treadwell::samples_page
