// What the Fill page asks in a sheet of its own, and what it records of the answer.
#include "app/desktop/fill/catch_up_dialog.h"
#include "app/desktop/fill/day_loads.h"
#include "app/desktop/fill/fill_header.h"
#include "app/desktop/fill/fill_page.h"
#include "app/desktop/fill/hire_dialog.h"
#include "app/desktop/fill/incident_dialog.h"
#include "app/desktop/fill/load_dialog.h"
#include "app/desktop/fill/mass_dialog.h"
#include "app/desktop/fill/radio.h"
#include "app/desktop/fill/tablet_dialog.h"
#include "app/desktop/fill/yard_tools.h"
#include "core/farm/machine_classes.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QStackedWidget>

namespace treadwell::fill {

namespace {

using namespace std::chrono_literals;

template <class IdType>
IdType newId(Instant now) {
    return {UuidSource{}.next(now)};
}

}  // namespace

bool FillPage::canWriteTimes() {
    if (!m_desk.standing().clockQuestion) return true;
    post(widgets::Weight::caution,
         tr("Say first, at the top, whether the clock is right: this sheet writes times."));
    return false;
}

void FillPage::askDetails(Uuid truck) {
    const auto load = usualLoad(truck);
    if (!load || !canWriteTimes()) return;
    const Instant now = m_desk.now();
    auto* sheet = new LoadDialog{m_appearance, LoadDialog::Purpose::newLoad, *load, now, season(), now, this};
    connect(sheet, &LoadDialog::recorded, this,
            [this](const entries::Load& recorded, Instant at, bool usual) {
                recordLoad({recorded, at, {}}, usual);
            });
    sheet->open();
}

void FillPage::askCorrection(entries::EntryId entry) {
    const season::FactPointer fact = season().fact(entry);
    const auto* load = fact == nullptr ? nullptr : std::get_if<entries::Load>(&fact->body());
    if (load == nullptr || !canWriteTimes()) return;
    auto* sheet = new LoadDialog{
        m_appearance, LoadDialog::Purpose::correction, *load, fact->happened(), season(), m_desk.now(), this};
    connect(sheet, &LoadDialog::recorded, this,
            [this, entry](const entries::Load& recorded, Instant at, bool usual) {
                recordLoad({recorded, at, entry}, usual);
            });
    sheet->open();
}

void FillPage::askCatchUp() {
    if (!m_silo || !canWriteTimes()) return;
    entries::Load each;
    each.silo = *m_silo;
    each.field = m_header->field();
    const Instant now = m_desk.now();
    const auto last = lastLoadAt(season(), *m_silo, now);
    const Instant since =
        last ? last->at : std::max(now - 1h, season().zone().startOf(season().zone().dayOf(now)));
    auto* sheet = new CatchUpDialog{m_appearance, each, since, season(), now, this};
    connect(sheet, &CatchUpDialog::recorded, this, [this](const intake::CatchUp& loads) {
        const auto spread = intake::catchUp(loads, m_desk.now());
        if (!spread) return post(widgets::Weight::error, speech().say(spread.error()));
        std::vector<session::Proposal> proposals;
        for (const intake::Proposal& load : *spread) proposals.push_back({load.body, load.happened, {}});
        propose(std::move(proposals),
                {.truck = std::nullopt, .move = std::nullopt, .name = [] { return tr("The loads"); }});
    });
    sheet->open();
}

void FillPage::askHired() {
    if (!m_silo) return;
    auto* sheet = new HireDialog{m_appearance, season().farm(), this};
    const Pending pending{
        .truck = std::nullopt, .move = std::nullopt, .name = [] { return tr("The hired machine"); }};
    connect(sheet, &HireDialog::tractorCame, this,
            [this, pending](const QString& name, farm::TractorClass seen) {
                const Instant now = m_desk.now();
                const auto tractor = farm::hired(newId<farm::TractorId>(now), name.toStdString(), seen);
                const entries::TractorWork work{tractor.id, farm::Activity::packing, *m_silo};
                propose({m_desk.touch(entries::TractorDefined{tractor}), m_desk.touch(work)}, pending);
            });
    connect(sheet, &HireDialog::truckCame, this, [this, pending](const QString& name, farm::TruckClass seen) {
        const Instant now = m_desk.now();
        propose(entries::TruckDefined{farm::hired(newId<farm::TruckId>(now), name.toStdString(), seen)},
                pending);
    });
    sheet->open();
}

void FillPage::askIncident() {
    if (!m_silo || !canWriteTimes()) return;
    auto* sheet = new IncidentDialog{m_appearance, *m_silo, season(), m_desk.now(), this};
    connect(sheet, &IncidentDialog::recorded, this, [this](const entries::Incident& incident, Instant at) {
        propose(std::vector<session::Proposal>{{incident, at, {}}},
                {.truck = std::nullopt, .move = std::nullopt, .name = [] { return tr("The incident"); }});
    });
    sheet->open();
}

void FillPage::askMass(Uuid tractor) {
    const auto known = season().farm().tractors.find(farm::TractorId{tractor});
    if (known == season().farm().tractors.end()) return;
    auto* sheet = new MassDialog{m_appearance, known->second, this};
    connect(sheet, &MassDialog::recorded, this, [this](const farm::Tractor& weighed) {
        propose(entries::TractorDefined{weighed},
                {.truck = std::nullopt, .move = std::nullopt, .name = [] { return tr("The mass"); }});
    });
    sheet->open();
}

void FillPage::askTablet() {
    auto* sheet = new TabletDialog{m_appearance, m_desk.people(), m_desk.holder().has_value(), this};
    const Pending pending{
        .truck = std::nullopt, .move = std::nullopt, .name = [] { return tr("The shift"); }};
    connect(sheet, &TabletDialog::taken, this,
            [this, pending](const QString& name) { await(m_desk.takeTablet(name.toStdString()), pending); });
    connect(sheet, &TabletDialog::shiftEnded, this, [this, pending] {
        if (const auto ticket = m_desk.endShift()) await(*ticket, pending);
    });
    sheet->open();
}

void FillPage::togglePause() {
    if (!m_silo) return;
    const auto pause = pauseAt(season(), *m_silo, m_desk.now());
    // What was paused goes on: this silo, or all of them.
    const entries::Pause toggled{pause ? pause->silo : std::optional{*m_silo}, !pause, {}};
    propose(toggled, {.truck = std::nullopt, .move = std::nullopt, .name = [] { return tr("The pause"); }});
}

void FillPage::tellRadio() {
    if (!m_silo) return;
    const QString text = radioText(season(), m_readings.at(season(), *m_silo, m_desk.now()), speech());
    QGuiApplication::clipboard()->setText(text);
    post(widgets::Weight::note, tr("Copied: %1").arg(text));
}

void FillPage::showList(bool shown) {
    m_yard->setCurrentWidget(shown ? static_cast<QWidget*>(m_dayLoads) : m_trucks);
    m_tools->setListShown(shown);
}

}  // namespace treadwell::fill
