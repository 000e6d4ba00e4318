#pragma once

#include <QLocale>
#include <QString>
#include <QTranslator>
#include <array>
#include <memory>
#include <vector>

namespace treadwell {

/// The languages of the screen, by the name that settings and the command line use.
inline constexpr std::array kLanguages{"en", "pt_BR"};
[[nodiscard]] bool isLanguage(const QString& name);

/// The language of all texts; changing it reaches every widget as a LanguageChange, without a restart.
class Language final {
  public:
    Language() = default;
    Language(const Language&) = delete;
    Language& operator=(const Language&) = delete;
    ~Language();

    /// False for a name that is not in kLanguages; the language then stays.
    bool set(const QString& name);
    [[nodiscard]] const QString& name() const noexcept { return m_name; }
    [[nodiscard]] QLocale locale() const { return QLocale{m_name}; }

  private:
    void remove();

    QString m_name = QStringLiteral("en");
    std::vector<std::unique_ptr<QTranslator>> m_translators;
};

/// The closest to what the machine is set to.
[[nodiscard]] QString systemLanguage();

}  // namespace treadwell
