#include "app/desktop/plots/dry_matter_chart.h"

#include "app/desktop/plots/axis_look.h"
#include "app/desktop/plots/wall_clock_ticker.h"

#include <QEvent>
#include <QVBoxLayout>
#include <algorithm>

namespace treadwell::plots {

namespace {

constexpr double kHour = 3600.0;  // s
constexpr double kRoom = 2.0;     // points above and below what is shown

}  // namespace

DryMatterChart::DryMatterChart(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent},
      m_appearance{appearance},
      m_plot{new QCustomPlot},
      m_believed{m_plot->addGraph()},
      m_low{m_plot->addGraph()},
      m_high{m_plot->addGraph()},
      m_samples{m_plot->addGraph()},
      m_goalLow{m_plot->addGraph()},
      m_goalHigh{m_plot->addGraph()} {
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_plot);
    setMinimumSize(320, 200);
    setObjectName(QStringLiteral("dryMatterChart"));
    m_plot->setAttribute(Qt::WA_TransparentForMouseEvents);
    m_plot->setFocusPolicy(Qt::NoFocus);
    m_samples->setLineStyle(QCPGraph::lsNone);
    legendAbove(*m_plot);
    for (QCPGraph* second : {m_high, m_goalHigh}) second->removeFromLegend();
    connect(&appearance, &settings::Appearance::changed, this, &DryMatterChart::refresh);
    refresh();
}

void DryMatterChart::setView(const DryMatterView& view) {
    m_view = view;
    refresh();
}

void DryMatterChart::fill() {
    const double from = secondsOf(m_view.from), to = std::max(secondsOf(m_view.to), from + kHour);
    double least = m_view.goalLow.percent(), most = m_view.goalHigh.percent();
    QVector<double> x, mean, low, high, sampleX, sampleY;
    for (const BelievedLoad& load : m_view.loads) {
        const double half = load.dryMatter.half80().percent();
        x.append(secondsOf(load.at));
        mean.append(load.dryMatter.mean.percent());
        low.append(mean.back() - half);
        high.append(mean.back() + half);
        least = std::min(least, low.back());
        most = std::max(most, high.back());
    }
    for (const samples::TimedDryMatter& sample : m_view.samples) {
        sampleX.append(secondsOf(sample.at));
        sampleY.append(sample.dryMatter.percent());
        least = std::min(least, sampleY.back());
        most = std::max(most, sampleY.back());
    }
    m_believed->setData(x, mean, true);
    m_low->setData(x, low, true);
    m_high->setData(x, high, true);
    m_samples->setData(sampleX, sampleY, true);
    m_goalLow->setData({from, to}, {m_view.goalLow.percent(), m_view.goalLow.percent()});
    m_goalHigh->setData({from, to}, {m_view.goalHigh.percent(), m_view.goalHigh.percent()});
    m_plot->xAxis->setRange(from, to);
    m_plot->yAxis->setRange(least - kRoom, most + kRoom);
}

void DryMatterChart::refresh() {
    setAccessibleName(tr("Dry matter of the day"));
    setAccessibleDescription(sentence());
    if (!isVisible()) return;  // a plot on a hidden page would be drawn all the same
    const auto ticker = QSharedPointer<WallClockTicker>::create();
    ticker->setZone(m_view.zone);
    m_plot->xAxis->setTicker(ticker);
    m_plot->setLocale(m_appearance.units().locale());
    m_plot->yAxis->setLabel(tr("dry matter, %"));
    m_believed->setName(tr("loads"));
    m_low->setName(tr("80 % band"));
    m_samples->setName(tr("samples"));
    m_goalLow->setName(tr("goal"));
    fill();
    style();
    m_plot->replot(QCustomPlot::rpQueuedReplot);
}

void DryMatterChart::style() {
    const settings::Theme& theme = m_appearance.theme();
    styleAxes(*m_plot, theme, font());
    m_believed->setPen(QPen{theme.density, theme.lineWidth + 1.0});
    for (QCPGraph* end : {m_low, m_high}) end->setPen(QPen{theme.density, theme.lineWidth, Qt::DotLine});
    const QPen mark{theme.porosity, theme.lineWidth};
    m_samples->setPen(mark);
    m_samples->setScatterStyle(QCPScatterStyle{QCPScatterStyle::ssDiamond, mark, theme.panel, 11.0});
    for (QCPGraph* end : {m_goalLow, m_goalHigh})
        end->setPen(QPen{theme.target, theme.lineWidth, Qt::DashDotLine});
}

QString DryMatterChart::sentence() const {
    const settings::DisplayUnits& units = m_appearance.units();
    QStringList parts{tr("%n sample(s).", "", static_cast<int>(m_view.samples.size()))};
    if (!m_view.loads.empty()) {
        const samples::Belief& last = m_view.loads.back().dryMatter;
        parts << tr("The last load is taken for %1 (+-%2).")
                     .arg(units.text(last.mean), units.text(last.half80()));
    }
    parts << tr("Goal %1.").arg(units.rangeText(m_view.goalLow.amount(), m_view.goalHigh.amount()));
    return parts.join(u' ');
}

void DryMatterChart::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
}

void DryMatterChart::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange) refresh();
}

}  // namespace treadwell::plots
