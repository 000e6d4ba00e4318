// What the Fill page does when it is touched; how it looks is in fill_page.cpp.
#include "app/desktop/fill/dry_matter_entry.h"
#include "app/desktop/fill/fill_header.h"
#include "app/desktop/fill/fill_page.h"
#include "app/desktop/fill/layer_entry.h"
#include "app/desktop/fill/view_strip.h"
#include "app/desktop/fill/working_dialog.h"
#include "app/desktop/fill/zones.h"
#include "app/desktop/widgets/advice_line.h"

#include <QShortcut>
#include <QStackedWidget>

namespace treadwell::fill {

namespace {

constexpr int kTruckKeys = 9;

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
        {QStringLiteral("Ctrl+Y"), FillPage::tr("try something: what if")},
        {QStringLiteral("Ctrl+O"), FillPage::tr("the day's loads, or the trucks again")},
        {QStringLiteral("Ctrl+U"), FillPage::tr("catch up with loads")},
        {QStringLiteral("Ctrl+N"), FillPage::tr("a hired machine is here")},
        {QStringLiteral("Ctrl+B"), FillPage::tr("something happened")},
        {QStringLiteral("Ctrl+P"), FillPage::tr("pause, or go on")},
        {QStringLiteral("Ctrl+S"), FillPage::tr("next silo")},
        {QStringLiteral("Ctrl+F"), FillPage::tr("next field")},
        {QStringLiteral("Ctrl+I"), FillPage::tr("who holds the tablet")},
        {QStringLiteral("Ctrl+R"), FillPage::tr("words for the radio")},
        {QStringLiteral("Ctrl+E"), FillPage::tr("the other language")},
        {QStringLiteral("Tab, Shift+Tab"), FillPage::tr("next or previous control")},
        {QStringLiteral("← →"), FillPage::tr("move the chosen tractor")},
        {QStringLiteral("↑ ↓"), FillPage::tr("share of its time that it packs")},
        {QStringLiteral("M"), FillPage::tr("mass of the chosen tractor")}};
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
    add(QKeySequence{Qt::CTRL | Qt::Key_Y}, [this] { setTrying(!m_trying); });
    add(QKeySequence{Qt::CTRL | Qt::Key_O}, [this] { showList(m_yard->currentWidget() == m_trucks); });
    add(QKeySequence{Qt::CTRL | Qt::Key_U}, [this] { askCatchUp(); });
    add(QKeySequence{Qt::CTRL | Qt::Key_N}, [this] { askHired(); });
    add(QKeySequence{Qt::CTRL | Qt::Key_B}, [this] { askIncident(); });
    add(QKeySequence{Qt::CTRL | Qt::Key_P}, [this] { togglePause(); });
    add(QKeySequence{Qt::CTRL | Qt::Key_S}, [this] { m_header->nextSilo(); });
    add(QKeySequence{Qt::CTRL | Qt::Key_F}, [this] { m_header->nextField(); });
    add(QKeySequence{Qt::CTRL | Qt::Key_I}, [this] { askTablet(); });
    add(QKeySequence{Qt::CTRL | Qt::Key_R}, [this] { tellRadio(); });
    add(QKeySequence{Qt::CTRL | Qt::Key_E}, [this] { emit languageTouched(); });
}

std::optional<entries::Load> FillPage::usualLoad(Uuid truck) const {
    const auto known = season().farm().trucks.find(farm::TruckId{truck});
    if (!m_silo || known == season().farm().trucks.end()) return std::nullopt;
    entries::Load load;
    load.silo = *m_silo;
    load.truck = known->first;
    load.field = m_header->field();
    load.mass = known->second.usualLoad;
    load.source = entries::MassSource::usual;
    return load;
}

void FillPage::logLoad(Uuid truck) {
    if (const auto load = usualLoad(truck)) recordLoad(m_desk.touch(*load), false);
}

void FillPage::recordLoad(const session::Proposal& proposal, bool usual) {
    std::vector<session::Proposal> proposals{proposal};
    const auto& load = std::get<entries::Load>(proposal.body);
    const auto& trucks = season().farm().trucks;
    const auto known = load.truck ? trucks.find(*load.truck) : trucks.end();
    if (usual && known != trucks.end()) {
        entries::TruckDefined truck{known->second};
        truck.truck.usualLoad = load.mass;
        proposals.push_back(m_desk.touch(truck));
    }
    Pending pending{.truck = std::nullopt, .move = std::nullopt, .name = [] { return tr("The load"); }};
    if (load.truck && !proposal.target) pending.truck = load.truck->value;
    propose(std::move(proposals), std::move(pending));
}

void FillPage::correctMass(entries::EntryId entry, AsFedMass mass) {
    const season::FactPointer fact = season().fact(entry);
    const auto* recorded = fact == nullptr ? nullptr : std::get_if<entries::Load>(&fact->body());
    if (recorded == nullptr || recorded->mass == mass) return;
    entries::Load load = *recorded;
    load.mass = mass;
    load.source = entries::MassSource::weighed;  // who sets a mass has read it somewhere
    recordLoad({load, fact->happened(), entry}, false);
}

void FillPage::takeBack(entries::EntryId load) {
    if (load == m_takenBack) return;  // a second touch before the first lies on the disk
    m_takenBack = load;
    await(m_desk.takeBack(load),
          {.truck = std::nullopt, .move = std::nullopt, .name = [] { return tr("The undo"); }});
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
    if (const auto last = undoableAt(season(), *m_silo, m_desk.now())) takeBack(last->entry);
}

void FillPage::moveTractor(Uuid tractor, widgets::Zone zone, Share share) {
    if (!m_silo) return;
    if (m_trying) {
        m_trial.move(farm::TractorId{tractor}, zone, share);
        return refresh();
    }
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
    sample.field = m_header->field();
    propose(sample,
            {.truck = std::nullopt, .move = std::nullopt, .name = [] { return tr("The dry matter"); }});
}

void FillPage::recordLayer(Length thickness) {
    if (!m_silo) return;
    if (m_trying) {
        m_trial.spread(thickness);
        return refresh();
    }
    propose(entries::LayerSeen{*m_silo, thickness, entries::LayerMethod::measured},
            {.truck = std::nullopt, .move = std::nullopt, .name = [] { return tr("The layer"); }});
}

void FillPage::decide(entries::AdviceDecision decision) {
    const bool accepts = decision == entries::AdviceDecision::accepted;
    if (m_trying) return accepts ? doTrial() : setTrying(false);
    if (!m_silo || m_advice.said() == nullptr) return;
    const Instant now = m_desk.now();
    if (isDecided(season(), *m_silo, m_advice.voice, now)) return;
    std::vector<session::Proposal> proposals{m_desk.touch(decisionOn(m_advice, *m_silo, decision))};
    if (accepts) {
        const Trial advised = trialOf(m_advice.said()->change, *m_advice.situation, season().farm());
        for (const entries::TractorWork& work : advised.work(*m_silo))
            proposals.push_back(m_desk.touch(work));
    }
    propose(std::move(proposals),
            {.truck = std::nullopt, .move = std::nullopt, .name = [] { return tr("The decision"); }});
    m_adviceLine->setSilent(std::nullopt);
}

void FillPage::doTrial() {
    if (!m_silo || m_trial.isEmpty()) return;
    std::vector<session::Proposal> proposals;
    if (const auto decided = decisionOn(m_trial, m_advice, season().farm(), *m_silo))
        proposals.push_back(m_desk.touch(*decided));
    for (const entries::TractorWork& work : m_trial.work(*m_silo)) proposals.push_back(m_desk.touch(work));
    if (!proposals.empty()) {
        propose(std::move(proposals),
                {.truck = std::nullopt, .move = std::nullopt, .name = [] { return tr("The decision"); }});
    }
    setTrying(false);
}

void FillPage::setTrying(bool trying) {
    m_trying = trying;
    m_trial.clear();
    refresh();
}

/// What is shown by a clock in question was not shown at any known time.
bool FillPage::recordsByItself() const {
    return m_desk.standing().writable && !m_desk.standing().clockQuestion;
}

void FillPage::recordShownAdvice(Instant now) {
    if (!recordsByItself() || m_recordedAdvice == m_advice.voice.said ||
        isRecorded(season(), *m_silo, m_advice.voice, now)) {
        return;
    }
    m_recordedAdvice = m_advice.voice.said;
    propose(decisionOn(m_advice, *m_silo, entries::AdviceDecision::shown),
            {.truck = std::nullopt, .move = std::nullopt, .name = [] { return tr("The advice shown"); }});
}

void FillPage::recordShown(const std::vector<attention::CautionNow>& cautions, Instant now) {
    if (!recordsByItself() || !isVisible()) return;
    for (const entries::CautionShown& shown : unrecorded(cautions, season(), now)) {
        if (!m_recordedCautions.insert(shown.caution).second) continue;
        m_pending[m_desk.propose(shown)] = {.truck = std::nullopt,
                                            .move = std::nullopt,
                                            .name = [] { return tr("The caution shown"); },
                                            .caution = shown.caution};
    }
}

void FillPage::propose(const entries::Body& body, Pending pending) {
    await(m_desk.propose(body), std::move(pending));
}

void FillPage::propose(std::vector<session::Proposal> proposals, Pending pending) {
    await(m_desk.propose(std::move(proposals)), std::move(pending));
}

void FillPage::await(desk::Ticket ticket, Pending pending) {
    m_pending[ticket] = std::move(pending);
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

void FillPage::showWorking(widgets::Reading reading) {
    if (!m_silo) return;
    const density::Readings readings = m_readings.at(season(), *m_silo, m_desk.now());
    const density::SiloReading& shown = readingOf(readings, reading);
    if (!shown.estimate) return;
    (new WorkingDialog{*shown.estimate, density::doubtsOf(readings, shown), speech(), this})->open();
}

}  // namespace treadwell::fill
