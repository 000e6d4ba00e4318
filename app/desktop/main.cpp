// treadwell FILE: the desktop on one season.
#include "app/desktop/desk/session_file.h"
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
    QSize size{1280, 800};
    std::optional<Instant> at;
    WindowSettings settings = readSettings();
};

int refuse(const QString& why) {
    std::cerr << "treadwell: " << why.toStdString() << '\n';
    return 1;
}

QString tr(const char* text) {
    return QCoreApplication::translate("Main", text);
}

/// What was asked for, or in words what is wrong with it.
tl::expected<Arguments, QString> readArguments(const QApplication& application) {
    QCommandLineParser parser;
    parser.setApplicationDescription(tr("The packing of a bunker silo while it is filled."));
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addPositionalArgument(QStringLiteral("FILE"), tr("the season's file"));
    const QCommandLineOption screenshot{QStringLiteral("screenshot"),
                                        tr("write a picture of the window and end"), QStringLiteral("PNG")};
    const QCommandLineOption size{QStringLiteral("size"), tr("of the window"), QStringLiteral("WxH")};
    const QCommandLineOption look{QStringLiteral("theme"), QStringLiteral("light, dark, outdoor"),
                                  QStringLiteral("theme")};
    const QCommandLineOption language{QStringLiteral("language"), QStringLiteral("en, pt_BR"),
                                      QStringLiteral("language")};
    const QCommandLineOption units{QStringLiteral("units"), QStringLiteral("metric, us"),
                                   QStringLiteral("units")};
    const QCommandLineOption at{QStringLiteral("at"),
                                tr("look at this moment, nothing can be recorded: 2026-09-16T12:00:00Z"),
                                QStringLiteral("time")};
    parser.addOptions({screenshot, size, look, language, units, at});
    parser.process(application);

    Arguments arguments;
    if (parser.positionalArguments().size() != 1) return tl::unexpected{tr("give one file: treadwell FILE")};
    arguments.file = parser.positionalArguments().front();
    arguments.screenshot = parser.value(screenshot);
    if (parser.isSet(size)) {
        const QStringList sides = parser.value(size).split(u'x');
        arguments.size = sides.size() == 2 ? QSize{sides[0].toInt(), sides[1].toInt()} : QSize{};
        if (arguments.size.isEmpty()) return tl::unexpected{tr("--size is width x height, as 1280x800")};
    }
    if (parser.isSet(look)) {
        const auto named = enumFromText<settings::Look>(parser.value(look).toStdString());
        if (!named) return tl::unexpected{tr("--theme is light, dark or outdoor")};
        arguments.settings.look = *named;
    }
    if (parser.isSet(language)) {
        arguments.settings.language = parser.value(language);
        if (!settings::isLanguage(arguments.settings.language)) {
            return tl::unexpected{tr("--language is en or pt_BR")};
        }
    }
    if (parser.isSet(units)) {
        const auto named = enumFromText<UnitSystem>(parser.value(units).toStdString());
        if (!named) return tl::unexpected{tr("--units is metric or us")};
        arguments.settings.units = *named;
    }
    if (parser.isSet(at)) {
        arguments.at = instantFromIso8601(parser.value(at).toStdString());
        if (!arguments.at) return tl::unexpected{tr("--at is a time in UTC, as 2026-09-16T12:00:00Z")};
    }
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

int run(const QApplication& application) {
    const auto arguments = readArguments(application);
    if (!arguments) return refuse(arguments.error());
    std::unique_ptr<Clock> clock = std::make_unique<SystemClock>();
    if (arguments->at) clock = std::make_unique<FixedClock>(*arguments->at);

    const std::filesystem::path path{QFile::encodeName(arguments->file).toStdString()};
    const auto state = session::stateFolder();
    if (!state) return tellThatItDoesNotOpen(*arguments, state.error());
    const bool looksOnly = arguments->at || !arguments->screenshot.isEmpty();
    auto file =
        looksOnly ? desk::openSeasonForReading(path, *state, *clock) : desk::openSeason(path, *state, *clock);
    if (!file) return tellThatItDoesNotOpen(*arguments, file.error());

    desk::SeasonDesk desk{std::move(*file), *clock};
    MainWindow window{desk, arguments->settings};
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
