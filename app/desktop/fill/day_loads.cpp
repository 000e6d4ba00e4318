#include "app/desktop/fill/day_loads.h"

#include "app/desktop/fill/fill_presenter.h"
#include "app/desktop/fill/load_dialog.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>
#include <utility>

namespace treadwell::fill {

namespace {

constexpr std::chrono::milliseconds kStill{1500};
constexpr int kRepeatMilliseconds = 60;
constexpr int kFaceEdge = 8;  // pixels above and below the text

QString nameOrNothing(const auto& things, const auto& id) {
    if (!id) return {};
    const auto known = things.find(*id);
    return known == things.end() ? QString{} : QString::fromStdString(known->second.name);
}

QString aboutOf(const season::LoadTipped& tipped, const season::FarmBook& farm) {
    QStringList parts;
    if (farm.silos.size() > 1) parts << nameOrNothing(farm.silos, std::optional{tipped.load.silo});
    parts << nameOrNothing(farm.fields, tipped.load.field);
    if (tipped.load.timeSpread) parts << DayLoads::tr("caught up");
    if (tipped.load.source == entries::MassSource::usual) parts << DayLoads::tr("usual load");
    parts.removeAll(QString{});
    return parts.join(QStringLiteral(", "));
}

}  // namespace

std::vector<LoadRow> loadsToday(const season::Season& season, Instant now, const Speech& speech) {
    std::vector<LoadRow> rows;
    const season::Day* day = season.day(season.zone().dayOf(now));
    if (day == nullptr) return rows;
    for (auto tipped = day->loads.rbegin(); tipped != day->loads.rend(); ++tipped) {
        if (tipped->at > now) continue;
        const QString clock = QString::fromStdString(clockText(season.zone(), tipped->at));
        const QString time = (tipped->load.timeSpread ? DayLoads::tr("about %1").arg(clock) : clock) + u' ';
        const QString truck = nameOrNothing(season.farm().trucks, tipped->load.truck);
        rows.push_back({tipped->entry, time + loadName(*tipped, season.farm(), speech.units()),
                        time + (truck.isEmpty() ? DayLoads::tr("load") : truck), tipped->load.mass,
                        aboutOf(*tipped, season.farm())});
    }
    return rows;
}

DayLoads::DayLoads(const settings::Appearance& appearance, QWidget* parent)
    : QScrollArea{parent}, m_appearance{appearance}, m_none{new QLabel} {
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* page = new QWidget;
    m_list = new QVBoxLayout{page};
    m_list->setContentsMargins(0, 0, 0, 0);
    m_list->addWidget(m_none);
    m_list->addStretch(1);
    setWidget(page);
    m_still.setSingleShot(true);
    m_still.setInterval(kStill);
    connect(&m_still, &QTimer::timeout, this, &DayLoads::giveStepped);
    connect(&appearance, &settings::Appearance::changed, this, &DayLoads::refresh);
    refresh();
}

void DayLoads::setLoads(const std::vector<LoadRow>& loads) {
    if (loads == m_loads) return;
    m_loads = loads;
    if (isVisible() && !m_stepping) follow();  // a button that is held must not go
}

QString DayLoads::faceOf(const LoadRow& load) const {
    const settings::DisplayUnits& units = m_appearance.units();
    QString mass = units.text(load.mass);
    if (m_stepping && m_stepping->entry == load.entry)
        mass = units.numberText(load.mass.amount()) + QStringLiteral(" → ") + units.text(m_stepping->mass);
    QString text = load.who + u'\n' + mass;
    if (!load.about.isEmpty()) text += u'\n' + load.about;
    return text.replace(QStringLiteral("&"), QStringLiteral("&&"));
}

void DayLoads::step(const LoadRow& load, int direction) {
    if (m_stepping && m_stepping->entry != load.entry) giveStepped();
    if (!m_stepping) m_stepping = Stepping{load.entry, load.mass};
    const settings::DisplayUnits& units = m_appearance.units();
    const double step = std::pow(10.0, -units.decimals(Dimension::asFedMass));
    const double shown = units.shown(units.rounded(m_stepping->mass.amount())) + direction * step;
    m_stepping->mass = std::clamp(AsFedMass::fromSi(units.fromShown(Dimension::asFedMass, shown).si),
                                  kLightestLoad, kHeaviestLoad);
    m_still.start();
}

void DayLoads::giveStepped() {
    m_still.stop();
    if (!m_stepping) return;
    const Stepping stepped = *m_stepping;
    m_stepping.reset();
    emit massCorrected(stepped.entry, stepped.mass);
    if (const auto row = m_rows.find(stepped.entry); row != m_rows.end()) row->second.shown.reset();
    follow();
}

QWidget* DayLoads::makeRow(const LoadRow& load) {
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout{row};
    layout->setContentsMargins(0, 0, 0, 0);
    auto* face = new QPushButton{faceOf(load)};
    face->setStyleSheet(QStringLiteral("text-align: left; padding: 2px 4px"));
    face->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    face->setAccessibleName(tr("Correct the load of %1").arg(load.what));
    face->setToolTip(load.what + u' ' + load.about);
    layout->setSpacing(2);
    layout->addWidget(face, 1);
    const int side = m_appearance.pixels(settings::kControlMillimetres);
    const int lines = static_cast<int>(face->text().count(u'\n')) + 1;
    face->setMinimumHeight(std::max(side, lines * fontMetrics().height() + kFaceEdge));
    const auto addTool = [&](QChar sign, const QString& name) {
        auto* tool = new QToolButton;
        tool->setText(QString{sign});
        tool->setAccessibleName(name);
        tool->setToolTip(name);
        tool->setFixedSize(side, side);
        layout->addWidget(tool);
        return tool;
    };
    auto* less = addTool(u'−', tr("Less mass for the load of %1").arg(load.what));
    auto* more = addTool(u'+', tr("More mass for the load of %1").arg(load.what));
    auto* away = addTool(u'✕', tr("Take back the load of %1").arg(load.what));
    for (auto* tool : {less, more}) {
        tool->setAutoRepeat(true);
        tool->setAutoRepeatInterval(kRepeatMilliseconds);
        connect(tool, &QToolButton::clicked, this, [this, face, load, by = tool == more ? 1 : -1] {
            step(load, by);
            face->setText(faceOf(load));
        });
    }
    connect(face, &QPushButton::clicked, this, [this, entry = load.entry] { emit correctRequested(entry); });
    connect(away, &QToolButton::clicked, this, [this, entry = load.entry] { emit takeBackRequested(entry); });
    return row;
}

void DayLoads::refresh() {
    setAccessibleName(tr("Loads of the day"));
    m_none->setText(tr("No load yet today."));
    m_list->setSpacing(m_appearance.pixels(1.0));
    for (auto& [entry, row] : m_rows) row.shown.reset();
    follow();
}

void DayLoads::follow() {
    // Made anew are only the rows that changed: a day has hundreds, and the others keep place and focus.
    m_none->setVisible(m_loads.empty());
    std::map<entries::EntryId, Row> before = std::exchange(m_rows, {});
    for (std::size_t i = 0; i < m_loads.size(); ++i) {
        const LoadRow& load = m_loads[i];
        const auto known = before.find(load.entry);
        QWidget* old = known == before.end() ? nullptr : known->second.widget;
        const bool isSame = old != nullptr && known->second.shown == load;
        QWidget* row = isSame ? old : makeRow(load);
        const int place = static_cast<int>(i) + 1;  // below the words for an empty list
        if (old != nullptr) before.erase(known);
        if (m_list->itemAt(place)->widget() != row) insert(place, row);
        if (!isSame && old != nullptr) putAway(old, row);
        m_rows[load.entry] = {load, row};
    }
    for (const auto& [entry, row] : before) putAway(row.widget, nullptr);
}

void DayLoads::insert(int place, QWidget* row) {
    m_list->removeWidget(row);
    m_list->insertWidget(place, row);
    // What is read aloud and what Tab reaches follow the list too, not the order in which rows were made.
    if (QWidget* next = m_list->itemAt(place + 1)->widget()) row->stackUnder(next);
    QWidget* before = this;
    if (place > 1) {
        const QLayout* above = m_list->itemAt(place - 1)->widget()->layout();
        before = above->itemAt(above->count() - 1)->widget();
    }
    for (int i = 0; i < row->layout()->count(); ++i) {
        QWidget* button = row->layout()->itemAt(i)->widget();
        setTabOrder(before, button);
        before = button;
    }
}

void DayLoads::putAway(QWidget* row, QWidget* successor) {
    const QWidget* focused = row->focusWidget();
    if (successor != nullptr && focused != nullptr && focused->hasFocus()) {
        // The button at the same place is the same button to whoever types.
        successor->layout()->itemAt(row->layout()->indexOf(focused))->widget()->setFocus();
    }
    m_list->removeWidget(row);
    row->hide();
    row->deleteLater();  // the button that was touched may be on it
}

void DayLoads::showEvent(QShowEvent* event) {
    follow();  // what came while nobody looked
    QScrollArea::showEvent(event);
}

void DayLoads::changeEvent(QEvent* event) {
    QScrollArea::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) refresh();
}

}  // namespace treadwell::fill
