// What the Fill page does when it is touched; how it looks is in fill_page.cpp.
#include "app/desktop/fill/dry_matter_entry.h"
#include "app/desktop/fill/fill_page.h"
#include "app/desktop/fill/layer_entry.h"
#include "app/desktop/fill/load_dialog.h"
#include "app/desktop/fill/view_strip.h"
#include "app/desktop/fill/working_dialog.h"
#include "app/desktop/widgets/advice_line.h"

#include <QComboBox>
#include <QLineEdit>
#include <QShortcut>

namespace treadwell::fill {

namespace {

constexpr int kTruckKeys = 9;

farm::Activity activityOf(widgets::Zone zone) {
    switch (zone) {
        case widgets::Zone::packing:
            return farm::Activity::packing;
        case widgets::Zone::spreading:
            return farm::Activity::spreading;
        case widgets::Zone::away:
            break;
    }
    return farm::Activity::away;
}

const density::SiloReading& readingOf(const density::Readings& readings, widgets::Reading reading) {
    switch (reading) {
        case widgets::Reading::layerNow:
            return readings.layer;
        case widgets::Reading::today:
            return readings.today;
        case widgets::Reading::silo:
            break;
    }
    return readings.silo;
}

}  // namespace

std::vector<std::pair<QString, QString>> fillKeys() {
    return {
        {QStringLiteral("Ctrl+1 … Ctrl+9"), FillPage::tr("log a load of the truck at this place")},
        {QStringLiteral("Ctrl+Z"), FillPage::tr("take back the last load")},
        {QStringLiteral("Ctrl+D"), FillPage::tr("enter dry matter")},
        {QStringLiteral("Ctrl+L"), FillPage::tr("enter the layer")},
        {QStringLiteral("Ctrl+G"), FillPage::tr("next reading of the density")},
        {QStringLiteral("Ctrl+W"), FillPage::tr("show the working")},
        {QStringLiteral("Ctrl+T"), FillPage::tr("next view: time, section, table, heights, chop")},
        {QStringLiteral("Ctrl+H"), FillPage::tr("enter heights")},
        {QStringLiteral("+ −, PgUp PgDn"), FillPage::tr("zoom and move the timeline; Home shows all of it")},
        {QStringLiteral("← → ↑ ↓"), FillPage::tr("read a moment of the timeline or a place of the section")},
        {QStringLiteral("Ctrl+Enter"), FillPage::tr("do what is advised")},
        {QStringLiteral("Ctrl+Backspace"), FillPage::tr("decline the advice")},
        {QStringLiteral("Tab, Shift+Tab"), FillPage::tr("next or previous control")},
        {QStringLiteral("← →"), FillPage::tr("move the chosen tractor")}};
}

void FillPage::addShortcuts() {
    const auto add = [this](const QKeySequence& keys, auto work) {
        connect(new QShortcut{keys, this}, &QShortcut::activated, this, work);
    };
    for (int place = 0; place < kTruckKeys; ++place) {
        add(QKeySequence{static_cast<int>(Qt::CTRL) | (Qt::Key_1 + place)}, [this, place] {
            const std::vector<Uuid> order = m_trucks->order();
            if (place < std::ssize(order)) logLoad(order[static_cast<std::size_t>(place)]);
        });
    }
    add(QKeySequence{Qt::CTRL | Qt::Key_Z}, [this] { undo(); });
    add(QKeySequence{Qt::CTRL | Qt::Key_D}, [this] { m_dryMatter->takeFocus(); });
    add(QKeySequence{Qt::CTRL | Qt::Key_L}, [this] { m_layer->takeFocus(); });
    add(QKeySequence{Qt::CTRL | Qt::Key_G}, [this] {
        const auto next = (static_cast<std::size_t>(m_gauge->selected()) + 1) % widgets::kReadings.size();
        m_gauge->select(widgets::kReadings[next]);
    });
    add(QKeySequence{Qt::CTRL | Qt::Key_T}, [this] {
        m_views->choose(kViews[(static_cast<std::size_t>(m_views->chosen()) + 1) % kViews.size()]);
    });
    add(QKeySequence{Qt::CTRL | Qt::Key_H}, [this] { m_views->choose(View::heights); });
    add(QKeySequence{Qt::CTRL | Qt::Key_W}, [this] { showWorking(m_gauge->selected()); });
    add(QKeySequence{Qt::CTRL | Qt::Key_Return}, [this] { decide(entries::AdviceDecision::accepted); });
    add(QKeySequence{Qt::CTRL | Qt::Key_Backspace}, [this] { decide(entries::AdviceDecision::declined); });
}

std::optional<farm::FieldId> FillPage::chosenField() const {
    const auto id = Uuid::fromText(m_fieldChoice->currentData().toString().toStdString());
    return id ? std::optional{farm::FieldId{*id}} : std::nullopt;
}

std::optional<entries::Load> FillPage::usualLoad(Uuid truck) const {
    const auto known = season().farm().trucks.find(farm::TruckId{truck});
    if (!m_silo || known == season().farm().trucks.end()) return std::nullopt;
    entries::Load load;
    load.silo = *m_silo;
    load.truck = known->first;
    load.field = chosenField();
    load.mass = known->second.usualLoad;
    load.source = entries::MassSource::usual;
    return load;
}

void FillPage::logLoad(Uuid truck) {
    if (const auto load = usualLoad(truck)) proposeLoad(*load);
}

void FillPage::proposeLoad(const entries::Load& load) {
    propose(load, {.truck = load.truck->value, .move = std::nullopt, .name = [] { return tr("The load"); }});
}

void FillPage::askDetails(Uuid truck) {
    const auto load = usualLoad(truck);
    if (!load) return;
    auto* dialog = new LoadDialog{m_appearance, *load, season().farm(), this};
    connect(dialog, &LoadDialog::recorded, this, &FillPage::proposeLoad);
    dialog->open();
}

void FillPage::undo() {
    if (!m_silo) return;
    // A load that is on its way can be taken back only when it is there; an older one was not meant.
    const auto underway = std::find_if(m_pending.rbegin(), m_pending.rend(),
                                       [](const auto& each) { return each.second.truck.has_value(); });
    if (underway != m_pending.rend()) {
        m_undoAfter = underway->first;
        return;
    }
    const auto last = lastLoadAt(season(), *m_silo, m_desk.now());
    if (!last || last->entry == m_takenBack) return;  // a second touch before the first lies on the disk
    m_takenBack = last->entry;
    const desk::Ticket ticket = m_desk.takeBack(last->entry);
    m_pending[ticket] = {.truck = std::nullopt, .move = std::nullopt, .name = [] { return tr("The undo"); }};
}

void FillPage::moveTractor(Uuid tractor, widgets::Zone zone, Share share) {
    if (!m_silo) return;
    entries::TractorWork work;
    work.tractor = farm::TractorId{tractor};
    work.activity = activityOf(zone);
    if (zone != widgets::Zone::away) work.silo = *m_silo;
    work.packingShare = share;
    propose(work, {.truck = std::nullopt, .move = std::pair{tractor, PendingMove{zone, share}}, .name = [] {
                       return tr("The move of the tractor");
                   }});
}

void FillPage::recordSample(entries::DryMatterSample sample) {
    sample.field = chosenField();
    propose(sample,
            {.truck = std::nullopt, .move = std::nullopt, .name = [] { return tr("The dry matter"); }});
}

void FillPage::recordLayer(Length thickness) {
    if (!m_silo) return;
    propose(entries::LayerSeen{*m_silo, thickness, entries::LayerMethod::measured},
            {.truck = std::nullopt, .move = std::nullopt, .name = [] { return tr("The layer"); }});
}

void FillPage::decide(entries::AdviceDecision decision) {
    if (!m_silo || m_advice.said() == nullptr) return;
    if (isDecided(season(), *m_silo, m_advice.voice, m_desk.now())) return;
    propose(decisionOn(m_advice, *m_silo, decision),
            {.truck = std::nullopt, .move = std::nullopt, .name = [] { return tr("The decision"); }});
    m_adviceLine->setSilent(std::nullopt);
}

void FillPage::recordShownAdvice(Instant now) {
    if (!m_desk.standing().writable || m_recordedAdvice == m_advice.voice.said ||
        isRecorded(season(), *m_silo, m_advice.voice, now)) {
        return;
    }
    m_recordedAdvice = m_advice.voice.said;
    propose(decisionOn(m_advice, *m_silo, entries::AdviceDecision::shown),
            {.truck = std::nullopt, .move = std::nullopt, .name = [] { return tr("The advice shown"); }});
}

void FillPage::recordShown(const std::vector<attention::CautionNow>& cautions, Instant now) {
    if (!m_desk.standing().writable || !isVisible()) return;
    for (const entries::CautionShown& shown : unrecorded(cautions, season(), now)) {
        if (!m_recordedCautions.insert(shown.caution).second) continue;
        const desk::Ticket ticket = m_desk.propose(shown);
        m_pending[ticket] = {.truck = std::nullopt,
                             .move = std::nullopt,
                             .name = [] { return tr("The caution shown"); },
                             .caution = shown.caution};
    }
}

void FillPage::propose(const entries::Body& body, Pending pending) {
    m_pending[m_desk.propose(body)] = std::move(pending);
    const Instant now = m_desk.now();
    refreshTrucks(now);
    refreshTractors(season::rollingAt(season(), *m_silo, now));
}

void FillPage::settle(desk::Ticket ticket) {
    const auto settled = m_pending.extract(ticket);
    if (settled.empty()) return;
    m_recordedCautions.erase(settled.mapped().caution);
    refresh();
    if (m_undoAfter != ticket) return;
    m_undoAfter.reset();
    undo();
}

void FillPage::fail(desk::Ticket ticket, const Error& error) {
    const auto pending = m_pending.find(ticket);
    if (pending == m_pending.end()) return;
    const QString what = pending->second.name();
    m_pending.erase(pending);
    m_takenBack.reset();
    if (m_undoAfter == ticket) m_undoAfter.reset();
    post(widgets::Weight::error, tr("%1 is not saved: %2").arg(what, speech().say(error)));
    refresh();
}

void FillPage::showAuthor(const QString& name) {
    m_author->setText(name);
}

void FillPage::showWorking(widgets::Reading reading) {
    if (!m_silo) return;
    const density::Readings readings = m_readings.at(season(), *m_silo, m_desk.now());
    const density::SiloReading& shown = readingOf(readings, reading);
    if (!shown.estimate) return;
    (new WorkingDialog{*shown.estimate, density::doubtsOf(readings, shown), speech(), this})->open();
}

}  // namespace treadwell::fill
