#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/base/dimension.h"

#include <QFrame>
#include <vector>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace treadwell::widgets {
class QuantityField;
class QuantitySpinBox;
}  // namespace treadwell::widgets

namespace treadwell::fill {

/// A titled place to enter one reading: what was last read and how old it is, the fields, and the button that
/// records them. The button wakes with the first edit, so that no old number is recorded by a stray touch.
class EntryPanel : public QFrame {
    Q_OBJECT

  public:
    EntryPanel(const settings::Appearance& appearance, QWidget* parent);
    void setLast(const QString& text, bool overdue);

  signals:
    /// A field holds text that is no number: said instead of recorded.
    void refused(const QString& why);

  protected:
    /// A field of this panel: an edit wakes the button, Enter records.
    void watch(widgets::QuantityField* field);
    /// Shows a rounded amount until something is typed: nobody measured the digits of an old one's quotient.
    void suggest(widgets::QuantityField* field, Amount amount);
    [[nodiscard]] QVBoxLayout* fields() noexcept { return m_fields; }
    [[nodiscard]] const settings::Appearance& appearance() const noexcept { return m_appearance; }
    /// Something was typed that is not recorded yet.
    [[nodiscard]] bool isEdited() const;
    void setWords(const QString& title, const QString& button);
    /// Called only when no watched field in sight is wrong.
    virtual void record() = 0;
    virtual void retranslate() = 0;
    void changeEvent(QEvent* event) override;

  private:
    void tryToRecord();
    void follow();

    const settings::Appearance& m_appearance;
    std::vector<widgets::QuantitySpinBox*> m_boxes;
    QLabel* m_title;
    QLabel* m_mark;
    QLabel* m_last;
    QVBoxLayout* m_fields;
    QPushButton* m_record;
};

}  // namespace treadwell::fill
