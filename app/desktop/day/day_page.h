#pragma once

#include "app/desktop/day/day_presenter.h"
#include "app/desktop/desk/season_desk.h"
#include "app/desktop/report/pdf_report.h"
#include "app/desktop/widgets/message_bar.h"

#include <QTimer>
#include <QWidget>
#include <functional>
#include <map>

class QComboBox;
class QLabel;
class QPushButton;
class QScrollArea;

namespace treadwell::day_page {

class ClosingPanel;
class SheetView;

/// The page of the evening: a day's sheet, or the season's days side by side, and beside it the walk that
/// closes the day. The sheet is printed, saved and copied as it stands.
class DayPage final : public QWidget {
    Q_OBJECT

  public:
    DayPage(desk::SeasonDesk& desk, const settings::Appearance& appearance, QWidget* parent = nullptr);

    /// Reads season and clock anew.
    void refresh();

  protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

  private:
    /// A form in which the sheet leaves the program.
    struct Form {
        QString suffix;
        std::function<QByteArray(const review::Document&)> bytes;
    };

    [[nodiscard]] QWidget* makeTools();
    void fillDays();
    void step(int days);
    void record(desk::Ticket ticket, const QString& done);
    void settle(desk::Ticket ticket);
    void fail(desk::Ticket ticket, const Error& error);
    void print();
    void save(const Form& form);
    void saveAs(const Form& form, const QString& path);
    void copyMessage();
    void handOver(const session::Proposal& words, const QString& next);
    void tellCopies();
    void close(const std::vector<session::Proposal>& proposals, const QString& by);
    void retranslate();
    void followLook();
    [[nodiscard]] std::optional<LocalDay> chosenDay() const;
    [[nodiscard]] words::Style style() const;
    [[nodiscard]] fill::Speech speech() const;

    desk::SeasonDesk& m_desk;
    const settings::Appearance& m_appearance;
    std::map<desk::Ticket, QString> m_pending;  ///< and what is said once it is recorded
    std::optional<desk::Ticket> m_closing;
    std::optional<review::Document> m_sheet;
    desk::SeasonPointer m_daysOf;
    QTimer m_tick;
    QLabel* m_dayTitle;
    QComboBox* m_day;
    QComboBox* m_paper;
    QPushButton* m_print;
    QPushButton* m_copy;
    std::vector<std::pair<QPushButton*, Form>> m_forms;
    widgets::MessageBar* m_messages;
    SheetView* m_view;
    ClosingPanel* m_panel;
    QScrollArea* m_side;
};

/// The keys of the Day page and what they do, for the list in the menu.
[[nodiscard]] std::vector<std::pair<QString, QString>> dayKeys();

}  // namespace treadwell::day_page
