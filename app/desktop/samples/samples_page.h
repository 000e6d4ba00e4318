#pragma once

#include "app/desktop/desk/season_desk.h"
#include "app/desktop/samples/samples_presenter.h"
#include "app/desktop/widgets/message_bar.h"

#include <QTimer>
#include <QWidget>
#include <map>

class QBoxLayout;
class QComboBox;
class QGridLayout;
class QLabel;
class QTabWidget;

namespace treadwell::samples_page {

class DryMatterForm;
class Form;
class LinesPanel;
class OrderPanel;
class ScaleRow;
class SieveForm;

/// The page of the folding table: samples of dry matter, chop and kernels, the harvester's setting and the
/// standing fields, entered on the left, and on the right what they say.
class SamplesPage final : public QWidget {
    Q_OBJECT

  public:
    SamplesPage(desk::SeasonDesk& desk, const settings::Appearance& appearance, QWidget* parent = nullptr);

    /// Reads season and clock anew.
    void refresh();

  protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

  private:
    [[nodiscard]] QWidget* makeForms();
    [[nodiscard]] QWidget* makeViews();
    void place();
    void askRanges();
    void retranslate();
    void fillFields();
    [[nodiscard]] fill::Speech speech() const;
    [[nodiscard]] std::optional<farm::FieldId> chosenField() const;
    void record(const entries::Body& body);
    void settle(desk::Ticket ticket);
    void fail(desk::Ticket ticket, const Error& error);
    void tellChange(const season::Season& before, const entries::DryMatterSample& sample);

    struct Pending {
        entries::Body body;
        desk::SeasonPointer before;
    };

    desk::SeasonDesk& m_desk;
    const settings::Appearance& m_appearance;
    std::map<desk::Ticket, Pending> m_pending;
    desk::SeasonPointer m_fieldsOf;
    QTimer m_tick;
    QLabel* m_fieldTitle;
    QComboBox* m_field;
    widgets::MessageBar* m_messages;
    QTabWidget* m_tabs;
    ScaleRow* m_scale;
    std::optional<bool> m_stacked;  ///< as forms and views were placed last
    QWidget* m_page = nullptr;
    QWidget* m_side = nullptr;  ///< the forms
    QBoxLayout* m_columns = nullptr;
    QGridLayout* m_views = nullptr;
    DryMatterForm* m_dryForm;
    SieveForm* m_sieveForm;
    std::vector<Form*> m_forms;  ///< in the order of the tabs
    plots::DryMatterChart* m_dryChart;
    plots::SieveChart* m_sieveChart;
    OrderPanel* m_order;
    LinesPanel* m_changed;
    LinesPanel* m_dryLines;
    LinesPanel* m_chopLines;
    LinesPanel* m_kernelLines;
    LinesPanel* m_settingLines;
    LinesPanel* m_fieldLines;
};

/// The keys of the Samples page and what they do, for the list in the menu.
[[nodiscard]] std::vector<std::pair<QString, QString>> samplesKeys();

}  // namespace treadwell::samples_page
