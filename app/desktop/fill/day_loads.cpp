#include "app/desktop/fill/day_loads.h"

#include "app/desktop/fill/fill_presenter.h"
#include "app/desktop/widgets/page_change.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

namespace treadwell::fill {

namespace {

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
        const QString time = QString::fromStdString(clockText(season.zone(), tipped->at));
        rows.push_back({tipped->entry,
                        (tipped->load.timeSpread ? DayLoads::tr("about %1").arg(time) : time) + u' ' +
                            loadName(*tipped, season.farm(), speech.units()),
                        aboutOf(*tipped, season.farm())});
    }
    return rows;
}

DayLoads::DayLoads(const settings::Appearance& appearance, QWidget* parent)
    : QScrollArea{parent}, m_appearance{appearance} {
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(&appearance, &settings::Appearance::changed, this, &DayLoads::refresh);
    refresh();
}

void DayLoads::setLoads(const std::vector<LoadRow>& loads) {
    if (loads == m_loads) return;  // a rebuilt list would lose place and focus
    m_loads = loads;
    refresh();
}

QWidget* DayLoads::makeRow(const LoadRow& load) {
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout{row};
    layout->setContentsMargins(0, 0, 0, 0);
    QString text = load.about.isEmpty() ? load.what : load.what + u'\n' + load.about;
    auto* face = new QPushButton{text.replace(QStringLiteral("&"), QStringLiteral("&&"))};
    face->setStyleSheet(QStringLiteral("text-align: left; padding: 2px 4px"));
    face->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    face->setAccessibleName(tr("Correct the load of %1").arg(load.what));
    face->setToolTip(load.what + u' ' + load.about);
    auto* away = new QToolButton;
    away->setText(QString{u'✕'});
    away->setAccessibleName(tr("Take back the load of %1").arg(load.what));
    away->setToolTip(away->accessibleName());
    const int side = m_appearance.pixels(settings::kControlMillimetres);
    face->setMinimumHeight(side);
    away->setFixedSize(side, side);
    layout->addWidget(face, 1);
    layout->addWidget(away);
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
