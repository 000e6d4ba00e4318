#pragma once

#include "app/desktop/fill/entry_panel.h"
#include "core/entries/dry_matter_sample.h"

class QComboBox;

namespace treadwell::fill {

/// Takes a dry-matter sample as a percentage or as the weights of a dish before and after drying.
class DryMatterEntry final : public EntryPanel {
    Q_OBJECT

  public:
    explicit DryMatterEntry(const settings::Appearance& appearance, QWidget* parent = nullptr);
    /// Shown until something is typed; records nothing.
    void setSuggestion(DryMatter dryMatter);
    void takeFocus();

  signals:
    /// Without a field.
    void recorded(const treadwell::entries::DryMatterSample& sample);

  protected:
    void record() override;
    void retranslate() override;

  private:
    [[nodiscard]] bool byWeight() const;
    void showWay();

    QComboBox* m_way;
    QComboBox* m_method;
    widgets::QuantityField* m_percent;
    QWidget* m_dish;
    widgets::QuantityField* m_wet;
    widgets::QuantityField* m_dry;
    QLabel* m_wetTitle;
    QLabel* m_dryTitle;
};

}  // namespace treadwell::fill
