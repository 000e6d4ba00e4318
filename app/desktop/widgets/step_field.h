#pragma once

#include "app/desktop/settings/appearance.h"

#include <QAbstractSpinBox>
#include <QDateEdit>
#include <QTimeEdit>

namespace treadwell::widgets {

/// A spin box between a large minus and a large plus, so that nobody has to type.
class StepField final : public QWidget {
    Q_OBJECT

  public:
    /// Takes the box.
    StepField(const settings::Appearance& appearance, QAbstractSpinBox* box, QWidget* parent = nullptr);
    /// Of the box, and of the buttons beside it.
    void setName(const QString& name);

  private:
    QAbstractSpinBox* m_box;
    QWidget* m_less;
    QWidget* m_more;
};

/// A time of the day that goes by five minutes a step.
class ClockEdit final : public QTimeEdit {
    Q_OBJECT

  public:
    explicit ClockEdit(const QTime& time, QWidget* parent = nullptr);
    void stepBy(int steps) override;

  protected:
    StepEnabled stepEnabled() const override { return StepUpEnabled | StepDownEnabled; }
};

/// A day, one day a step.
class DayEdit final : public QDateEdit {
    Q_OBJECT

  public:
    explicit DayEdit(QWidget* parent = nullptr);
    void stepBy(int steps) override;

  protected:
    StepEnabled stepEnabled() const override { return StepUpEnabled | StepDownEnabled; }
};

}  // namespace treadwell::widgets
