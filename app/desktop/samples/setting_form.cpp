#include "app/desktop/samples/setting_form.h"

#include "app/desktop/widgets/quantity_spin_box.h"

#include <QComboBox>

namespace treadwell::samples_page {

namespace {

constexpr double kLongestCut = 0.1;  // m
constexpr double kTallestStubble = 1.0;

}  // namespace

SettingForm::SettingForm(const settings::Appearance& look, QWidget* parent)
    : Form{look, QStringLiteral("settingForm"), parent},
      m_length{addBox("settingLength", Dimension::chopLength, 0.0, kLongestCut)},
      m_gap{addBox("settingGap", Dimension::chopLength, 0.0, kLongestCut)},
      m_height{addBox("settingHeight", Dimension::layerThickness, 0.0, kTallestStubble)},
      m_processor{addChoice("settingProcessor")} {
    SettingForm::retranslate();
    m_processor->setCurrentIndex(static_cast<int>(samples::Processor::rolls));
    follow();
}

void SettingForm::retranslate() {
    setItems(m_processor, {tr("No processor"), tr("Rolls"), tr("Rolls for a long cut")});
    setTitle(m_length, tr("Length of cut"));
    setTitle(m_gap, tr("Gap of the rolls"));
    setTitle(m_height, tr("Stubble"));
    setTitle(m_processor, tr("Processor"));
    setRecordText(tr("Record the setting"));
}

std::optional<QString> SettingForm::notYet() const {
    if (m_length->si() > 0.0 || m_gap->si() > 0.0 || m_height->si() > 0.0) return std::nullopt;
    return tr("give a length of cut, a gap or the stubble");
}

Result<entries::Body> SettingForm::body() const {
    entries::ChopSet set;
    if (m_length->si() > 0.0) set.length = m_length->quantity<Length>();
    if (m_gap->si() > 0.0) set.rollGap = m_gap->quantity<Length>();
    if (m_height->si() > 0.0) set.cuttingHeight = m_height->quantity<Length>();
    set.processor = static_cast<samples::Processor>(m_processor->currentIndex());
    return set;
}

QString SettingForm::running() const {
    return tr("What is left at nothing stays as it was. Stubble of 15 to 20 cm is common practice.");
}

}  // namespace treadwell::samples_page
