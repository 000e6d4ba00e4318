#pragma once

#include "app/desktop/fill/sheet.h"
#include "core/entries/incident.h"
#include "core/season/season.h"

class QButtonGroup;
class QComboBox;
class QLineEdit;
class QTimeEdit;

namespace treadwell::fill {

/// Something went wrong, or nearly did: to a person, a machine, or what lies about. A touch names it and a
/// touch records it; time, machine and words may be added, and nobody has to type.
class IncidentDialog final : public Sheet {
    Q_OBJECT

  public:
    IncidentDialog(const settings::Appearance& look, farm::SiloId silo, const season::Season& season,
                   Instant now, QWidget* parent);

  signals:
    void recorded(const treadwell::entries::Incident& incident, treadwell::Instant at);

  protected:
    void record() override;

  private:
    void addSorts(const QString& about, std::initializer_list<entries::IncidentSort> sorts);

    farm::SiloId m_silo;
    FarmZone m_zone;
    Instant m_now;
    QButtonGroup* m_sorts;
    QTimeEdit* m_time;
    QComboBox* m_tractor;
    QLineEdit* m_text;
};

}  // namespace treadwell::fill
