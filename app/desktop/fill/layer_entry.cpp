#include "app/desktop/fill/layer_entry.h"

#include "app/desktop/widgets/quantity_spin_box.h"

#include <QVBoxLayout>

namespace treadwell::fill {

LayerEntry::LayerEntry(const settings::Appearance& look, QWidget* parent)
    : EntryPanel{look, parent}, m_thickness{new widgets::QuantityField{look, Dimension::layerThickness}} {
    m_thickness->box().setObjectName(QStringLiteral("layerThickness"));
    m_thickness->box().setSiRange(0.02, 1.0);
    fields()->addWidget(m_thickness);
    watch(m_thickness);
    LayerEntry::retranslate();
}

void LayerEntry::retranslate() {
    setWords(tr("Layer as spread"), tr("Record the layer"));
    m_thickness->box().setAccessibleName(tr("Thickness of the layer"));
}

void LayerEntry::setSuggestion(Length thickness) {
    suggest(m_thickness, thickness.layerAmount());
}

void LayerEntry::takeFocus() {
    m_thickness->box().setFocus(Qt::ShortcutFocusReason);
    m_thickness->box().selectAll();
}

void LayerEntry::record() {
    emit recorded(m_thickness->box().quantity<Length>());
}

}  // namespace treadwell::fill
