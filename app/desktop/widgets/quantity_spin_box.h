#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/quantity/quantity.h"

#include <QDoubleSpinBox>

class QLabel;

namespace treadwell::widgets {

/// The one entry of numbers. '.' and ',' are both the decimal sign in every locale and there is no grouping;
/// text with two signs is marked as wrong and never becomes a value. The amount set is kept exactly until it
/// is edited, so that showing it rounded changes nothing.
class QuantitySpinBox final : public QDoubleSpinBox {
    Q_OBJECT

  public:
    QuantitySpinBox(const settings::Appearance& appearance, Dimension dimension, QWidget* parent = nullptr);

    void setSiRange(double lowest, double highest);
    void setSi(double value);
    /// As if it had been typed, to the last digit.
    void takeSi(double value) {
        setSi(value);
        emit siEdited(m_si);
    }
    [[nodiscard]] double si() const noexcept { return m_si; }
    [[nodiscard]] Dimension dimension() const noexcept { return m_dimension; }

    template <class Q>
    void setQuantity(Q quantity) {
        setSi(quantity.si());
    }
    template <class Q>
    [[nodiscard]] Q quantity() const {
        return Q::fromSi(m_si);
    }

    /// How the text is read: `1.234 t`, or in words why it is not a number.
    [[nodiscard]] const QString& echo() const noexcept { return m_echo; }
    [[nodiscard]] bool isWrong() const noexcept { return m_wrong; }

    QValidator::State validate(QString& text, int& place) const override;
    double valueFromText(const QString& text) const override;
    QString textFromValue(double value) const override;
    /// The base would take out grouping signs and so turn a refused 1.234,5 into 1.2345.
    void fixup(QString&) const override {}

  signals:
    /// After an edit or a step, never after setSi().
    void siEdited(double si);
    void echoChanged(const QString& echo);

  protected:
    void wheelEvent(QWheelEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    [[nodiscard]] QString typedPart(const QString& text) const;
    void followUnits();
    void judge(const QString& text);
    void finish();
    void settle();
    void tell(bool wrong, const QString& echo);

    const settings::Appearance& m_appearance;
    Dimension m_dimension;
    double m_si = 0.0;
    double m_lowestSi = 0.0;
    double m_highestSi = 0.0;
    bool m_following = false;  ///< the value is set, not edited
    bool m_wrong = false;
    QString m_refused;
    QString m_echo;
    QAction* m_mark;
};

/// A spin box with, below it, how its text is read.
class QuantityField final : public QWidget {
    Q_OBJECT

  public:
    QuantityField(const settings::Appearance& appearance, Dimension dimension, QWidget* parent = nullptr);
    [[nodiscard]] QuantitySpinBox& box() noexcept { return *m_box; }

  private:
    QuantitySpinBox* m_box;
    QLabel* m_echo;
};

}  // namespace treadwell::widgets
