#include "app/desktop/samples/kernel_form.h"

#include "app/desktop/fill/say.h"
#include "app/desktop/samples/samples_presenter.h"
#include "app/desktop/widgets/quantity_spin_box.h"
#include "app/desktop/widgets/step_field.h"

#include <QComboBox>
#include <QSpinBox>

namespace treadwell::samples_page {

namespace {

constexpr int kMostKernels = 500;
constexpr double kHeaviestFraction = 20.0;  // kg

}  // namespace

KernelForm::KernelForm(const settings::Appearance& look, QWidget* parent)
    : Form{look, QStringLiteral("kernelForm"), parent},
      m_way{addChoice("kernelWay")},
      m_material{addChoice("kernelMaterial")},
      m_count{new QSpinBox},
      m_countField{new widgets::StepField{look, m_count}},
      m_whole{nullptr},
      m_coarse{nullptr},
      m_wholeStarch{nullptr},
      m_coarseStarch{nullptr} {
    m_count->setObjectName(QStringLiteral("kernelCount"));
    m_count->setRange(0, kMostKernels);
    addRow(m_countField);
    m_whole = addBox("kernelWhole", Dimension::dishMass, 0.0, kHeaviestFraction);
    m_wholeStarch = addBox("kernelWholeStarch", Dimension::share, 0.0, 1.0);
    m_coarse = addBox("kernelCoarse", Dimension::dishMass, 0.0, kHeaviestFraction);
    m_coarseStarch = addBox("kernelCoarseStarch", Dimension::share, 0.0, 1.0);
    connect(m_way, &QComboBox::currentIndexChanged, this, &KernelForm::showWay);
    connect(m_material, &QComboBox::currentIndexChanged, this, &KernelForm::follow);
    connect(m_count, &QSpinBox::valueChanged, this, &KernelForm::follow);
    KernelForm::retranslate();
    showWay();
}

bool KernelForm::byScore() const {
    return m_way->currentIndex() == 1;
}

void KernelForm::showWay() {
    showRow(m_countField, !byScore());
    for (QWidget* row : {m_whole, m_coarse, m_wholeStarch, m_coarseStarch}) showRow(row, byScore());
    follow();
}

void KernelForm::retranslate() {
    setItems(m_way, {tr("Counted in a cup of 0.95 L"), tr("Processing score, on 4.75 mm")});
    setItems(m_material, {tr("Fresh"), tr("Fermented")});
    setTitle(m_way, tr("How"));
    setTitle(m_material, tr("Crop"));
    setTitle(m_countField, tr("Whole and half kernels"));
    m_countField->setName(tr("Whole and half kernels"));
    setTitle(m_whole, tr("Dried sample"));
    setTitle(m_wholeStarch, tr("Its starch"));
    setTitle(m_coarse, tr("Stays on 4.75 mm"));
    setTitle(m_coarseStarch, tr("Starch of that"));
    setRecordText(tr("Record the kernels"));
}

entries::KernelTest KernelForm::test() const {
    entries::KernelTest test;
    test.field = field();
    test.material = m_material->currentIndex() == 1 ? samples::Material::fermented : samples::Material::fresh;
    if (byScore()) {
        test.whole = m_whole->quantity<DryMass>();
        test.coarse = m_coarse->quantity<DryMass>();
        test.wholeStarch = m_wholeStarch->quantity<Share>();
        test.coarseStarch = m_coarseStarch->quantity<Share>();
    } else {
        test.kernels = m_count->value();
    }
    return test;
}

Result<entries::Body> KernelForm::body() const {
    return test();
}

QString KernelForm::running() const {
    if (!byScore()) {
        const std::array cup{samples::CupCount{m_count->value(), test().material}};
        const auto means = samples::cupMeans(cup);
        return means ? tr("This cup: %1. Count several loads.").arg(processingName(means->front().processing))
                     : QString{};
    }
    if (!(m_whole->si() > 0.0) || !(m_wholeStarch->si() > 0.0))
        return tr("Weigh the dried sample, sieve it on 4.75 mm, and weigh what stays.");
    const auto score = entries::scoreOf(test());
    if (!score) return fill::Speech{appearance().units(), FarmZone{}}.say(score.error());
    return tr("Score %1 of the starch: %2.")
        .arg(appearance().units().text((*score)->score), processingName((*score)->processing));
}

}  // namespace treadwell::samples_page
