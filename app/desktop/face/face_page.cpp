#include "app/desktop/face/face_page.h"

#include "app/desktop/day/sheet_view.h"
#include "app/desktop/face/face_forms.h"
#include "app/desktop/face/plan_box.h"
#include "app/desktop/fill/id_box.h"
#include "app/desktop/samples/lines_panel.h"
#include "app/desktop/widgets/choice_box.h"
#include "app/desktop/widgets/page_change.h"
#include "core/review/face_sheet.h"

#include <QEvent>
#include <QLabel>
#include <QScrollArea>
#include <QShortcut>
#include <QSignalBlocker>
#include <QTabWidget>
#include <QVBoxLayout>

namespace treadwell::face_page {

namespace {

constexpr std::chrono::seconds kTick{60};
constexpr int kFormWidth = 400;  // pixels
const std::array kTabKeys{Qt::Key_F2, Qt::Key_F3, Qt::Key_F4, Qt::Key_F5};

}  // namespace

FacePage::FacePage(desk::SeasonDesk& desk, const settings::Appearance& look, QWidget* parent)
    : QWidget{parent},
      m_desk{desk},
      m_appearance{look},
      m_siloTitle{new QLabel},
      m_silo{new widgets::ChoiceBox{look}},
      m_cautions{new samples_page::LinesPanel{look, QStringLiteral("faceCautions")}},
      m_tabs{new QTabWidget},
      m_forms{new CoreForm{look}, new RemovalForm{look}, new WarmthForm{look}},
      m_plan{new PlanBox{look}},
      m_messages{new widgets::MessageBar{look}},
      m_views{new QTabWidget},
      m_faceTitle{new QLabel},
      m_faces{new widgets::ChoiceBox{look}},
      m_map{new widgets::FaceMapView{look}},
      m_faceSheet{new day_page::SheetView{look}},
      m_feedSheet{new day_page::SheetView{look}} {
    auto* layout = new QVBoxLayout{this};
    auto* columns = new QHBoxLayout;
    layout->addWidget(m_messages);
    layout->addLayout(columns, 1);
    columns->addWidget(makeForms());
    columns->addWidget(makeViews(), 1);
    for (SiloForm* form : m_forms) connect(form, &SiloForm::recorded, this, &FacePage::record);
    for (std::size_t tab = 0; tab < kTabKeys.size(); ++tab) {
        auto* key = new QShortcut{QKeySequence{kTabKeys[tab]}, this};
        connect(key, &QShortcut::activated, this,
                [this, tab] { m_tabs->setCurrentIndex(static_cast<int>(tab)); });
    }
    connect(m_plan, &PlanBox::edited, this, &FacePage::showFeeding);
    connect(m_silo, &QComboBox::currentIndexChanged, this, &FacePage::refresh);
    connect(m_faces, &QComboBox::currentIndexChanged, this, &FacePage::refresh);
    connect(m_tabs, &QTabWidget::currentChanged, this,
            [this](int tab) { m_views->setCurrentIndex(tab == 0 ? 0 : 1); });
    connect(&desk, &desk::SeasonDesk::committed, this, &FacePage::settle);
    connect(&desk, &desk::SeasonDesk::failed, this, &FacePage::fail);
    connect(&desk, &desk::SeasonDesk::changed, this, &FacePage::refresh);
    connect(&look, &settings::Appearance::changed, this, &FacePage::refresh);
    connect(&m_tick, &QTimer::timeout, this, &FacePage::refresh);
    m_tick.start(kTick);
    retranslate();
}

QWidget* FacePage::makeForms() {
    auto* forms = new QWidget;
    auto* layout = new QVBoxLayout{forms};
    layout->setContentsMargins(0, 0, 0, 0);
    auto* row = new QHBoxLayout;
    m_siloTitle->setBuddy(m_silo);
    m_silo->setObjectName(QStringLiteral("faceSilo"));
    m_silo->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    row->addWidget(m_siloTitle);
    row->addWidget(m_silo, 1);
    m_tabs->setObjectName(QStringLiteral("faceTabs"));
    m_tabs->setUsesScrollButtons(false);
    for (SiloForm* form : m_forms) m_tabs->addTab(widgets::scrolled(form), QString{});
    m_tabs->addTab(widgets::scrolled(m_plan), QString{});
    layout->addLayout(row);
    layout->addWidget(m_cautions);
    layout->addWidget(m_tabs, 1);
    forms->setFixedWidth(kFormWidth);
    return forms;
}

QWidget* FacePage::makeViews() {
    auto* face = new QWidget;
    auto* layout = new QVBoxLayout{face};
    layout->setContentsMargins(0, 0, 0, 0);
    auto* row = new QHBoxLayout;
    m_faceTitle->setBuddy(m_faces);
    m_faces->setObjectName(QStringLiteral("faces"));
    m_faces->setMinimumHeight(m_appearance.pixels(settings::kControlMillimetres));
    row->addWidget(m_faceTitle);
    row->addWidget(m_faces, 1);
    layout->addLayout(row);
    layout->addWidget(m_map);
    layout->addWidget(m_faceSheet, 1);
    m_faceSheet->setObjectName(QStringLiteral("faceSheet"));
    m_feedSheet->setObjectName(QStringLiteral("feedSheet"));
    m_views->setObjectName(QStringLiteral("faceViews"));
    m_views->addTab(face, QString{});
    m_views->addTab(m_feedSheet, QString{});
    return m_views;
}

fill::Speech FacePage::speech() const {
    return {m_appearance.units(), m_desk.season()->zone()};
}

std::optional<farm::Silo> FacePage::chosenSilo() const {
    const auto id = fill::chosenIn<farm::SiloId>(*m_silo);
    if (!id) return std::nullopt;
    const auto& silos = m_desk.season()->farm().silos;
    const auto found = silos.find(*id);
    return found == silos.end() ? std::nullopt : std::optional{found->second};
}

void FacePage::fillSilos() {
    if (m_silosOf == m_desk.season()) return;
    const auto chosen = fill::chosenIn<farm::SiloId>(*m_silo);
    m_silosOf = m_desk.season();
    const QSignalBlocker quiet{m_silo};
    m_silo->clear();
    fill::fillBox(*m_silo, m_silosOf->farm().silos, chosen);
}

/// The newest core's face until somebody chooses.
void FacePage::fillFaces(const face::Face& face) {
    const QVariant chosen = m_faces->currentData();
    const QSignalBlocker quiet{m_faces};
    m_faces->clear();
    m_faces->addItem(tr("of the newest core"));
    for (const Length along : facesOf(face))
        m_faces->addItem(m_appearance.units().text(along), along.metres());
    m_faces->setCurrentIndex(chosen.isValid() ? std::max(0, m_faces->findData(chosen)) : 0);
}

void FacePage::refresh() {
    if (!isVisible()) return;
    fillSilos();
    const auto silo = chosenSilo();
    for (SiloForm* form : m_forms) form->setEnabled(silo.has_value() && m_desk.standing().writable);
    if (!silo) {
        m_faceSheet->setReason(tr("The farm has no silo yet."));
        m_feedSheet->setReason(tr("The farm has no silo yet."));
        return;
    }
    for (SiloForm* form : m_forms) form->setSilo(silo->id);
    const season::Season& season = *m_desk.season();
    const Instant now = m_desk.now();
    m_cautions->setLines(cautionsAt(*silo, now, speech()));
    face::Face face = face::faceOf(season, *silo, now);
    fillFaces(face);
    if (const QVariant chosen = m_faces->currentData(); chosen.isValid())
        face = face::faceOf(season, *silo, now, Length::fromMetres(chosen.toDouble()));
    m_map->setPicture(pictureOf(face, *silo, speech()));
    m_faceSheet->setSheet(review::faceSheet(season, *silo, now, face),
                          fill::styleOf(m_appearance.units(), season.zone()));
    showFeeding();
}

void FacePage::showFeeding() {
    const auto silo = chosenSilo();
    if (!silo || !isVisible()) return;
    const season::Season& season = *m_desk.season();
    m_feedSheet->setSheet(feedingOf(season, *silo, m_desk.now(), m_plan->question()),
                          fill::styleOf(m_appearance.units(), season.zone()));
}

void FacePage::record(const entries::Body& body) {
    m_pending.insert(m_desk.propose(body));
}

void FacePage::settle(desk::Ticket ticket) {
    m_pending.erase(ticket);
    refresh();
}

void FacePage::fail(desk::Ticket ticket, const Error& error) {
    if (m_pending.erase(ticket) == 0) return;
    m_messages->post(widgets::Weight::error, tr("Not recorded: %1").arg(speech().say(error)));
}

void FacePage::retranslate() {
    m_siloTitle->setText(tr("Silo"));
    m_silo->setAccessibleName(tr("Silo"));
    m_faceTitle->setText(tr("Face"));
    m_faces->setAccessibleName(tr("Face"));
    m_cautions->setTitle(tr("Before anybody goes near"));
    const std::array names{tr("Core"), tr("Fed"), tr("Warmth"), tr("Plan")};
    for (std::size_t tab = 0; tab < names.size(); ++tab)
        m_tabs->setTabText(static_cast<int>(tab), names[tab]);
    m_views->setTabText(0, tr("The face"));
    m_views->setTabText(1, tr("Feeding out"));
    refresh();
}

void FacePage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
}

void FacePage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

std::vector<std::pair<QString, QString>> faceKeys() {
    return {{QStringLiteral("F2 … F5"), FacePage::tr("A core, what was fed, temperatures, the plan")},
            {FacePage::tr("Arrows"), FacePage::tr("From place to place on the face")},
            {FacePage::tr("Enter"), FacePage::tr("The next field of the form; at the last one record")}};
}

}  // namespace treadwell::face_page
