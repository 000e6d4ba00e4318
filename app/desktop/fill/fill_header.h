#pragma once

#include "app/desktop/fill/say.h"
#include "app/desktop/widgets/message_bar.h"
#include "core/season/season.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace treadwell::widgets {
class SwitchRow;
}

namespace treadwell::fill {

/// The top of the Fill page: which silo is filled and from which field, what has to be told, the time, who
/// holds the tablet, the words for the radio and the language.
class FillHeader final : public QWidget {
    Q_OBJECT

  public:
    explicit FillHeader(const settings::Appearance& appearance, QWidget* parent = nullptr);

    [[nodiscard]] widgets::MessageBar& messages() noexcept { return *m_messages; }
    /// The farm's silos and fields, each field with its dry matter as last measured by `now`.
    void setFarm(const season::Season& season, Instant now);
    void selectSilo(farm::SiloId silo);
    void selectField(std::optional<farm::FieldId> field);
    [[nodiscard]] std::optional<farm::FieldId> field() const;
    void nextSilo();
    void nextField();
    void setClock(const QString& time);
    /// None where nobody has taken the tablet.
    void setHolder(const std::optional<QString>& name);

  signals:
    void siloChosen(treadwell::farm::SiloId silo);
    void tabletTouched();
    void radioTouched();
    void languageTouched();

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void retranslate();

    const settings::Appearance& m_appearance;
    std::optional<QString> m_holder;
    widgets::SwitchRow* m_silos;
    widgets::SwitchRow* m_fields;
    widgets::MessageBar* m_messages;
    QLabel* m_clock;
    QPushButton* m_radio;
    QPushButton* m_tablet;
    QPushButton* m_language;
};

}  // namespace treadwell::fill
