#include "app/desktop/settings/display_units.h"

#include "app/words/words.h"

#include <QCoreApplication>
#include <QStringList>
#include <cmath>

namespace treadwell::settings {

namespace {

// The words within a symbol; the letters of the SI are the same in every language.
QString wordOf(const QString& token) {
    if (token == u"DM") {
        //: dry matter, as in "kg DM/m³"
        return QCoreApplication::translate("DisplayUnits", "DM");
    }
    if (token == u"ton") {
        //: the short ton of 2,000 lb, as in "ton/h"; never to be taken for the tonne
        return QCoreApplication::translate("DisplayUnits", "ton");
    }
    if (token == u"per") {
        //: between two units, as in "kg per t/h"
        return QCoreApplication::translate("DisplayUnits", "per");
    }
    return token;
}

QString withWords(const QString& symbol) {
    QString text;
    QString token;
    for (const QChar letter : symbol) {
        if (letter.isLetter()) {
            token += letter;
            continue;
        }
        text += wordOf(token);
        token.clear();
        if (letter == u'2') {
            text += QChar{u'²'};
        } else if (letter == u'3') {
            text += QChar{u'³'};
        } else {
            text += letter;
        }
    }
    return text + wordOf(token);
}

}  // namespace

DisplayUnits::DisplayUnits(UnitSystem system, const QLocale& locale) : m_system{system}, m_locale{locale} {
    m_locale.setNumberOptions(m_locale.numberOptions() | QLocale::OmitGroupSeparator);
}

QString DisplayUnits::text(Amount amount) const {
    return numberText(amount) + suffix(amount.dimension);
}

QString DisplayUnits::rangeText(Amount low, Amount high) const {
    const QString from = numberText(low);
    if (low.si >= 0.0) return from + QChar{u'–'} + text(high);
    return QCoreApplication::translate("DisplayUnits", "%1 to %2", "a range with a minus in it")
        .arg(from, text(high));
}

QString DisplayUnits::numberText(Amount amount) const {
    const double value = shown(amount);
    if (!std::isfinite(value)) return QString{u'–'};
    const QString text = m_locale.toString(value, 'f', decimals(amount.dimension));
    const QString zero = m_locale.toString(0.0, 'f', decimals(amount.dimension));
    return text == m_locale.negativeSign() + zero ? zero : text;
}

QString DisplayUnits::symbol(Dimension dimension) const {
    const std::string_view symbol = unitOf(dimension, m_system).symbol;
    return withWords(QString::fromUtf8(symbol.data(), static_cast<qsizetype>(symbol.size())));
}

QString DisplayUnits::suffix(Dimension dimension) const {
    const QString unit = symbol(dimension);
    return words::standsApart(unitOf(dimension, m_system).symbol) ? QChar::Nbsp + unit : unit;
}

QString DisplayUnits::chanceText(Chance chance) const {
    if (chance.percent() < 0.5) {
        return QCoreApplication::translate("DisplayUnits", "under %1", "a chance")
            .arg(text(Chance::fromPercent(1)));
    }
    if (chance.percent() >= 99.5) {
        return QCoreApplication::translate("DisplayUnits", "over %1", "a chance")
            .arg(text(Chance::fromPercent(99)));
    }
    return text(chance);
}

double DisplayUnits::shown(Amount amount) const {
    return unitOf(amount.dimension, m_system).fromSi(amount.si);
}

Amount DisplayUnits::fromShown(Dimension dimension, double value) const {
    return {dimension, unitOf(dimension, m_system).toSi(value)};
}

Amount DisplayUnits::rounded(Amount amount) const {
    const double power = std::pow(10.0, decimals(amount.dimension));
    return fromShown(amount.dimension, std::round(shown(amount) * power) / power);
}

int DisplayUnits::decimals(Dimension dimension) const {
    return unitOf(dimension, m_system).decimals;
}

}  // namespace treadwell::settings
