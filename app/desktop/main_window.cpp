#include "app/desktop/main_window.h"

#include "app/desktop/copies_dialog.h"
#include "app/desktop/fill/fill_page.h"
#include "app/desktop/intake/import_dialog.h"
#include "app/desktop/on_screen.h"
#include "app/desktop/season_banner.h"
#include "core/base/atomic_file.h"
#include "core/session/state_folder.h"

#include <QActionGroup>
#include <QApplication>
#include <QEvent>
#include <QFile>
#include <QFileDialog>
#include <QMenuBar>
#include <QMessageBox>
#include <QScreen>
#include <QSettings>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace treadwell {

namespace {

constexpr auto kUnitsKey = "units";
constexpr auto kLanguageKey = "language";
constexpr auto kLookKey = "look";

template <NamedEnum E>
QString named(E choice) {
    const std::string_view text = enumText(choice);
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

template <NamedEnum E>
std::optional<E> keptChoice(const QSettings& kept, const char* key) {
    return enumFromText<E>(kept.value(QLatin1String{key}).toString().toStdString());
}

QAction* addChoice(QMenu* menu, QActionGroup* group, bool chosen) {
    QAction* action = menu->addAction(QString{});
    action->setCheckable(true);
    action->setChecked(chosen);
    group->addAction(action);
    return action;
}

}  // namespace

WindowSettings readSettings() {
    const QSettings kept;
    WindowSettings settings;
    settings.units = keptChoice<UnitSystem>(kept, kUnitsKey).value_or(settings.units);
    settings.language = kept.value(QLatin1String{kLanguageKey}, settings.language).toString();
    settings.look = keptChoice<settings::Look>(kept, kLookKey).value_or(settings.look);
    return settings;
}

void writeSettings(const WindowSettings& settings) {
    QSettings kept;
    kept.setValue(QLatin1String{kUnitsKey}, named(settings.units));
    kept.setValue(QLatin1String{kLanguageKey}, settings.language);
    kept.setValue(QLatin1String{kLookKey}, named(settings.look));
}

MainWindow::MainWindow(desk::SeasonDesk& desk, WindowSettings settings, QWidget* parent)
    : QMainWindow{parent},
      m_desk{desk},
      m_settings{std::move(settings)},
      m_pages{new QStackedWidget},
      m_made(pageKinds().size()),
      m_page{nullptr} {
    setLook(m_settings.look);
    setLanguage(m_settings.language);
    m_page = static_cast<fill::FillPage*>(made(Page::fill));
    auto* central = new QWidget;
    auto* layout = new QVBoxLayout{central};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(new SeasonBanner{desk, m_appearance});
    layout->addWidget(m_pages, 1);
    setCentralWidget(central);
    makeSeasonMenu();
    makePages();
    makeMenus();
    retranslate();
    connect(m_page, &fill::FillPage::languageTouched, this, [this] {
        setLanguage(m_language.name() == u"en" ? QStringLiteral("pt_BR") : QStringLiteral("en"));
        emit settingsChanged(m_settings);
    });
    connect(&desk, &desk::SeasonDesk::changed, m_page, &fill::FillPage::refresh);
    connect(&desk, &desk::SeasonDesk::changed, this, &MainWindow::tellCautions);
    // Queued: the list of screens has changed only afterwards.
    connect(qApp, &QGuiApplication::screenRemoved, this, &MainWindow::comeBackOnScreen, Qt::QueuedConnection);
    connect(qApp, &QGuiApplication::primaryScreenChanged, this, &MainWindow::comeBackOnScreen,
            Qt::QueuedConnection);
    tellCautions();
    settings::applySheet(*this, settings::themeOf(m_settings.look));
}

void MainWindow::tellCautions() {
    const fill::Speech speech{m_appearance.units(), m_desk.season()->zone()};
    // They are a list that grows, and another list once the file has been opened anew.
    const std::vector<Message>& cautions = m_desk.standing().cautions;
    const auto [isNew, told] =
        std::mismatch(cautions.begin(), cautions.end(), m_cautionsTold.begin(), m_cautionsTold.end());
    std::for_each(isNew, cautions.end(),
                  [&](const Message& each) { m_page->post(widgets::Weight::caution, speech.say(each)); });
    m_cautionsTold = cautions;
}

void MainWindow::makeSeasonMenu() {
    m_seasonMenu = menuBar()->addMenu(QString{});
    QAction* takeIn = m_seasonMenu->addAction(QString{});
    takeIn->setObjectName(QStringLiteral("takeIn"));
    takeIn->setShortcut(QKeySequence{Qt::CTRL | Qt::SHIFT | Qt::Key_O});
    m_names.emplace_back(takeIn, [] { return tr("Take in a file of tickets or readings…"); });
    connect(takeIn, &QAction::triggered, this, &MainWindow::chooseFile);
    QAction* copies = m_seasonMenu->addAction(QString{});
    copies->setObjectName(QStringLiteral("copies"));
    m_names.emplace_back(copies, [] { return tr("Copies after the day's close…"); });
    connect(copies, &QAction::triggered, this, [this] {
        (new CopiesDialog{m_desk, m_appearance, this})->open();
    });
}

void MainWindow::chooseFile() {
    auto* chooser =
        new QFileDialog{this, tr("Tickets or readings"), {}, tr("Lists (*.csv *.txt *.tsv);;All files (*)")};
    chooser->setAttribute(Qt::WA_DeleteOnClose);
    connect(chooser, &QFileDialog::fileSelected, this, [this](const QString& file) {
        takeIn(std::filesystem::path{QFile::encodeName(file).toStdString()});
    });
    chooser->open();
}

void MainWindow::takeIn(const std::filesystem::path& file) {
    auto bytes = readFile(file);
    if (!bytes) {
        const fill::Speech speech{m_appearance.units(), m_desk.season()->zone()};
        return m_page->post(widgets::Weight::caution, speech.say(bytes.error()));
    }
    // Where there is no such folder nothing can be remembered, and the sheet says so.
    const std::filesystem::path state = session::stateFolder().value_or("/dev/null");
    (new intake_page::ImportDialog{m_desk, m_appearance, *std::move(bytes), file,
                                   state / intake::kImportMapsFile, this})
        ->open();
}

void MainWindow::makePages() {
    m_pagesMenu = menuBar()->addMenu(QString{});
    auto* pages = new QActionGroup{this};
    for (const PageKind& kind : pageKinds()) {
        QAction* action = addChoice(m_pagesMenu, pages, kind.page == Page::fill);
        action->setShortcut(
            QKeySequence{Qt::ALT | static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(kind.page))});
        m_names.emplace_back(action, kind.name);
        m_pageActions.push_back(action);
        connect(action, &QAction::triggered, this, [this, page = kind.page] { showPage(page); });
    }
}

QWidget* MainWindow::made(Page page) {
    QWidget*& widget = m_made[static_cast<std::size_t>(page)];
    if (widget == nullptr) {
        widget = pageKinds()[static_cast<std::size_t>(page)].make(m_desk, m_appearance);
        m_pages->addWidget(widget);
    }
    return widget;
}

void MainWindow::showPage(Page page) {
    m_pages->setCurrentWidget(made(page));
    m_pageActions[static_cast<std::size_t>(page)]->setChecked(true);
}

void MainWindow::comeBackOnScreen() {
    QList<QRect> screens;
    for (const QScreen* screen : QGuiApplication::screens()) screens << screen->availableGeometry();
    const QRect held = heldOnScreen(geometry(), screens);
    if (held != geometry()) setGeometry(held);
}

void MainWindow::makeMenus() {
    m_unitsMenu = menuBar()->addMenu(QString{});
    auto* units = new QActionGroup{this};
    QAction* metric = addChoice(m_unitsMenu, units, m_settings.units == UnitSystem::metric);
    QAction* us = addChoice(m_unitsMenu, units, m_settings.units == UnitSystem::us);
    m_names.emplace_back(metric, [] { return tr("Metric: t, kg DM/m³"); });
    m_names.emplace_back(us, [] { return tr("US: ton, lb DM/ft³"); });
    const auto keep = [this] { emit settingsChanged(m_settings); };
    connect(metric, &QAction::triggered, this, [this, keep] { setUnits(UnitSystem::metric), keep(); });
    connect(us, &QAction::triggered, this, [this, keep] { setUnits(UnitSystem::us), keep(); });

    m_languageMenu = menuBar()->addMenu(QString{});
    auto* languages = new QActionGroup{this};
    for (const char* name : settings::kLanguages) {
        const QString language = QLatin1String{name};
        QAction* action = addChoice(m_languageMenu, languages, m_language.name() == language);
        // Each in its own language, so that it is found by those who need it.
        action->setText(language == u"en" ? QStringLiteral("English") : QStringLiteral("Português (Brasil)"));
        action->setData(language);
        connect(action, &QAction::triggered, this, [this, keep, language] { setLanguage(language), keep(); });
    }

    m_lookMenu = menuBar()->addMenu(QString{});
    auto* looks = new QActionGroup{this};
    using settings::Look;
    for (const Look look : {Look::light, Look::dark, Look::outdoor}) {
        QAction* action = addChoice(m_lookMenu, looks, m_settings.look == look);
        m_names.emplace_back(action, [look] {
            if (look == Look::light) return tr("Light");
            return look == Look::dark ? tr("Dark") : tr("Outdoor: black on white");
        });
        connect(action, &QAction::triggered, this, [this, keep, look] { setLook(look), keep(); });
    }

    m_helpMenu = menuBar()->addMenu(QString{});
    m_keys = m_helpMenu->addAction(QString{});
    m_keys->setShortcut(QKeySequence{Qt::Key_F1});
    m_names.emplace_back(m_keys, [] { return tr("Keys"); });
    connect(m_keys, &QAction::triggered, this, &MainWindow::showKeys);
}

void MainWindow::setUnits(UnitSystem units) {
    m_settings.units = units;
    m_appearance.setUnits(settings::DisplayUnits{units, m_language.locale()});
}

void MainWindow::setLanguage(const QString& language) {
    if (m_language.set(language)) m_settings.language = language;
    setUnits(m_settings.units);
}

void MainWindow::setLook(settings::Look look) {
    m_settings.look = look;
    const settings::Theme theme = settings::themeOf(look);
    settings::applyTheme(*qApp, theme);
    if (m_page != nullptr) settings::applySheet(*this, theme);
    m_appearance.setLook(look);
}

void MainWindow::retranslate() {
    setWindowTitle(QString::fromStdString(m_desk.season()->farm().farm) + QStringLiteral(" – Treadwell"));
    m_seasonMenu->setTitle(tr("&Season"));
    m_pagesMenu->setTitle(tr("&Pages"));
    m_unitsMenu->setTitle(tr("&Units"));
    m_languageMenu->setTitle(tr("&Language"));
    m_lookMenu->setTitle(tr("&Theme"));
    m_helpMenu->setTitle(tr("&Help"));
    for (const auto& [action, name] : m_names) action->setText(name());
    for (QAction* action : m_languageMenu->actions())
        action->setChecked(action->data().toString() == m_language.name());
}

void MainWindow::showKeys() {
    QString rows;
    const auto shown = std::find(m_made.begin(), m_made.end(), m_pages->currentWidget()) - m_made.begin();
    auto all = pageKinds()[static_cast<std::size_t>(shown)].keys();
    all.push_back({QStringLiteral("Ctrl+Shift+O"), tr("take in a file of tickets or readings")});
    for (const auto& [keys, what] : all) {
        rows += QStringLiteral("<tr><td><b>%1</b>&nbsp;&nbsp;</td><td>%2</td></tr>")
                    .arg(keys.toHtmlEscaped(), what.toHtmlEscaped());
    }
    auto* box = new QMessageBox{this};
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->setWindowTitle(tr("Keys"));
    box->setTextFormat(Qt::RichText);
    box->setText(QStringLiteral("<table>%1</table>").arg(rows));
    box->open();
}

void MainWindow::changeEvent(QEvent* event) {
    QMainWindow::changeEvent(event);
    if (event->type() == QEvent::LanguageChange && m_unitsMenu != nullptr) retranslate();
}

}  // namespace treadwell
