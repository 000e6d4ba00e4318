#pragma once

#include "app/desktop/desk/season_desk.h"
#include "app/desktop/settings/appearance.h"

#include <QDialog>

class QLabel;
class QPushButton;

namespace treadwell {

/// The copies that follow each day's close: where they go and how they stand, another place, none, or one at
/// once. It goes when it is closed.
class CopiesDialog final : public QDialog {
    Q_OBJECT

  public:
    CopiesDialog(desk::SeasonDesk& desk, const settings::Appearance& appearance, QWidget* parent);

    /// What it says, and what went wrong last.
    [[nodiscard]] QString said() const;

  private:
    QPushButton* addButton(const char* name, const QString& text);
    void chooseFolder();
    void wish(const desk::CopyWish& wish);
    void ask(const desk::CopyWish& wish);
    void tell(const Result<Message>& stand);

    desk::SeasonDesk& m_desk;
    const settings::Appearance& m_appearance;
    QLabel* m_state;
    QLabel* m_refusal;
    QPushButton* m_choose;
    QPushButton* m_copyNow;
    QPushButton* m_forget;
};

}  // namespace treadwell
