#pragma once

#include "app/desktop/fill/entry_panel.h"
#include "core/quantity/geometry.h"

namespace treadwell::fill {

/// Takes how thick the crop is being spread.
class LayerEntry final : public EntryPanel {
    Q_OBJECT

  public:
    explicit LayerEntry(const settings::Appearance& appearance, QWidget* parent = nullptr);
    void setSuggestion(Length thickness);
    void takeFocus();

  signals:
    void recorded(treadwell::Length thickness);

  protected:
    void record() override;
    void retranslate() override;

  private:
    widgets::QuantityField* m_thickness;
};

}  // namespace treadwell::fill
