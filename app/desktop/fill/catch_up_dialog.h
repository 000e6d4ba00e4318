#pragma once

#include "app/desktop/fill/sheet.h"
#include "core/intake/catch_up.h"
#include "core/season/season.h"

class QComboBox;
class QSpinBox;
class QTimeEdit;

namespace treadwell::widgets {
class QuantityField;
}

namespace treadwell::fill {

/// "Six loads between 10:20 and 11:05": how many came while nobody logged them, and when.
class CatchUpDialog final : public Sheet {
    Q_OBJECT

  public:
    /// `each` is what a touch logs now; its mass is the mean of the trucks' usual loads until one is chosen.
    /// The time begins with `since`, on the day of `now`.
    CatchUpDialog(const settings::Appearance& appearance, const entries::Load& each, Instant since,
                  const season::Season& season, Instant now, QWidget* parent);

  signals:
    void recorded(const treadwell::intake::CatchUp& loads);

  protected:
    void record() override;

  private:
    void suggestMass(const season::FarmBook& farm);

    entries::Load m_each;
    Instant m_now;
    FarmZone m_zone;
    QSpinBox* m_count;
    QTimeEdit* m_from;
    QTimeEdit* m_to;
    QComboBox* m_truck;
    widgets::QuantityField* m_mass;
};

}  // namespace treadwell::fill
