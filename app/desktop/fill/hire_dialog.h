#pragma once

#include "app/desktop/fill/sheet.h"
#include "core/farm/machine_classes.h"
#include "core/season/farm_book.h"

class QButtonGroup;
class QLineEdit;

namespace treadwell::fill {

/// A truck or tractor that the farm does not know, by what it looks like. It gets a name of its own, which
/// may be changed; nobody has to type.
class HireDialog final : public Sheet {
    Q_OBJECT

  public:
    HireDialog(const settings::Appearance& appearance, const season::FarmBook& farm, QWidget* parent);

  signals:
    void tractorCame(const QString& name, treadwell::farm::TractorClass seen);
    void truckCame(const QString& name, treadwell::farm::TruckClass seen);

  protected:
    void record() override;

  private:
    [[nodiscard]] QWidget* makeClasses(bool tractors);

    QButtonGroup* m_classes;
    QLineEdit* m_name;
    QString m_tractorName;
    QString m_truckName;
};

}  // namespace treadwell::fill
