#pragma once

#include "app/desktop/desk/season_file.h"
#include "app/desktop/fill/sheet.h"

class QLineEdit;

namespace treadwell::fill {

/// Who holds the tablet: a touch for who is known, a name for who is new. Asked once a shift.
class TabletDialog final : public Sheet {
    Q_OBJECT

  public:
    TabletDialog(const settings::Appearance& appearance, const desk::People& people, bool onShift,
                 QWidget* parent);

  signals:
    void taken(const QString& name);
    void shiftEnded();

  protected:
    void record() override;

  private:
    QLineEdit* m_name;
};

}  // namespace treadwell::fill
