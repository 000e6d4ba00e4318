#pragma once

#include "app/desktop/fill/sheet.h"
#include "core/farm/machines.h"

namespace treadwell::widgets {
class QuantityField;
}

namespace treadwell::fill {

/// The mass of a tractor, once somebody knows it: from a weighbridge or its papers.
class MassDialog final : public Sheet {
    Q_OBJECT

  public:
    MassDialog(const settings::Appearance& appearance, const farm::Tractor& tractor, QWidget* parent);

  signals:
    void recorded(const treadwell::farm::Tractor& tractor);

  protected:
    void record() override;

  private:
    farm::Tractor m_tractor;
    widgets::QuantityField* m_mass;
};

}  // namespace treadwell::fill
