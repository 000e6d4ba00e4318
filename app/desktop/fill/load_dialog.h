#pragma once

#include "app/desktop/fill/sheet.h"
#include "core/season/season.h"

class QComboBox;
class QPushButton;
class QTimeEdit;

namespace treadwell::widgets {
class QuantityField;
}

namespace treadwell::fill {

/// What a load may weigh, wherever somebody enters it.
inline constexpr AsFedMass kLightestLoad = AsFedMass::fromKilograms(100);
inline constexpr AsFedMass kHeaviestLoad = AsFedMass::fromTonnes(80);

/// A load that is not the usual one, or a recorded one that has to be put right: mass and how it is known,
/// truck, field, silo and time.
class LoadDialog final : public Sheet {
    Q_OBJECT

  public:
    enum class Purpose : std::uint8_t { newLoad, correction };

    /// `load` at `at` is what a touch would have logged, or what was recorded.
    LoadDialog(const settings::Appearance& appearance, Purpose purpose, const entries::Load& load, Instant at,
               const season::Season& season, Instant now, QWidget* parent);

  signals:
    /// `usual`: the mass is this truck's usual load from now on.
    void recorded(const treadwell::entries::Load& load, treadwell::Instant at, bool usual);

  protected:
    void record() override;

  private:
    void addMass();
    void addPlaces(const season::FarmBook& farm);

    entries::Load m_load;
    Instant m_at;
    Instant m_now;
    FarmZone m_zone;
    widgets::QuantityField* m_mass;
    QComboBox* m_source;
    QComboBox* m_truck;
    QComboBox* m_field;
    QComboBox* m_silo;
    QTimeEdit* m_time;
    QPushButton* m_usual;
};

}  // namespace treadwell::fill
