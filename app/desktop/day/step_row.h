#pragma once

#include "app/desktop/day/day_presenter.h"
#include "app/desktop/settings/appearance.h"

#include <QFrame>

class QLabel;
class QPushButton;
class QTimeEdit;
class QVBoxLayout;

namespace treadwell::widgets {
class QuantitySpinBox;
}

namespace treadwell::day_page {

/// What the answers are made from.
struct StepContext {
    const season::Season& season;
    const season::Day& day;
    Instant happened;  ///< when the day would be closed
};

/// One point of the closing walk: the question, what answers it, and a button that leaves it open on purpose.
class StepRow final : public QFrame {
    Q_OBJECT

  public:
    StepRow(const settings::Appearance& appearance, Step step, const StepContext& context,
            QWidget* parent = nullptr);

    [[nodiscard]] const Step& step() const noexcept { return m_step; }
    [[nodiscard]] bool isLeftOpen() const;
    void setQuestion(const QString& question);

  signals:
    void answered(const std::vector<treadwell::session::Proposal>& proposals);
    void refused(const QString& why);
    void leftOpen(bool open);

  private:
    QTimeEdit* makeTime(const StepContext& context);
    void addTime(const StepContext& context, const QString& text,
                 const std::function<session::Proposal(Instant)>& make);
    void addHeights(const StepContext& context);
    void addSample(const StepContext& context);
    void addLayer(Instant happened);
    void addTractor(const StepContext& context);
    void addRows(Instant happened);
    /// Shown once it is asked for: it takes room.
    void addFolded(QWidget* entry, const QString& text);
    QPushButton* addButton(const QString& text, const char* name);

    const settings::Appearance& m_appearance;
    Step m_step;
    QVBoxLayout* m_layout;
    QLabel* m_question;
    QPushButton* m_leave;
};

}  // namespace treadwell::day_page
