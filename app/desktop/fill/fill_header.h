#pragma once

#include "app/desktop/fill/say.h"
#include "app/desktop/widgets/message_bar.h"
#include "core/season/season.h"

#include <QWidget>

class QHBoxLayout;
class QLabel;
class QPushButton;

namespace treadwell::widgets {
class SwitchRow;
}

namespace treadwell::fill {

/// The top of the Fill page: which silo is filled and from which field, what has to be told, the time, who
/// holds the tablet, the words for the radio and the language. In two rows where one would be too wide.
class FillHeader final : public QWidget {
    Q_OBJECT

  public:
    explicit FillHeader(const settings::Appearance& appearance, QWidget* parent = nullptr);

    /// As wide as the wider of two rows.
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] widgets::MessageBar& messages() noexcept { return *m_messages; }
    /// The farm's silos and fields, each field with its dry matter as last measured by `now`.
    void setFarm(const season::Season& season, Instant now);
    void selectSilo(farm::SiloId silo);
    void selectField(std::optional<farm::FieldId> field);
    [[nodiscard]] std::optional<farm::FieldId> field() const;
    void nextSilo();
    void nextField();
    void setClock(const QString& time);
    /// None where nobody has taken the tablet. `onShift`: for so long.
    void setHolder(const std::optional<QString>& name, const std::optional<Seconds>& onShift);

  signals:
    void siloChosen(treadwell::farm::SiloId silo);
    void tabletTouched();
    void incidentTouched();
    void radioTouched();
    void languageTouched();

  protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void retranslate();
    void place();
    [[nodiscard]] int widthOf(std::initializer_list<QWidget*> widgets) const;

    const settings::Appearance& m_appearance;
    QHBoxLayout* m_first;
    QHBoxLayout* m_second;
    std::optional<bool> m_inTwo;
    std::optional<QString> m_holder;
    std::optional<std::chrono::minutes> m_onShift;
    widgets::SwitchRow* m_silos;
    widgets::SwitchRow* m_fields;
    widgets::MessageBar* m_messages;
    QLabel* m_clock;
    QPushButton* m_incident;
    QPushButton* m_radio;
    QPushButton* m_tablet;
    QPushButton* m_language;
};

}  // namespace treadwell::fill
