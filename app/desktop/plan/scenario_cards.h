#pragma once

#include "app/desktop/fill/say.h"
#include "app/desktop/plan/plan_work.h"
#include "app/desktop/settings/appearance.h"

#include <QScrollArea>

namespace treadwell::plan_page {

/// Plans side by side, each with what sets it apart from the first.
class ScenarioCards final : public QScrollArea {
    Q_OBJECT

  public:
    explicit ScenarioCards(const settings::Appearance& appearance, QWidget* parent = nullptr);

    /// `current` is the one that is looked at; `adopted` the name of the season's plan, or nothing.
    void setCards(const Compared& compared, std::size_t current, const QString& adopted,
                  const fill::Speech& speech, bool writable);
    /// All that stands on a card.
    [[nodiscard]] QString textOf(std::size_t card) const;

  signals:
    void chosen(std::size_t scenario);
    void adoptRequested(std::size_t scenario);

  private:
    QWidget* cardOf(const Compared& compared, std::size_t index, const fill::Speech& speech);

    const settings::Appearance& m_appearance;
    QStringList m_texts;
    std::size_t m_current = 0;
    QString m_adopted;
    bool m_writable = false;
};

}  // namespace treadwell::plan_page
