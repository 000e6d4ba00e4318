#pragma once

#include "app/desktop/settings/appearance.h"

#include <QFrame>
#include <cstdint>
#include <vector>

class QLabel;
class QPushButton;

namespace treadwell::widgets {

enum class Weight : std::uint8_t { note, caution, error };

/// What has to be told without stopping anybody: the weightiest and newest message, how often it came, and
/// how many wait behind it. Hidden while there is none; a message goes only when it is put away.
class MessageBar final : public QFrame {
    Q_OBJECT

  public:
    explicit MessageBar(const settings::Appearance& appearance, QWidget* parent = nullptr);

    /// The same text of the same weight is counted, not repeated.
    void post(Weight weight, const QString& text);
    [[nodiscard]] int waiting() const noexcept { return static_cast<int>(m_messages.size()); }
    [[nodiscard]] QString shownText() const;

  protected:
    void changeEvent(QEvent* event) override;

  private:
    struct Message {
        Weight weight;
        QString text;
        int count;
    };
    void putAway();
    void refresh();

    const settings::Appearance& m_appearance;
    std::vector<Message> m_messages;  ///< the one shown stands last
    QLabel* m_mark;
    QLabel* m_text;
    QLabel* m_rest;
    QPushButton* m_putAway;
};

}  // namespace treadwell::widgets
