#pragma once

#include "app/desktop/settings/appearance.h"

#include <QComboBox>

namespace treadwell::widgets {

/// A combo box whose arrow follows the look; a style sheet leaves none that is seen on every ground.
class ChoiceBox final : public QComboBox {
    Q_OBJECT

  public:
    explicit ChoiceBox(const settings::Appearance& appearance, QWidget* parent = nullptr);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    const settings::Appearance& m_appearance;
};

}  // namespace treadwell::widgets
