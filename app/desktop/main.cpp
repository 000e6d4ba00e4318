// treadwell FILE: the desktop on one season.
#include "app/desktop/desk/session_file.h"
#include "app/desktop/desk/sheet_file.h"
#include "app/desktop/fill/say.h"
#include "app/desktop/main_window.h"
#include "core/session/state_folder.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QFile>
#include <QMessageBox>
#include <QPixmap>
#include <QTimer>
#include <clocale>
#include <iostream>

using namespace treadwell;

namespace {

/// A moment that stands still: the window as of then.
class FixedClock final : public Clock {
  public:
    explicit FixedClock(Instant at) : m_at{at} {}
    Instant now() const override { return m_at; }

  private:
    Instant m_at;
};

struct Arguments {
    QString file;
    QString screenshot;  ///< empty: open the window
    QString sheet;       ///< empty: none is written
    desk::SheetWanted wanted;
    QSize size{1280, 800};
    std::optional<Instant> at;
    Page page = Page::fill;
    WindowSettings settings = readSettings();
};

int refuse(const QString& why) {
    std::cerr << "treadwell: " << why.toStdString() << '\n';
    return 1;
}

QString tr(const char* text) {
    return QCoreApplication::translate("Main", text);
}

QString pageNames() {
    QStringList names;
    for (const std::string_view name : enumTexts(Page{}))
        names << QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
    return names.join(QStringLiteral(", "));
}

/// The options of the command line.
struct Options {
    QCommandLineOption screenshot{QStringLiteral("screenshot"), tr("write a picture of the window and end"),
                                  QStringLiteral("PNG")};
    QCommandLineOption size{QStringLiteral("size"), tr("of the window"), QStringLiteral("WxH")};
    QCommandLineOption look{QStringLiteral("theme"), QStringLiteral("light, dark, outdoor"),
                            QStringLiteral("theme")};
    QCommandLineOption language{QStringLiteral("language"), QStringLiteral("en, pt_BR"),
                                QStringLiteral("language")};
    QCommandLineOption units{QStringLiteral("units"), QStringLiteral("metric, us"), QStringLiteral("units")};
    QCommandLineOption page{QStringLiteral("page"), pageNames(), QStringLiteral("page")};
    QCommandLineOption at{QStringLiteral("at"),
                          tr("look at this moment, nothing can be recorded: 2026-09-16T12:00:00Z"),
                          QStringLiteral("time")};
    QCommandLineOption sheet{QStringLiteral("sheet"), tr("write the sheet of a day and end"),
                             QStringLiteral("PDF")};
    QCommandLineOption date{QStringLiteral("date"), tr("of the sheet; the last day where not given"),
                            QStringLiteral("day")};
    QCommandLineOption paper{QStringLiteral("paper"), QStringLiteral("a4, letter"), QStringLiteral("paper")};
};

/// What is asked for of a sheet, or in words what is wrong with it.
tl::expected<void, QString> readSheet(const QCommandLineParser& parser, const Options& options,
                                      Arguments& arguments) {
    arguments.sheet = parser.value(options.sheet);
    if (const QString day = parser.value(options.date); !day.isEmpty()) {
        arguments.wanted.day = dayFromIso8601(day.toStdString());
        if (!arguments.wanted.day) return tl::unexpected{tr("--date is a day, as 2026-09-16")};
    }
    if (const QString name = parser.value(options.paper); !name.isEmpty()) {
        if (name != u"a4" && name != u"letter") return tl::unexpected{tr("--paper is a4 or letter")};
        arguments.wanted.paper = name == u"a4" ? report::Paper::a4 : report::Paper::letter;
    }
    return {};
}

/// Whether the option names one of the choices, if it is given at all.
template <NamedEnum E>
bool readChoice(const QCommandLineParser& parser, const QCommandLineOption& option, E& choice) {
    if (!parser.isSet(option)) return true;
    const auto named = enumFromText<E>(parser.value(option).toStdString());
    if (named) choice = *named;
    return named.has_value();
}

/// What was asked for, or in words what is wrong with it.
tl::expected<Arguments, QString> readArguments(const QApplication& application) {
    const Options options;
    QCommandLineParser parser;
    parser.setApplicationDescription(tr("The packing of a bunker silo while it is filled."));
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addPositionalArgument(QStringLiteral("FILE"), tr("the season's file"));
    parser.addOptions({options.screenshot, options.size, options.look, options.language, options.units,
                       options.page, options.at, options.sheet, options.date, options.paper});
    parser.process(application);

    Arguments arguments;
    if (parser.positionalArguments().size() != 1) return tl::unexpected{tr("give one file: treadwell FILE")};
    arguments.file = parser.positionalArguments().front();
    arguments.screenshot = parser.value(options.screenshot);
    if (parser.isSet(options.size)) {
        const QStringList sides = parser.value(options.size).split(u'x');
        arguments.size = sides.size() == 2 ? QSize{sides[0].toInt(), sides[1].toInt()} : QSize{};
        if (arguments.size.isEmpty()) return tl::unexpected{tr("--size is width x height, as 1280x800")};
    }
    if (!readChoice(parser, options.look, arguments.settings.look))
        return tl::unexpected{tr("--theme is light, dark or outdoor")};
    if (!readChoice(parser, options.units, arguments.settings.units))
        return tl::unexpected{tr("--units is metric or us")};
    if (!readChoice(parser, options.page, arguments.page))
        return tl::unexpected{tr("--page is one of %1").arg(pageNames())};
    if (parser.isSet(options.language)) {
        arguments.settings.language = parser.value(options.language);
        if (!settings::isLanguage(arguments.settings.language))
            return tl::unexpected{tr("--language is en or pt_BR")};
    }
    if (parser.isSet(options.at)) {
        arguments.at = instantFromIso8601(parser.value(options.at).toStdString());
        if (!arguments.at) return tl::unexpected{tr("--at is a time in UTC, as 2026-09-16T12:00:00Z")};
    }
    if (const auto read = readSheet(parser, options, arguments); !read) return tl::unexpected{read.error()};
    return arguments;
}

int tellThatItDoesNotOpen(const Arguments& arguments, const Error& error) {
    settings::Language language;
    language.set(arguments.settings.language);
    const settings::DisplayUnits units{arguments.settings.units, language.locale()};
    const QString why = fill::Speech{units, FarmZone{}}.say(error);
    if (arguments.screenshot.isEmpty() && QApplication::platformName() != u"offscreen") {
        QMessageBox::critical(nullptr, QStringLiteral("Treadwell"), why);
    }
    return refuse(why);
}

int takePicture(MainWindow& window, const Arguments& arguments) {
    window.resize(arguments.size);
    window.show();
    // The views at the page's foot are filled after its numbers have been painted.
    constexpr int kRounds = 4;
    for (int round = 0; round < kRounds; ++round) QCoreApplication::processEvents();
    if (!window.grab().save(arguments.screenshot, "PNG")) {
        return refuse(tr("%1 cannot be written").arg(arguments.screenshot));
    }
    return 0;
}

int writeSheet(QApplication& application, const Arguments& arguments, const session::Files& files,
               const Clock& clock) {
    settings::applyTheme(application, settings::themeOf(settings::Look::light));  // brings the letters along
    settings::Language language;
    language.set(arguments.settings.language);
    const settings::DisplayUnits units{arguments.settings.units, language.locale()};
    desk::SheetWanted wanted = arguments.wanted;
    wanted.style = fill::styleOf(units, FarmZone{});
    const std::filesystem::path pdf{QFile::encodeName(arguments.sheet).toStdString()};
    const auto written = desk::writeSheet(files, clock, wanted, pdf);
    if (!written) return tellThatItDoesNotOpen(arguments, written.error());
    return 0;
}

int run(QApplication& application) {
    const auto arguments = readArguments(application);
    if (!arguments) return refuse(arguments.error());
    std::unique_ptr<Clock> clock = std::make_unique<SystemClock>();
    if (arguments->at) clock = std::make_unique<FixedClock>(*arguments->at);

    const std::filesystem::path path{QFile::encodeName(arguments->file).toStdString()};
    const auto state = session::stateFolder();
    if (!state) return tellThatItDoesNotOpen(*arguments, state.error());
    if (!arguments->sheet.isEmpty()) return writeSheet(application, *arguments, {path, *state}, *clock);
    const bool looksOnly = arguments->at || !arguments->screenshot.isEmpty();
    auto file =
        looksOnly ? desk::openSeasonForReading(path, *state, *clock) : desk::openSeason(path, *state, *clock);
    if (!file) return tellThatItDoesNotOpen(*arguments, file.error());

    desk::SeasonDesk desk{std::move(*file), *clock};
    MainWindow window{desk, arguments->settings};
    window.showPage(arguments->page);
    if (!arguments->screenshot.isEmpty()) return takePicture(window, *arguments);
    QObject::connect(&window, &MainWindow::settingsChanged, &window, &writeSettings);
    window.resize(arguments->size);
    window.show();
    return QApplication::exec();
}

}  // namespace

int main(int argc, char** argv) {
    QApplication application{argc, argv};
    std::setlocale(LC_NUMERIC, "C");  // QApplication has set it from the environment
    QCoreApplication::setApplicationName(QStringLiteral("treadwell"));
    QCoreApplication::setApplicationVersion(QStringLiteral(TREADWELL_VERSION));
    return run(application);
}
