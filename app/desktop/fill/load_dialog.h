#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/entries/load.h"
#include "core/season/farm_book.h"

#include <QDialog>

class QComboBox;

namespace treadwell::widgets {
class QuantityField;
}

namespace treadwell::fill {

/// A load whose mass or field is not the usual one.
class LoadDialog final : public QDialog {
    Q_OBJECT

  public:
    /// `usual` is what a touch would have logged.
    LoadDialog(const settings::Appearance& appearance, const entries::Load& usual,
               const season::FarmBook& farm, QWidget* parent);

  signals:
    void recorded(const treadwell::entries::Load& load);

  private:
    void record();

    entries::Load m_load;
    widgets::QuantityField* m_mass;
    QComboBox* m_source;
    QComboBox* m_field;
    std::vector<std::optional<farm::FieldId>> m_fields;
};

}  // namespace treadwell::fill
