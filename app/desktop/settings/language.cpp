#include "app/desktop/settings/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>

namespace treadwell::settings {

namespace {

bool isPortuguese(const QLocale& locale) {
    return locale.language() == QLocale::Portuguese;
}

}  // namespace

Language::~Language() {
    remove();
}

void Language::remove() {
    for (QTranslator* translator : {&m_screens, &m_phrases, &m_qt}) {
        QCoreApplication::removeTranslator(translator);
    }
}

void Language::use(const QLocale& locale) {
    remove();
    const QString folder = QStringLiteral(":/translations");
    // The English file holds the forms of plurals, so it is loaded too.
    const QString name = isPortuguese(locale) ? QStringLiteral("pt_BR") : QStringLiteral("en");
    if (m_screens.load(QStringLiteral("screens_") + name, folder)) {
        QCoreApplication::installTranslator(&m_screens);
    }
    if (!isPortuguese(locale)) return;
    if (m_phrases.load(QStringLiteral("treadwell_pt_BR"), folder)) {
        QCoreApplication::installTranslator(&m_phrases);
    }
    if (m_qt.load(QStringLiteral("qtbase_pt_BR"), QLibraryInfo::path(QLibraryInfo::TranslationsPath))) {
        QCoreApplication::installTranslator(&m_qt);
    }
}

}  // namespace treadwell::settings
