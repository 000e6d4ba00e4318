#pragma once

#include "app/desktop/desk/season_desk.h"
#include "app/desktop/pages.h"
#include "app/desktop/settings/appearance.h"
#include "app/desktop/settings/language.h"

#include <QMainWindow>

class QActionGroup;
class QMenu;
class QStackedWidget;

namespace treadwell {

namespace fill {
class FillPage;
}

/// Everything about the window that is a setting and no fact of the season.
struct WindowSettings {
    UnitSystem units = UnitSystem::metric;
    QString language = settings::systemLanguage();
    settings::Look look = settings::Look::light;
};

[[nodiscard]] WindowSettings readSettings();
void writeSettings(const WindowSettings& settings);

/// The window of one season: its pages and the menu of how they look.
class MainWindow final : public QMainWindow {
    Q_OBJECT

  public:
    MainWindow(desk::SeasonDesk& desk, WindowSettings settings, QWidget* parent = nullptr);
    /// The pages look at the appearance, a member, until their end: they go first.
    ~MainWindow() override { delete takeCentralWidget(); }

    [[nodiscard]] fill::FillPage& fillPage() noexcept { return *m_page; }
    /// Made when it is first shown.
    void showPage(Page page);
    void setUnits(UnitSystem units);
    void setLanguage(const QString& language);
    void setLook(settings::Look look);

  signals:
    /// By the user, so that it can be kept for the next start.
    void settingsChanged(const treadwell::WindowSettings& settings);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void makeSeasonMenu();
    void chooseFile();
    void takeIn(const std::filesystem::path& file);
    void makePages();
    [[nodiscard]] QWidget* made(Page page);
    void makeMenus();
    void comeBackOnScreen();
    void retranslate();
    void showKeys();
    /// What has arisen since it was last asked.
    void tellCautions();

    desk::SeasonDesk& m_desk;
    WindowSettings m_settings;
    settings::Language m_language;
    settings::Appearance m_appearance;
    QStackedWidget* m_pages;
    std::vector<QWidget*> m_made;  ///< in the order of pageKinds, null until first shown
    fill::FillPage* m_page;
    std::vector<Message> m_cautionsTold;
    QMenu* m_seasonMenu = nullptr;
    QMenu* m_pagesMenu = nullptr;
    std::vector<QAction*> m_pageActions;
    QMenu* m_unitsMenu = nullptr;
    QMenu* m_languageMenu = nullptr;
    QMenu* m_lookMenu = nullptr;
    QMenu* m_helpMenu = nullptr;
    QAction* m_keys = nullptr;
    std::vector<std::pair<QAction*, std::function<QString()>>> m_names;
};

}  // namespace treadwell
