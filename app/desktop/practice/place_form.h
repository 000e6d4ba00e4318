#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/farm/silo_place.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;

namespace treadwell::practice_page {

/// Asks where a silo lies on Earth: as a receiver or a map shows it, in degrees.
class PlaceForm final : public QWidget {
    Q_OBJECT

  public:
    explicit PlaceForm(const settings::Appearance& appearance, QWidget* parent = nullptr);

    void clear();

  signals:
    void placed(const treadwell::farm::SiloPlace& place);
    void failed(const treadwell::Error& error);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void retranslate();
    void read();

    QLabel* m_why;
    std::array<QLabel*, 3> m_titles;
    std::array<QLineEdit*, 3> m_fields;  ///< latitude, longitude, bearing
    QPushButton* m_record;
};

}  // namespace treadwell::practice_page
