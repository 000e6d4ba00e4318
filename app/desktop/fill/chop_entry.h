#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/entries/sieve_test.h"
#include "core/season/season.h"

#include <QWidget>
#include <array>

class QGridLayout;
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
    [[nodiscard]] QSize minimumSizeHint() const override;

  signals:
    void recorded(const treadwell::entries::SieveTest& test);
    void refused(const QString& why);

  protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    static constexpr std::size_t kParts = 4;

    void place();
    void retranslate();
    void followLook();
    void record();

    const settings::Appearance& m_appearance;
    std::array<QLabel*, kParts> m_titles{};
    std::array<widgets::QuantitySpinBox*, kParts> m_boxes{};
    std::optional<bool> m_narrow;  ///< as the grid was filled last
    QGridLayout* m_grid;
    QLabel* m_mark;
    QLabel* m_last;
    QPushButton* m_record;
};

}  // namespace treadwell::fill
