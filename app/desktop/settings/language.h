#pragma once

#include <QLocale>
#include <QTranslator>

namespace treadwell::settings {

/// The language of the screens. English and Brazilian Portuguese are complete; any other locale reads
/// English. For the thread of the screens alone, and to be held as long as there is an application.
class Language final {
  public:
    Language() = default;
    Language(const Language&) = delete;
    Language& operator=(const Language&) = delete;
    ~Language();

    /// Every widget is told by a LanguageChange event.
    void use(const QLocale& locale);

  private:
    void remove();

    QTranslator m_screens;  ///< what stands in tr()
    QTranslator m_phrases;  ///< the words of the core's codes
    QTranslator m_qt;       ///< Qt's own dialogs
};

}  // namespace treadwell::settings
