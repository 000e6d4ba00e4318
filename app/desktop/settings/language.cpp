#include "app/desktop/settings/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <algorithm>

namespace treadwell::settings {

bool isLanguage(const QString& name) {
    return std::any_of(kLanguages.begin(), kLanguages.end(),
                       [&name](const char* known) { return name == QLatin1String{known}; });
}

QString systemLanguage() {
    return QLocale::system().language() == QLocale::Portuguese ? QStringLiteral("pt_BR")
                                                               : QStringLiteral("en");
}

Language::~Language() {
    remove();
}

void Language::remove() {
    for (QTranslator* translator : {&m_screens, &m_phrases, &m_qt}) {
        QCoreApplication::removeTranslator(translator);
    }
}

bool Language::set(const QString& name) {
    if (!isLanguage(name)) return false;
    remove();
    m_name = name;
    const QString folder = QStringLiteral(":/translations");
    const auto install = [&name](QTranslator& translator, const char* file, const QString& place) {
        if (translator.load(QLatin1String{file} + u'_' + name, place)) {
            QCoreApplication::installTranslator(&translator);
        }
    };
    install(m_screens, "screens", folder);
    install(m_phrases, "treadwell", folder);
    install(m_qt, "qtbase", QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    return true;
}

}  // namespace treadwell::settings
