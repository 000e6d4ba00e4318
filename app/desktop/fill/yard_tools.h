#pragma once

#include "app/desktop/settings/appearance.h"

#include <QWidget>
#include <optional>

class QPushButton;

namespace treadwell::fill {

/// Below the trucks: the day's loads, loads to catch up with, a machine that has been hired, something that
/// happened, and a pause.
class YardTools final : public QWidget {
    Q_OBJECT

  public:
    explicit YardTools(const settings::Appearance& appearance, QWidget* parent = nullptr);

    /// For how long the deliveries stand still; none while they go on.
    void setPaused(const std::optional<QString>& since);
    void setListShown(bool shown);

  signals:
    void listTouched(bool shown);
    void catchUpTouched();
    void hireTouched();
    void pauseTouched();

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void retranslate();

    const settings::Appearance& m_appearance;
    std::optional<QString> m_paused;
    QPushButton* m_list;
    QPushButton* m_catchUp;
    QPushButton* m_hire;
    QPushButton* m_pause;
};

}  // namespace treadwell::fill
