#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/entries/sieve_test.h"
#include "core/season/season.h"

#include <QWidget>
#include <array>

class QLabel;
class QPushButton;

namespace treadwell::widgets {
class QuantitySpinBox;
}

namespace treadwell::fill {

/// Loads came today and nobody has sieved any of it.
[[nodiscard]] bool chopIsOverdue(const season::Season& season, Instant now);

/// Takes what lay on the sieves of 19, 8 and 4 mm and in the pan, and says what the last test gave and how
/// old it is.
class ChopEntry final : public QWidget {
    Q_OBJECT

  public:
    explicit ChopEntry(const settings::Appearance& appearance, QWidget* parent = nullptr);
    void follow(const season::Season& season, Instant now);

  signals:
    void recorded(const treadwell::entries::SieveTest& test);
    void refused(const QString& why);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    static constexpr std::size_t kParts = 4;

    void retranslate();
    void followLook();
    void record();

    const settings::Appearance& m_appearance;
    std::array<QLabel*, kParts> m_titles{};
    std::array<widgets::QuantitySpinBox*, kParts> m_boxes{};
    QLabel* m_mark;
    QLabel* m_last;
    QPushButton* m_record;
};

}  // namespace treadwell::fill
