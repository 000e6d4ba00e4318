#include "app/desktop/fill/say.h"

#include "app/words/words.h"

#include <QCoreApplication>

namespace treadwell::fill {

namespace {

words::Style styleOf(const settings::DisplayUnits& units, const FarmZone& zone) {
    return {.units = units.system(),
            .decimalSign = units.locale().decimalPoint() == u"," ? ',' : '.',
            .translate =
                [](const char* context, const char* english) {
                    return QCoreApplication::translate(context, english).toStdString();
                },
            .zone = zone};
}

}  // namespace

QString Speech::say(const Message& message) const {
    return QString::fromStdString(words::inWords(message, styleOf(m_units, m_zone)));
}

QString Speech::say(const Error& error) const {
    return QString::fromStdString(words::inWords(error, styleOf(m_units, m_zone)));
}

}  // namespace treadwell::fill
