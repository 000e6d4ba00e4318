#pragma once

#include "app/desktop/settings/appearance.h"

#include <QFrame>
#include <optional>

class QGridLayout;
class QLabel;
class QPushButton;

namespace treadwell::widgets {

/// One sentence of advice with effect, cost and confidence, taken or declined at a touch. Without advice it
/// says so and keeps its place, so that nothing below it jumps.
class AdviceLine final : public QFrame {
    Q_OBJECT

  public:
    explicit AdviceLine(const settings::Appearance& appearance, QWidget* parent = nullptr);

    /// One sentence that can be accepted or declined.
    void setAdvice(const QString& sentence);
    /// Nothing to decide; why, where that is known.
    void setSilent(const std::optional<QString>& why);
    /// What is being tried and what it would come to; `ready` to be carried out.
    void setTrial(const QString& sentence, bool ready);

  signals:
    void accepted();
    void declined();
    /// Something is to be tried, or no longer.
    void trialAsked(bool trying);

  protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void refresh();
    /// Beside the sentence, or where that leaves it too little room, below it.
    void placeButtons();

    const settings::Appearance& m_appearance;
    std::optional<QString> m_text;
    bool m_toDecide = false;
    bool m_trying = false;
    std::optional<bool> m_below;  ///< as the buttons were placed last
    QLabel* m_sentence;
    QGridLayout* m_grid;
    QPushButton* m_try;
    QPushButton* m_accept;
    QPushButton* m_decline;
};

}  // namespace treadwell::widgets
