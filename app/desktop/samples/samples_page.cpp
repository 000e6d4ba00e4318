#include "app/desktop/samples/samples_page.h"

#include "app/desktop/fill/id_box.h"
#include "app/desktop/samples/dry_matter_form.h"
#include "app/desktop/samples/kernel_form.h"
#include "app/desktop/samples/lines_panel.h"
#include "app/desktop/samples/order_panel.h"
#include "app/desktop/samples/ranges_dialog.h"
#include "app/desktop/samples/scale_row.h"
#include "app/desktop/samples/setting_form.h"
#include "app/desktop/samples/sieve_form.h"
#include "app/desktop/samples/visit_form.h"
#include "app/desktop/widgets/choice_box.h"
#include "app/desktop/widgets/page_change.h"
#include "core/density/sample_change.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QScrollArea>
#include <QShortcut>
#include <QSignalBlocker>
#include <QTabWidget>
#include <utility>

namespace treadwell::samples_page {

namespace {

constexpr std::chrono::seconds kTick{30};
constexpr int kFormWidth = 400;  // pixels
constexpr int kWidthOfTwo = 900;
constexpr double kStackedFormMillimetres = 100;

const std::array kTabKeys{Qt::Key_F2, Qt::Key_F3, Qt::Key_F4, Qt::Key_F5, Qt::Key_F6, Qt::Key_F7};

}  // namespace

SamplesPage::SamplesPage(desk::SeasonDesk& desk, const settings::Appearance& look, QWidget* parent)
    : QWidget{parent},
      m_desk{desk},
      m_appearance{look},
      m_fieldTitle{new QLabel},
      m_field{new widgets::ChoiceBox{look}},
      m_messages{new widgets::MessageBar{look}},
      m_tabs{new QTabWidget},
      m_scale{new ScaleRow{look}},
      m_dryForm{new DryMatterForm{look}},
      m_sieveForm{new SieveForm{look}},
      m_forms{m_dryForm, m_sieveForm, new KernelForm{look}, new SettingForm{look}, new VisitForm{look}},
      m_dryChart{new plots::DryMatterChart{look}},
      m_sieveChart{new plots::SieveChart{look}},
      m_order{new OrderPanel{look}},
      m_changed{new LinesPanel{look, QStringLiteral("changed")}},
      m_dryLines{new LinesPanel{look, QStringLiteral("dryMatterLines")}},
      m_chopLines{new LinesPanel{look, QStringLiteral("chopLines")}},
      m_kernelLines{new LinesPanel{look, QStringLiteral("kernelLines")}},
      m_settingLines{new LinesPanel{look, QStringLiteral("settingLines")}},
      m_fieldLines{new LinesPanel{look, QStringLiteral("fieldLines")}} {
    auto* layout = new QVBoxLayout{this};
    auto* page = new QWidget;
    m_columns = new QBoxLayout{QBoxLayout::LeftToRight, page};
    m_columns->setContentsMargins(0, 0, 0, 0);
    m_side = makeForms();
    m_columns->addWidget(m_side);
    m_columns->addWidget(makeViews(), 1);
    m_page = widgets::scrolled(page);
    layout->addWidget(m_messages);
    layout->addWidget(m_page, 1);
    place();
    for (Form* form : m_forms) {
        connect(form, &Form::recorded, this, &SamplesPage::record);
    }
    connect(m_sieveForm, &SieveForm::edited, this, [this](const std::optional<samples::SieveParts>& parts) {
        if (parts) m_sieveChart->setView({parts, rangesFor(*m_desk.season(), chosenField(), m_desk.now())});
    });
    connect(m_sieveForm, &SieveForm::rangesAsked, this, &SamplesPage::askRanges);
    for (std::size_t tab = 0; tab < kTabKeys.size(); ++tab) {
        auto* key = new QShortcut{QKeySequence{kTabKeys[tab]}, this};
        connect(key, &QShortcut::activated, this,
                [this, tab] { m_tabs->setCurrentIndex(static_cast<int>(tab)); });
    }
    connect(m_scale, &ScaleRow::taken, this, [this](AsFedMass weight) {
        const auto tab = static_cast<std::size_t>(m_tabs->currentIndex());
        if (tab < m_forms.size()) return m_forms[tab]->takeWeight(weight);
        m_messages->post(widgets::Weight::note, tr("Nothing is weighed here."));
    });
    connect(new QShortcut{QKeySequence{Qt::Key_F8}, this}, &QShortcut::activated, m_scale, &ScaleRow::take);
    connect(m_field, &QComboBox::currentIndexChanged, this, &SamplesPage::refresh);
    connect(&desk, &desk::SeasonDesk::committed, this, &SamplesPage::settle);
    connect(&desk, &desk::SeasonDesk::failed, this, &SamplesPage::fail);
    connect(&desk, &desk::SeasonDesk::changed, this, &SamplesPage::refresh);
    connect(&look, &settings::Appearance::changed, this, &SamplesPage::refresh);
    connect(&m_tick, &QTimer::timeout, this, &SamplesPage::refresh);
    m_tick.start(kTick);
    m_changed->hide();
    retranslate();
}

QWidget* SamplesPage::makeForms() {
    auto* forms = new QWidget;
    auto* layout = new QVBoxLayout{forms};
    layout->setContentsMargins(0, 0, 0, 0);
    auto* field = new QHBoxLayout;
    field->addWidget(m_fieldTitle);
    field->addWidget(m_field, 1);
    m_fieldTitle->setBuddy(m_field);
    m_field->setObjectName(QStringLiteral("sampleField"));
    m_field->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    m_tabs->setObjectName(QStringLiteral("sampleTabs"));
    m_tabs->setUsesScrollButtons(false);
    const auto addTab = [this](QWidget* form) {
        QScrollArea* scroll = widgets::scrolled(form);
        scroll->setFocusPolicy(Qt::NoFocus);  // its fields have the focus, and bring themselves into sight
        m_tabs->addTab(scroll, QString{});
    };
    for (Form* form : m_forms) addTab(form);
    addTab(m_order);
    layout->addLayout(field);
    layout->addWidget(m_scale);
    layout->addWidget(m_tabs, 1);
    return forms;
}

QWidget* SamplesPage::makeViews() {
    auto* views = new QWidget;
    m_views = new QGridLayout{views};
    m_views->setColumnStretch(0, 1);
    return views;
}

/// What is said beside what is entered, each line beside its picture; with large letters on a small screen
/// all of it one below the other.
void SamplesPage::place() {
    const bool stacked = width() < kWidthOfTwo;
    if (std::exchange(m_stacked, stacked) == stacked) return;
    m_columns->setDirection(stacked ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_side->setMinimumWidth(stacked ? 0 : kFormWidth);
    m_side->setMaximumWidth(stacked ? QWIDGETSIZE_MAX : kFormWidth);
    m_tabs->setMinimumHeight(stacked ? m_appearance.pixels(kStackedFormMillimetres) : 0);
    while (QLayoutItem* item = m_views->takeAt(0)) delete item;
    const std::array<QWidget*, 6> paired{m_dryChart,  m_dryLines,    m_sieveChart,
                                         m_chopLines, m_kernelLines, m_settingLines};
    const int columns = stacked ? 1 : 2;
    m_views->addWidget(m_changed, 0, 0, 1, columns);
    int place = 0;
    for (QWidget* widget : paired) {
        m_views->addWidget(widget, 1 + place / columns, place % columns);
        ++place;
    }
    const int last = 1 + place / columns;
    m_views->addWidget(m_fieldLines, last, 0, 1, columns);
    m_views->setColumnStretch(1, stacked ? 0 : 1);
    for (int row = 0; row <= 1 + place; ++row) m_views->setRowStretch(row, row == last ? 1 : 0);
}

void SamplesPage::retranslate() {
    m_page->setAccessibleName(tr("What the samples say"));
    m_tabs->setAccessibleName(tr("What is entered"));
    m_fieldTitle->setText(tr("Field"));
    m_field->setAccessibleName(tr("Field"));
    const std::array names{tr("Dry"), tr("Chop"), tr("Kernels"), tr("Cut"), tr("Visit"), tr("Order")};
    for (std::size_t tab = 0; tab < names.size(); ++tab)
        m_tabs->setTabText(static_cast<int>(tab), names[tab]);
    m_changed->setTitle(tr("What the last sample changed"));
    m_dryLines->setTitle(tr("Dry matter"));
    m_chopLines->setTitle(tr("Chop"));
    m_kernelLines->setTitle(tr("Kernels"));
    m_settingLines->setTitle(tr("The harvester"));
    m_fieldLines->setTitle(tr("Standing fields"));
    m_fieldsOf = nullptr;
    refresh();
}

fill::Speech SamplesPage::speech() const {
    return {m_appearance.units(), m_desk.season()->zone()};
}

std::optional<farm::FieldId> SamplesPage::chosenField() const {
    return fill::chosenIn<farm::FieldId>(*m_field);
}

/// The choice goes on with the field of the last load until somebody chooses.
void SamplesPage::fillFields() {
    if (m_fieldsOf == m_desk.season()) return;
    const bool first = m_field->count() == 0;
    const QString chosen = m_field->currentData().toString();
    m_fieldsOf = m_desk.season();
    const QSignalBlocker quiet{m_field};
    m_field->clear();
    m_field->addItem(tr("any, or none named"));
    for (const auto& [id, field] : m_fieldsOf->farm().fields)
        m_field->addItem(QString::fromStdString(field.name), QString::fromStdString(id.value.text()));
    QString wanted = chosen;
    for (const auto& day : m_fieldsOf->days()) {
        for (const season::LoadTipped& load : day->loads) {
            if (first && load.load.field && load.at <= m_desk.now())
                wanted = QString::fromStdString(load.load.field->value.text());
        }
    }
    m_field->setCurrentIndex(std::max(0, m_field->findData(wanted)));
}

void SamplesPage::refresh() {
    if (!isVisible()) return;
    fillFields();
    const auto field = chosenField();
    const SamplesView view = samplesAt(*m_desk.season(), field, m_desk.now(), speech());
    for (Form* form : m_forms) {
        form->setField(field);
        form->setEnabled(m_desk.standing().writable);
    }
    m_dryForm->setMeterBias(view.meter);
    m_dryForm->setLoads(loadsToSample(*m_desk.season(), m_desk.now(), speech()));
    m_dryChart->setView(view.chart);
    m_sieveChart->setView(view.sieve);
    m_dryLines->setLines(view.dryMatter);
    m_chopLines->setLines(view.chop);
    m_kernelLines->setLines(view.kernels);
    m_settingLines->setLines(view.setting);
    m_fieldLines->setLines(view.fields);
    m_order->follow(*m_desk.season(), m_desk.now());
}

void SamplesPage::record(const entries::Body& body) {
    desk::SeasonPointer before = m_desk.season();
    const auto* sample = std::get_if<entries::DryMatterSample>(&body);
    const season::FactPointer load =
        sample != nullptr && sample->load ? before->fact(*sample->load) : nullptr;
    // What a load was sampled for was so when it came, however long the drying took.
    const auto proposal =
        load == nullptr ? m_desk.touch(body) : session::Proposal{body, load->happened(), {}};
    m_pending.emplace(m_desk.propose(std::vector{proposal}), Pending{body, std::move(before)});
}

void SamplesPage::askRanges() {
    const desk::SeasonPointer season = m_desk.season();
    const Instant now = m_desk.now();
    const auto setting = season::chopInForce(*season, now);
    auto* sheet = new RangesDialog{m_appearance, season->farm().cropOf(chosenField()),
                                   setting ? setting->processor : samples::Processor::rolls,
                                   [season, now](crop::Crop crop, samples::Processor processor) {
                                       return season::chopRangesFor(*season, crop, processor, now);
                                   },
                                   this};
    connect(sheet, &RangesDialog::recorded, this,
            [this](const samples::ChopRanges& ranges) { record(entries::ChopRangesSet{ranges}); });
    sheet->open();
}

void SamplesPage::settle(desk::Ticket ticket) {
    const auto pending = m_pending.find(ticket);
    if (pending != m_pending.end()) {
        if (const auto* sample = std::get_if<entries::DryMatterSample>(&pending->second.body))
            tellChange(*pending->second.before, *sample);
        m_pending.erase(pending);
    }
    refresh();
}

void SamplesPage::tellChange(const season::Season& before, const entries::DryMatterSample& sample) {
    const season::Season& after = *m_desk.season();
    const auto change = density::changeBySample(before, after, sample.field, m_desk.now());
    Lines lines;
    for (const Message& message : density::messagesOf(change, after.farm().rules))
        lines.push_back({speech().say(message)});
    m_changed->setLines(lines);
    m_changed->show();
}

void SamplesPage::fail(desk::Ticket ticket, const Error& error) {
    if (m_pending.erase(ticket) == 0) return;
    m_messages->post(widgets::Weight::error, tr("The sample is not recorded: %1").arg(speech().say(error)));
}

void SamplesPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    place();
}

void SamplesPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
}

void SamplesPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

std::vector<std::pair<QString, QString>> samplesKeys() {
    return {
        {QStringLiteral("F2 … F7"),
         SamplesPage::tr("Dry matter, chop, kernels, the cut, a visit to a field, their order")},
        {QStringLiteral("F8"), SamplesPage::tr("Take the weight from the scale")},
        {SamplesPage::tr("Enter"), SamplesPage::tr("The next field of the form; at the last one record")}};
}

}  // namespace treadwell::samples_page
