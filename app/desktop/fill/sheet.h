#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/base/farm_zone.h"

#include <QDialog>
#include <QTime>

class QAbstractSpinBox;
class QFormLayout;
class QLabel;
class QPushButton;

namespace treadwell::fill {

/// A sheet that somebody has asked for: rows to fill in, a button that records and one that leaves it. It
/// goes when it is closed.
class Sheet : public QDialog {
    Q_OBJECT

  protected:
    Sheet(const settings::Appearance& appearance, const QString& title, QWidget* parent);

    [[nodiscard]] const settings::Appearance& look() const noexcept { return m_look; }
    /// Named by its row where it has no name of its own.
    void addRow(const QString& name, QWidget* widget);
    void showRow(QWidget* widget, bool shown);
    /// Between a button less and a button more.
    void addStepRow(const QString& name, QAbstractSpinBox* box);
    /// The last row; `text` says what is recorded.
    QPushButton* addDecision(const QString& text);
    /// Says in the sheet why it is not recorded.
    void refuse(const QString& why);
    virtual void record() = 0;

  private:
    const settings::Appearance& m_look;
    QFormLayout* m_form;
    QLabel* m_refusal;
};

[[nodiscard]] QTime wallTime(const FarmZone& zone, Instant at);
/// The moment on the local day of `on` at which the farm's wall clock shows this time.
[[nodiscard]] Instant instantAt(const FarmZone& zone, Instant on, const QTime& time);

}  // namespace treadwell::fill
