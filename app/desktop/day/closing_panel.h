#pragma once

#include "app/desktop/day/day_presenter.h"
#include "app/desktop/desk/season_desk.h"
#include "app/desktop/settings/appearance.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;
class QVBoxLayout;

namespace treadwell::day_page {

class StepRow;
struct StepContext;

/// The walk that closes a day: what it leaves open, each answered or left open on purpose, the hand-over to
/// the next shift, and who closes. Of a closed day, how it can be opened again.
class ClosingPanel final : public QWidget {
    Q_OBJECT

  public:
    explicit ClosingPanel(const settings::Appearance& appearance, QWidget* parent = nullptr);

    /// What was typed stays while the day stays.
    void setDay(const desk::SeasonDesk& desk, LocalDay day);
    /// How the copies after each close stand.
    void setCopies(const QString& text);
    /// What was handed over or closed lies on the disk.
    void clearTexts();

  signals:
    void answered(const std::vector<treadwell::session::Proposal>& proposals);
    void refused(const QString& why);
    /// Nobody takes over where `next` is empty.
    void handedOver(const treadwell::session::Proposal& words, const QString& next);
    void closed(const std::vector<treadwell::session::Proposal>& proposals, const QString& by);
    void reopened(const treadwell::session::Proposal& correction);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    [[nodiscard]] QWidget* makeOpen();
    [[nodiscard]] QWidget* makeClosed();
    void showOpen(const desk::SeasonDesk& desk, const review::Closing& closing);
    void setSteps(std::vector<Step> steps, const StepContext& context);
    void dropSteps();
    void fillPeople(const desk::SeasonDesk& desk);
    void follow();
    void handOver();
    void close();
    void reopen();
    void retranslate();
    void followLook();

    const settings::Appearance& m_appearance;
    std::optional<LocalDay> m_day;
    review::Closing m_closing;
    Instant m_now;
    std::optional<entries::EntryId> m_closedBy;  ///< the entry that closed the day
    std::vector<StepRow*> m_steps;
    desk::People m_people;
    QLabel* m_title;
    QLabel* m_reason;
    QWidget* m_open;
    QVBoxLayout* m_rows;
    QLabel* m_handTitle;
    QPlainTextEdit* m_words;
    QLabel* m_nextTitle;
    QComboBox* m_next;
    QPushButton* m_hand;
    QLabel* m_byTitle;
    QComboBox* m_by;
    QLabel* m_hint;
    QPushButton* m_close;
    QWidget* m_closed;
    QLabel* m_copies;
    QLabel* m_whyTitle;
    QLineEdit* m_why;
    QPushButton* m_reopen;
};

}  // namespace treadwell::day_page
