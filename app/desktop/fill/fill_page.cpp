#include "app/desktop/fill/fill_page.h"

#include "app/desktop/fill/clock_watch.h"
#include "app/desktop/fill/columns.h"
#include "app/desktop/fill/day_loads.h"
#include "app/desktop/fill/dry_matter_entry.h"
#include "app/desktop/fill/fill_header.h"
#include "app/desktop/fill/layer_entry.h"
#include "app/desktop/fill/view_strip.h"
#include "app/desktop/fill/yard_tools.h"
#include "app/desktop/widgets/advice_line.h"
#include "app/desktop/widgets/page_change.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QScrollArea>
#include <QScrollBar>
#include <QStackedWidget>

namespace treadwell::fill {

namespace {

using namespace std::chrono_literals;

constexpr auto kPageTick = 5s;
constexpr int kPageSpacing = 4;
constexpr double kTrucksMillimetres = 68;

}  // namespace

FillPage::FillPage(desk::SeasonDesk& desk, const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent},
      m_desk{desk},
      m_appearance{appearance},
      m_header{new FillHeader{appearance}},
      m_trucks{new widgets::TruckBoard{appearance}},
      m_dayLoads{new DayLoads{appearance}},
      m_yard{new QStackedWidget},
      m_tools{new YardTools{appearance}},
      m_adviceLine{new widgets::AdviceLine{appearance}},
      m_gauge{new widgets::DensityGauge{appearance}},
      m_pad{new widgets::PadPlan{appearance}},
      m_views{new ViewStrip{appearance}},
      m_dryMatter{new DryMatterEntry{appearance}},
      m_layer{new LayerEntry{appearance}},
      m_attention{new widgets::AttentionPanel{appearance}} {
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(8, 6, 8, 6);
    layout->setSpacing(kPageSpacing);
    layout->addWidget(m_header);
    layout->addWidget(makeColumns(), 1);
    connectWidgets();
    connectYard();
    addShortcuts();
    retranslate();
    const auto& silos = season().farm().silos;
    if (!silos.empty()) selectSilo(silos.begin()->first);
    refresh();
}

QWidget* FillPage::makeYard() {
    auto* yard = new QWidget;
    auto* column = new QVBoxLayout{yard};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(kPageSpacing);
    m_yard->addWidget(m_trucks);
    m_yard->addWidget(m_dayLoads);
    column->addWidget(m_yard, 1);
    column->addWidget(m_tools);
    // On a low screen with large letters what stands below the trucks is scrolled to.
    QScrollArea* area = widgets::scrolled(yard);
    area->setObjectName(QStringLiteral("yard"));
    area->setFocusPolicy(Qt::NoFocus);
    const QScrollBar* bar = area->verticalScrollBar();
    const auto fit = [this, area, bar] {
        const int beside = bar->maximum() > 0 ? bar->sizeHint().width() : 0;
        area->setFixedWidth(m_appearance.pixels(kTrucksMillimetres) + beside);
    };
    connect(bar, &QScrollBar::rangeChanged, area, fit);
    fit();
    return area;
}

QWidget* FillPage::makeColumns() {
    const auto column = [](std::initializer_list<std::pair<QWidget*, int>> widgets) {
        auto* made = new QWidget;
        auto* layout = new QVBoxLayout{made};
        layout->setContentsMargins(0, 0, 0, 0);
        layout->setSpacing(kPageSpacing);
        for (const auto& [widget, stretch] : widgets) layout->addWidget(widget, stretch);
        return made;
    };
    auto* columns = new QWidget;
    auto* row = new QHBoxLayout{columns};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(kPageSpacing);
    row->addWidget(makeYard());
    row->addWidget(new Columns{m_appearance, column({{m_adviceLine, 0}, {m_gauge, 1}, {m_pad, 0}}),
                               column({{m_dryMatter, 0}, {m_layer, 0}, {m_attention, 1}}), m_views},
                   1);
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
    connect(&m_later, &QTimer::timeout, this, &FillPage::refreshLater);
    connect(m_adviceLine, &widgets::AdviceLine::trialAsked, this, &FillPage::setTrying);
    connect(m_pad, &widgets::PadPlan::massRequested, this, &FillPage::askMass);
    connect(m_attention, &widgets::AttentionPanel::putAway, this, [this](const QString& key) {
        m_notices.putAway(key);
        refresh();
    });
    connect(&m_tick, &QTimer::timeout, this, &FillPage::refresh);
    m_tick.start(kPageTick);
}

void FillPage::connectYard() {
    connect(m_header, &FillHeader::siloChosen, this, &FillPage::selectSilo);
    connect(m_header, &FillHeader::tabletTouched, this, &FillPage::askTablet);
    connect(m_header, &FillHeader::incidentTouched, this, &FillPage::askIncident);
    connect(m_header, &FillHeader::radioTouched, this, &FillPage::tellRadio);
    connect(m_header, &FillHeader::languageTouched, this, &FillPage::languageTouched);
    connect(m_tools, &YardTools::listTouched, this, &FillPage::showList);
    connect(m_tools, &YardTools::catchUpTouched, this, &FillPage::askCatchUp);
    connect(m_tools, &YardTools::hireTouched, this, &FillPage::askHired);
    connect(m_tools, &YardTools::pauseTouched, this, &FillPage::togglePause);
    connect(m_dayLoads, &DayLoads::correctRequested, this, &FillPage::askCorrection);
    connect(m_dayLoads, &DayLoads::massCorrected, this, &FillPage::correctMass);
    connect(m_dayLoads, &DayLoads::takeBackRequested, this, &FillPage::takeBack);
}

void FillPage::selectSilo(farm::SiloId silo) {
    m_silo = silo;
    const Instant now = m_desk.now();
    m_header->setFarm(season(), now);
    m_header->selectSilo(silo);
    const auto last = lastLoadAt(season(), silo, now);
    if (last && last->load.field) m_header->selectField(last->load.field);
    m_advice = AdviceState{voiceAt(season(), silo, now), std::nullopt, std::nullopt};
    m_movement.forget();
    m_views->startAnew();
    m_trying = false;
    m_trial.clear();
    refresh();
}

void FillPage::refresh() {
    const Instant now = m_desk.now();
    refreshHeader(now);
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
    recordShown(cautionsAt(season(), readings), now);
}

void FillPage::refreshHeader(Instant now) {
    m_header->setFarm(season(), now);
    m_header->setClock(QString::fromStdString(clockText(season().zone(), now)));
    const auto holder = m_desk.holder();
    const auto shift = season::tabletHolder(season(), now);
    m_header->setHolder(holder ? std::optional{QString::fromStdString(*holder)} : std::nullopt,
                        shift ? std::optional{now - shift->onShiftSince} : std::nullopt);
}

void FillPage::refreshTrucks(Instant now) {
    std::vector<widgets::TruckView> trucks = trucksAt(season(), now);
    for (widgets::TruckView& truck : trucks) {
        for (const auto& [ticket, pending] : m_pending) {
            if (pending.truck == truck.id) ++truck.pending;
        }
    }
    m_trucks->setTrucks(trucks);
    const auto last = undoableAt(season(), *m_silo, now);
    std::optional<QString> undo;
    if (last) undo = loadName(*last, season().farm(), m_appearance.units());
    for (const widgets::TruckView& truck : trucks) {
        if (truck.pending > 0) undo = truck.name;  // it can be taken back before it lies on the disk
    }
    m_trucks->setUndo(undo);
    m_dayLoads->setLoads(loadsToday(season(), now, speech()));
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
    m_trial.show(tractors);
    m_pad->setTractors(tractors);
    const auto pause = pauseAt(season(), rolling.silo, rolling.at);
    m_tools->setPaused(pause ? std::optional{ageText(rolling.at - pause->begin)} : std::nullopt);
}

void FillPage::refreshSamples(const season::Rolling& rolling) {
    const settings::DisplayUnits& units = m_appearance.units();
    const AgedReading dryMatter = dryMatterAt(rolling, season().farm().rules, units);
    m_dryMatter->setLast(dryMatter.text, dryMatter.overdue);
    m_layer->setLast(layerAt(rolling, units), !rolling.layer);
    m_dryMatter->setSuggestion(rolling.lastSample ? rolling.lastSample->reading.dryMatter
                                                  : season().farm().unsampledDryMatter());
    m_layer->setSuggestion(rolling.layer ? rolling.layer->what.thickness : density::kAssumedLayer);
}

void FillPage::refreshAdvice(const density::Readings& readings) {
    m_advice = adviceAt(season(), readings, m_advice.voice);
    const Instant now = readings.rolling.at;
    if (m_trying) {
        m_adviceLine->setTrial(sentenceOf(m_trial, m_advice, season().farm(), speech()), !m_trial.isEmpty());
        return;
    }
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

void FillPage::refreshLater() {
    m_attention->setSections(m_notices.at(season(), m_shown, cautionsAt(season(), m_shown), speech()));
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
    m_header->messages().post(weight, text);
}

void FillPage::retranslate() {
    setAccessibleName(tr("Filling"));
}

void FillPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::LanguageChange) return;
    retranslate();
    refresh();
}

}  // namespace treadwell::fill
