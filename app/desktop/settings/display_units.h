#pragma once

#include "core/quantity/fraction.h"
#include "core/quantity/quantity.h"
#include "core/quantity/unit_table.h"

#include <QLocale>
#include <QString>

namespace treadwell::settings {

/// Amounts as a person reads them: the digits and decimal sign of the locale, the unit's symbol in the
/// language of the screen, raised exponents. Never grouped, because a typed 1,234 means 1.234 everywhere and
/// what is shown must read as it would be typed. What is not finite is shown as a dash.
class DisplayUnits final {
  public:
    explicit DisplayUnits(UnitSystem system = UnitSystem::metric, const QLocale& locale = QLocale{});

    [[nodiscard]] UnitSystem system() const noexcept { return m_system; }
    [[nodiscard]] const QLocale& locale() const noexcept { return m_locale; }

    /// `236 kg DM/m³`
    [[nodiscard]] QString text(Amount amount) const;
    /// `198–274 kg DM/m³`; `-0.7 to -0.4 %` where a dash would stand beside a minus
    [[nodiscard]] QString rangeText(Amount low, Amount high) const;
    /// `236`
    [[nodiscard]] QString numberText(Amount amount) const;
    /// `kg DM/m³`; empty where the dimension has no unit.
    [[nodiscard]] QString symbol(Dimension dimension) const;
    /// What follows a number, with the space before it where the unit is a word.
    [[nodiscard]] QString suffix(Dimension dimension) const;

    /// `61 %`; at the ends `under 1 %` and `over 99 %`, since no estimate is certain.
    [[nodiscard]] QString chanceText(Chance chance) const;

    [[nodiscard]] double shown(Amount amount) const;
    [[nodiscard]] Amount fromShown(Dimension dimension, double value) const;
    /// To the decimals that are shown.
    [[nodiscard]] Amount rounded(Amount amount) const;
    [[nodiscard]] int decimals(Dimension dimension) const;

    template <class Q>
    [[nodiscard]] QString text(const Q& quantity) const {
        return text(quantity.amount());
    }

  private:
    UnitSystem m_system;
    QLocale m_locale;
};

}  // namespace treadwell::settings
