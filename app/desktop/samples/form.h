#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/base/dimension.h"
#include "core/entries/body.h"

#include <QFrame>
#include <functional>
#include <vector>

class QComboBox;
class QGridLayout;
class QLabel;
class QPushButton;

namespace treadwell::widgets {
class QuantitySpinBox;
}

namespace treadwell::samples_page {

/// A place to enter one reading at a folding table: Enter goes from field to field in the order of the work
/// and at the last one records. What has been typed so far is summed up below the fields; what cannot be is
/// refused there with its reason.
class Form : public QFrame {
    Q_OBJECT

  public:
    /// The field that the crop comes from, named in the entry.
    void setField(std::optional<farm::FieldId> field) { m_field = field; }
    /// A weight from a scale goes into the field in hand, or the first that is empty, and the next comes into
    /// hand; nothing is recorded by it.
    void takeWeight(AsFedMass weight);

  signals:
    void recorded(const treadwell::entries::Body& body);

  protected:
    Form(const settings::Appearance& appearance, const QString& name, QWidget* parent);

    /// Each in a row of its own, in the order of the work.
    widgets::QuantitySpinBox* addBox(const char* name, Dimension dimension, double lowest, double highest);
    QComboBox* addChoice(const char* name);
    void addRow(QWidget* widget);
    void setTitle(QWidget* row, const QString& title);
    void showRow(QWidget* row, bool visible);
    void setItems(QComboBox* box, const QStringList& texts);
    void setRecordText(const QString& text);
    /// Sums up anew; after every edit.
    void follow();
    void tellRefused(const QString& why);

    [[nodiscard]] const settings::Appearance& appearance() const noexcept { return m_appearance; }
    [[nodiscard]] std::optional<farm::FieldId> field() const noexcept { return m_field; }

    /// The entry, or what is wrong with what was typed.
    [[nodiscard]] virtual Result<entries::Body> body() const = 0;
    /// Why the work is not at its end yet.
    [[nodiscard]] virtual std::optional<QString> notYet() const { return std::nullopt; }
    /// What was typed so far, in a line.
    [[nodiscard]] virtual QString running() const = 0;
    /// Enter within the last field in sight; records by default.
    virtual void finish();
    /// Empties the fields once they are recorded.
    virtual void clear();
    virtual void retranslate() = 0;
    void changeEvent(QEvent* event) override;

  private:
    void record();
    void goOn(QWidget* from);
    void followLook();
    [[nodiscard]] const widgets::QuantitySpinBox* wrongBox() const;
    [[nodiscard]] std::vector<widgets::QuantitySpinBox*> weighedBoxes() const;

    const settings::Appearance& m_appearance;
    std::optional<farm::FieldId> m_field;
    std::vector<std::pair<QWidget*, QLabel*>> m_rows;
    std::vector<widgets::QuantitySpinBox*> m_boxes;
    QGridLayout* m_grid;
    QLabel* m_mark;
    QLabel* m_running;
    QPushButton* m_record;
};

}  // namespace treadwell::samples_page
