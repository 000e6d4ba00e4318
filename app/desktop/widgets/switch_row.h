#pragma once

#include "app/desktop/settings/appearance.h"

#include <QWidget>
#include <vector>

class QHBoxLayout;
class QLabel;
class QPushButton;
class QToolButton;

namespace treadwell::widgets {

/// One of several that a touch switches to.
struct SwitchChoice {
    QString key;
    QString name;
    QString detail;  ///< in a second row; empty where there is nothing to add
    friend bool operator==(const SwitchChoice&, const SwitchChoice&) = default;
};

/// A title and a button each for the first few choices and the chosen one; the others stand in a menu.
class SwitchRow final : public QWidget {
    Q_OBJECT

  public:
    explicit SwitchRow(const settings::Appearance& appearance, QWidget* parent = nullptr);

    void setTitle(const QString& title);
    void setChoices(const std::vector<SwitchChoice>& choices);
    void select(const QString& key);
    [[nodiscard]] const QString& key() const noexcept { return m_key; }
    /// To the choice after the chosen one, and from the last to the first.
    void selectNext();

  signals:
    /// By the user.
    void chosen(const QString& key);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void choose(const QString& key);
    void refresh();
    [[nodiscard]] std::vector<const SwitchChoice*> shown() const;

    const settings::Appearance& m_appearance;
    std::vector<SwitchChoice> m_choices;
    QString m_key;
    QHBoxLayout* m_row;
    QLabel* m_title;
    std::vector<QPushButton*> m_buttons;
    QToolButton* m_more;
};

}  // namespace treadwell::widgets
