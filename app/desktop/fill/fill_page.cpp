#include "app/desktop/fill/fill_page.h"

#include "app/desktop/fill/cautions.h"
#include "app/desktop/fill/clock_watch.h"
#include "app/desktop/fill/dry_matter_entry.h"
#include "app/desktop/fill/layer_entry.h"
#include "app/desktop/fill/view_strip.h"
#include "app/desktop/widgets/advice_line.h"
#include "app/desktop/widgets/caution_panel.h"
#include "app/desktop/widgets/choice_box.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QSignalBlocker>

namespace treadwell::fill {

namespace {

using namespace std::chrono_literals;

constexpr auto kTick = 5s;
constexpr int kSpacing = 4;
constexpr double kViewsMillimetres = 36;  // axis, labels and a curve that can still be read
constexpr double kTrucksMillimetres = 68;
constexpr double kSideMillimetres = 66;
constexpr double kNameMillimetres = 45;

template <class IdType>
QVariant toVariant(IdType id) {
    return QString::fromStdString(id.value.text());
}

}  // namespace

FillPage::FillPage(desk::SeasonDesk& desk, const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent},
      m_desk{desk},
      m_appearance{appearance},
      m_siloChoice{new widgets::ChoiceBox{appearance}},
      m_fieldChoice{new widgets::ChoiceBox{appearance}},
      m_siloTitle{new QLabel},
      m_fieldTitle{new QLabel},
      m_clock{new QLabel},
      m_authorTitle{new QLabel},
      m_author{new QLineEdit},
      m_messages{new widgets::MessageBar{appearance}},
      m_trucks{new widgets::TruckBoard{appearance}},
      m_adviceLine{new widgets::AdviceLine{appearance}},
      m_gauge{new widgets::DensityGauge{appearance}},
      m_pad{new widgets::PadPlan{appearance}},
      m_views{new ViewStrip{appearance}},
      m_dryMatter{new DryMatterEntry{appearance}},
      m_layer{new LayerEntry{appearance}},
      m_cautions{new widgets::CautionPanel{appearance}} {
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(8, 6, 8, 6);
    layout->setSpacing(6);
    layout->addWidget(makeHeader());
    layout->addWidget(makeColumns(), 1);
    connectWidgets();
    addShortcuts();
    retranslate();
    const auto& silos = season().farm().silos;
    if (!silos.empty()) selectSilo(silos.begin()->first);
    refresh();
}

QWidget* FillPage::makeHeader() {
    auto* header = new QWidget;
    auto* row = new QHBoxLayout{header};
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(m_siloTitle);
    row->addWidget(m_siloChoice);
    row->addWidget(m_fieldTitle);
    row->addWidget(m_fieldChoice);
    row->addWidget(m_messages, 1);
    QSizePolicy policy = m_messages->sizePolicy();
    policy.setRetainSizeWhenHidden(true);  // nothing moves when a message comes
    m_messages->setSizePolicy(policy);
    row->addWidget(m_clock);
    row->addSpacing(m_appearance.pixels(settings::kGapMillimetres));
    row->addWidget(m_authorTitle);
    row->addWidget(m_author);
    m_author->setObjectName(QStringLiteral("author"));
    m_siloChoice->setObjectName(QStringLiteral("silo"));
    m_fieldChoice->setObjectName(QStringLiteral("field"));
    m_author->setFixedWidth(m_appearance.pixels(kNameMillimetres));
    return header;
}

QWidget* FillPage::makeColumns() {
    auto* grid = new QGridLayout;
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(kSpacing);
    auto* middle = new QVBoxLayout;
    middle->addWidget(m_adviceLine);
    middle->addWidget(m_gauge, 1);
    middle->addWidget(m_pad);
    auto* side = new QVBoxLayout;
    side->addWidget(m_dryMatter);
    side->addWidget(m_layer);
    side->addWidget(m_cautions, 1);
    for (QVBoxLayout* column : {middle, side}) column->setSpacing(kSpacing);
    grid->addLayout(middle, 0, 0);
    grid->addLayout(side, 0, 1);
    grid->addWidget(m_views, 1, 0, 1, 2);
    grid->setColumnStretch(0, 1);
    grid->setRowStretch(0, 3);
    grid->setRowStretch(1, 1);
    m_views->setMinimumHeight(m_appearance.pixels(kViewsMillimetres));
    for (QWidget* widget : std::initializer_list<QWidget*>{m_dryMatter, m_layer, m_cautions}) {
        widget->setFixedWidth(m_appearance.pixels(kSideMillimetres));
    }
    auto* rest = new QWidget;
    rest->setLayout(grid);
    // With large letters, or many tractors on a small screen, what does not fit is scrolled to; the loads
    // stay.
    auto* scroll = new QScrollArea;
    scroll->setObjectName(QStringLiteral("rest"));
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidgetResizable(true);
    scroll->setWidget(rest);
    auto* columns = new QWidget;
    auto* row = new QHBoxLayout{columns};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(kSpacing);
    row->addWidget(m_trucks);
    row->addWidget(scroll, 1);
    m_trucks->setFixedWidth(m_appearance.pixels(kTrucksMillimetres));
    return columns;
}

void FillPage::connectWidgets() {
    connect(&m_desk, &desk::SeasonDesk::committed, this, &FillPage::settle);
    connect(&m_desk, &desk::SeasonDesk::failed, this, &FillPage::fail);
    connect(&m_appearance, &settings::Appearance::changed, this, &FillPage::refresh);
    connect(m_trucks, &widgets::TruckBoard::loadRequested, this, &FillPage::logLoad);
    connect(m_trucks, &widgets::TruckBoard::detailRequested, this, &FillPage::askDetails);
    connect(m_trucks, &widgets::TruckBoard::undoRequested, this, &FillPage::undo);
    connect(m_pad, &widgets::PadPlan::tractorMoved, this, &FillPage::moveTractor);
    connect(m_gauge, &widgets::DensityGauge::workingRequested, this, &FillPage::showWorking);
    connect(m_adviceLine, &widgets::AdviceLine::accepted, this,
            [this] { decide(entries::AdviceDecision::accepted); });
    connect(m_adviceLine, &widgets::AdviceLine::declined, this,
            [this] { decide(entries::AdviceDecision::declined); });
    connect(m_dryMatter, &DryMatterEntry::recorded, this, &FillPage::recordSample);
    connect(m_layer, &LayerEntry::recorded, this, &FillPage::recordLayer);
    for (const EntryPanel* panel : std::initializer_list<const EntryPanel*>{m_dryMatter, m_layer}) {
        connect(panel, &EntryPanel::refused, this,
                [this](const QString& why) { post(widgets::Weight::caution, why); });
    }
    connect(m_views, &ViewStrip::proposed, this, [this](const entries::Body& body, const QString& name) {
        propose(body, {.truck = std::nullopt, .move = std::nullopt, .name = [name] { return name; }});
    });
    connect(m_views, &ViewStrip::refused, this,
            [this](const QString& why) { post(widgets::Weight::caution, why); });
    m_later.setSingleShot(true);
    connect(&m_later, &QTimer::timeout, this, &FillPage::refreshMovement);
    connect(m_author, &QLineEdit::editingFinished, this, [this] {
        if (!m_author->isModified()) return;
        m_author->setModified(false);
        emit authorChanged(m_author->text().trimmed());
    });
    connect(m_siloChoice, &QComboBox::activated, this, [this](int index) {
        if (const auto id = Uuid::fromText(m_siloChoice->itemData(index).toString().toStdString())) {
            selectSilo(farm::SiloId{*id});
        }
    });
    connect(&m_tick, &QTimer::timeout, this, &FillPage::refresh);
    m_tick.start(kTick);
}

void FillPage::fillChoices() {
    const season::FarmBook& farm = season().farm();
    const QSignalBlocker quietSilo{m_siloChoice};
    const QVariant field = m_fieldChoice->currentData();
    m_siloChoice->clear();
    for (const auto& [id, silo] : farm.silos) {
        m_siloChoice->addItem(QString::fromStdString(silo.name), toVariant(id));
    }
    if (m_silo) m_siloChoice->setCurrentIndex(m_siloChoice->findData(toVariant(*m_silo)));
    m_fieldChoice->clear();
    m_fieldChoice->addItem(tr("not known"));
    for (const auto& [id, each] : farm.fields) {
        m_fieldChoice->addItem(QString::fromStdString(each.name), toVariant(id));
    }
    m_fieldChoice->setCurrentIndex(std::max(0, m_fieldChoice->findData(field)));
    for (QWidget* widget : std::initializer_list<QWidget*>{m_siloTitle, m_siloChoice}) {
        widget->setVisible(farm.silos.size() > 1);
    }
    for (QWidget* widget : std::initializer_list<QWidget*>{m_fieldTitle, m_fieldChoice}) {
        widget->setVisible(!farm.fields.empty());
    }
    m_choicesFor = m_desk.season();
}

void FillPage::selectSilo(farm::SiloId silo) {
    m_silo = silo;
    fillChoices();
    const Instant now = m_desk.now();
    const auto last = lastLoadAt(season(), silo, now);
    if (last && last->load.field) {
        m_fieldChoice->setCurrentIndex(std::max(0, m_fieldChoice->findData(toVariant(*last->load.field))));
    }
    m_advice = AdviceState{voiceAt(season(), silo, now), std::nullopt, std::nullopt};
    m_movement.forget();
    m_views->startAnew();
    refresh();
}

void FillPage::refresh() {
    const Instant now = m_desk.now();
    if (m_choicesFor != m_desk.season()) fillChoices();
    for (QWidget* widget : std::initializer_list<QWidget*>{m_siloChoice, m_fieldChoice, m_author}) {
        widget->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    }
    m_clock->setText(QString::fromStdString(clockText(season().zone(), now)));
    if (!m_silo) {
        if (season().farm().silos.empty()) return;
        selectSilo(season().farm().silos.begin()->first);
        return;
    }
    followClock(now);
    m_shown = m_readings.at(season(), *m_silo, now);
    const density::Readings& readings = m_shown;
    const Speech words = speech();
    m_gauge->setViews(
        {gaugeOf(readings.layer, words), gaugeOf(readings.today, words), gaugeOf(readings.silo, words)});
    refreshTrucks(now);
    refreshTractors(readings.rolling);
    refreshSamples(readings.rolling);
    refreshAdvice(readings);
    m_views->follow(m_desk.season(), readings);
    m_later.start(0);  // after what is new has been painted
    const auto cautions = cautionsAt(season(), readings);
    m_cautions->setCautions(cautionViews(cautions, readings, words));
    recordShown(cautions, now);
}

void FillPage::refreshTrucks(Instant now) {
    std::vector<widgets::TruckView> trucks = trucksAt(season(), now);
    for (widgets::TruckView& truck : trucks) {
        for (const auto& [ticket, pending] : m_pending) {
            if (pending.truck == truck.id) ++truck.pending;
        }
    }
    m_trucks->setTrucks(trucks);
    const auto last = lastLoadAt(season(), *m_silo, now);
    m_trucks->setUndo(last ? std::optional{loadName(*last, season().farm(), m_appearance.units())}
                           : std::nullopt);
}

void FillPage::refreshTractors(const season::Rolling& rolling) {
    std::vector<widgets::TractorView> tractors = tractorsAt(season(), rolling);
    for (widgets::TractorView& tractor : tractors) {
        for (const auto& [ticket, pending] : m_pending) {
            if (!pending.move || pending.move->first != tractor.id) continue;
            tractor.zone = pending.move->second.zone;
            tractor.share = pending.move->second.share;
            tractor.running = Seconds{0};
            tractor.pending = true;
        }
    }
    m_pad->setTractors(tractors);
}

void FillPage::refreshSamples(const season::Rolling& rolling) {
    const settings::DisplayUnits& units = m_appearance.units();
    const AgedReading dryMatter = dryMatterAt(rolling, season().farm().rules, units);
    m_dryMatter->setLast(dryMatter.text, dryMatter.overdue);
    m_layer->setLast(layerAt(rolling, units), !rolling.layer);
    const farm::SiteRules& rules = season().farm().rules;
    m_dryMatter->setSuggestion(rolling.lastSample ? rolling.lastSample->reading.dryMatter
                                                  : (rules.dryMatterLow + rules.dryMatterHigh) * 0.5);
    m_layer->setSuggestion(rolling.layer ? rolling.layer->what.thickness : density::kAssumedLayer);
}

void FillPage::refreshAdvice(const density::Readings& readings) {
    m_advice = adviceAt(season(), readings, m_advice.voice);
    const Instant now = readings.rolling.at;
    if (m_advice.said() == nullptr || isDecided(season(), *m_silo, m_advice.voice, now)) {
        m_adviceLine->setSilent(silenceOf(m_advice, readings, speech()));
        return;
    }
    m_adviceLine->setAdvice(*sentenceOf(m_advice, speech()));
    recordShownAdvice(now);
}

void FillPage::followClock(Instant now) {
    const ClockStep step = clockStep(m_lastLook, now, season().zone());
    m_lastLook = now;
    if (step == ClockStep::ordinary) return;
    // What was listened to and zoomed into belongs to another hour or day.
    m_advice = AdviceState{voiceAt(season(), *m_silo, now), std::nullopt, std::nullopt};
    if (step == ClockStep::setBack) m_movement.forget();
    if (step != ClockStep::slept) m_views->startAnew();
}

void FillPage::refreshMovement() {
    const Instant now = m_shown.rolling.at;
    m_movement.note(m_desk.season(), now);
    const density::Readings before = m_movement.before(m_shown.rolling.silo, now);
    const auto moved = [&](density::SiloReading density::Readings::*which) {
        return movementText(density::movementOf(before, m_shown, which), speech());
    };
    m_gauge->setMoved({moved(&density::Readings::layer), moved(&density::Readings::today),
                       moved(&density::Readings::silo)});
}

Speech FillPage::speech() const {
    return {m_appearance.units(), season().zone()};
}

void FillPage::post(widgets::Weight weight, const QString& text) {
    m_messages->post(weight, text);
}

void FillPage::retranslate() {
    m_siloTitle->setText(tr("Silo"));
    m_siloChoice->setAccessibleName(tr("Silo"));
    m_fieldTitle->setText(tr("Crop from field"));
    m_fieldChoice->setAccessibleName(tr("Field that the loads come from"));
    m_authorTitle->setText(tr("In charge"));
    m_author->setAccessibleName(tr("Name of the person in charge"));
    m_author->setPlaceholderText(tr("your name"));
    setAccessibleName(tr("Filling"));
    fillChoices();
}

void FillPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::LanguageChange) return;
    retranslate();
    refresh();
}

}  // namespace treadwell::fill
