#include "app/desktop/fill/day_loads.h"

#include "app/desktop/fill/fill_presenter.h"
#include "app/desktop/fill/load_dialog.h"
#include "app/desktop/widgets/page_change.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

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
    : QScrollArea{parent}, m_appearance{appearance} {
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_still.setSingleShot(true);
    m_still.setInterval(kStill);
    connect(&m_still, &QTimer::timeout, this, &DayLoads::giveStepped);
    connect(&appearance, &settings::Appearance::changed, this, &DayLoads::refresh);
    refresh();
}

void DayLoads::setLoads(const std::vector<LoadRow>& loads) {
    if (loads == m_loads) return;  // a rebuilt list would lose place and focus
    m_loads = loads;
    if (!m_stepping) refresh();  // a button that is held must not go
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
    refresh();
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
    auto* page = new QWidget;
    auto* list = new QVBoxLayout{page};
    list->setContentsMargins(0, 0, 0, 0);
    list->setSpacing(m_appearance.pixels(1.0));
    if (m_loads.empty()) list->addWidget(new QLabel{tr("No load yet today.")});
    for (const LoadRow& load : m_loads) list->addWidget(makeRow(load));
    list->addStretch(1);
    widgets::changePage(*this, page);
}

void DayLoads::changeEvent(QEvent* event) {
    QScrollArea::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) refresh();
}

}  // namespace treadwell::fill
