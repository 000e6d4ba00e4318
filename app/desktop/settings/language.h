#pragma once

#include <QLocale>
#include <QTranslator>
#include <array>

namespace treadwell::settings {

/// The languages of the screen, by the name that settings and the command line use.
inline constexpr std::array kLanguages{"en", "pt_BR"};
[[nodiscard]] bool isLanguage(const QString& name);
/// The closest to what the machine is set to.
[[nodiscard]] QString systemLanguage();

/// The language of all texts. For the thread of the screens alone, and to be held as long as there is an
/// application.
class Language final {
  public:
    Language() = default;
    Language(const Language&) = delete;
    Language& operator=(const Language&) = delete;
    ~Language();

    /// Every widget is told by a LanguageChange event. False for a name that is not in kLanguages; the
    /// language then stays.
    bool set(const QString& name);
    [[nodiscard]] const QString& name() const noexcept { return m_name; }
    [[nodiscard]] QLocale locale() const { return QLocale{m_name}; }

  private:
    void remove();

    QString m_name = QStringLiteral("en");
    QTranslator m_screens;  ///< what stands in tr(); the English file holds the forms of plurals
    QTranslator m_phrases;  ///< the words of the core's codes, whose English is in the program itself
    QTranslator m_qt;       ///< Qt's own dialogs
};

}  // namespace treadwell::settings
