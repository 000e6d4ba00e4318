#pragma once

#include "app/desktop/fill/sheet.h"
#include "app/scale/line.h"
#include "core/formats/scale_profile.h"

class QComboBox;

namespace treadwell::samples_page {

/// Which scale lies on which wire, and how it talks; kept for the next time.
class ScaleDialog final : public fill::Sheet {
    Q_OBJECT

  public:
    explicit ScaleDialog(const settings::Appearance& look, QWidget* parent);

  signals:
    void chosen(const treadwell::scale::LineSettings& settings,
                const treadwell::formats::ScaleProfile& profile);

  protected:
    void record() override;

  private:
    QComboBox* m_place;
    QComboBox* m_profile;
    QComboBox* m_baud;
    QComboBox* m_characters;
};

}  // namespace treadwell::samples_page
