#include "app/desktop/fill/say.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace treadwell::fill {

namespace {

/// The core's sentences are plain ASCII where a screen has better: raised exponents, arrows.
QString forScreen(const std::string& sentence) {
    static const QRegularExpression kExponent{QStringLiteral("(?<=/m|/ft|\\d m|\\d ft)[23]\\b")};
    QString text = QString::fromStdString(sentence);
    text.replace(QStringLiteral("->"), QStringLiteral("→"));
    for (auto found = kExponent.match(text); found.hasMatch(); found = kExponent.match(text)) {
        text.replace(found.capturedStart(), 1, QChar{found.captured() == u"2" ? u'²' : u'³'});
    }
    return text;
}

}  // namespace

words::Style styleOf(const settings::DisplayUnits& units, const FarmZone& zone) {
    return {.units = units.system(),
            .decimalSign = units.locale().decimalPoint() == u"," ? ',' : '.',
            .translate =
                [](const char* context, const char* english) {
                    return QCoreApplication::translate(context, english).toStdString();
                },
            .zone = zone};
}

QString Speech::say(const Message& message) const {
    return forScreen(words::inWords(message, styleOf(m_units, m_zone)));
}

QString Speech::say(const Error& error) const {
    return forScreen(words::inWords(error, styleOf(m_units, m_zone)));
}

}  // namespace treadwell::fill
