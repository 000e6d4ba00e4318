#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/plan/sealing_list.h"

#include <QFrame>

class QLabel;
class QVBoxLayout;

namespace treadwell::plan_page {

/// A step of sealing as it is shown.
struct SealRow {
    plan::SealTask task;
    QString text;  ///< `Long bunker: side sheets, 420 m², by 15/09/26`
    QString done;  ///< when, or how much of it is; empty before

    [[nodiscard]] bool isDone() const { return !(task.done < Share::fromPercent(100)); }
};

/// The steps of sealing in order of filling, with a button for each that says it is done now.
class SealingPanel final : public QFrame {
    Q_OBJECT

  public:
    explicit SealingPanel(const settings::Appearance& appearance, QWidget* parent = nullptr);

    void setTitle(const QString& title);
    void setRows(const std::vector<SealRow>& rows, bool writable);

  signals:
    void doneRequested(const treadwell::plan::SealTask& task);

  private:
    const settings::Appearance& m_appearance;
    QLabel* m_title;
    QVBoxLayout* m_rows;
};

}  // namespace treadwell::plan_page
