#include "app/desktop/language.h"

#include <QCoreApplication>
#include <algorithm>

namespace treadwell {

bool isLanguage(const QString& name) {
    return std::any_of(kLanguages.begin(), kLanguages.end(),
                       [&name](const char* known) { return name == QLatin1String{known}; });
}

Language::~Language() {
    remove();
}

void Language::remove() {
    for (const auto& translator : m_translators) QCoreApplication::removeTranslator(translator.get());
    m_translators.clear();
}

bool Language::set(const QString& name) {
    if (!isLanguage(name)) return false;
    remove();
    m_name = name;
    // The phrases of the core have their own file; its English is in the program itself.
    for (const char* part : {"screens", "treadwell"}) {
        auto translator = std::make_unique<QTranslator>();
        const QString file = QStringLiteral(":/translations/%1_%2.qm").arg(QLatin1String{part}, name);
        if (!translator->load(file)) continue;
        QCoreApplication::installTranslator(translator.get());
        m_translators.push_back(std::move(translator));
    }
    return true;
}

QString systemLanguage() {
    return QLocale::system().language() == QLocale::Portuguese ? QStringLiteral("pt_BR")
                                                               : QStringLiteral("en");
}

}  // namespace treadwell
