#include "app/desktop/plots/sieve_chart.h"

#include "app/desktop/plots/axis_look.h"

#include <QEvent>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

namespace treadwell::plots {

namespace {

constexpr int kSteps = 60;  // of the curve
constexpr double kHundred = 100.0;
constexpr double kSmallestMillimetres = 1.0;
constexpr double kWidestMillimetres = 30.0;

using samples::kChopBounds;

/// What should pass each bound: the least and the most.
std::array<samples::PartRange, kChopBounds.size()> passing(const samples::ChopRanges& ranges) {
    const Share all = Share::fromFraction(1);
    return {{{all - ranges.on19.high, all - ranges.on19.low},
             {std::max(Share{}, all - ranges.on19.high - ranges.on8.high),
              all - ranges.on19.low - ranges.on8.low},
             {ranges.below4.low, ranges.below4.high}}};
}

}  // namespace

SieveChart::SieveChart(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent},
      m_appearance{appearance},
      m_plot{new QCustomPlot},
      m_curve{m_plot->addGraph()},
      m_sieves{m_plot->addGraph()} {
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_plot);
    setMinimumSize(320, 200);
    setObjectName(QStringLiteral("sieveChart"));
    m_plot->setAttribute(Qt::WA_TransparentForMouseEvents);
    m_plot->setFocusPolicy(Qt::NoFocus);
    for (QCPGraph*& range : m_ranges) range = m_plot->addGraph();
    m_sieves->setLineStyle(QCPGraph::lsNone);
    legendAbove(*m_plot);
    m_sieves->removeFromLegend();
    for (std::size_t i = 1; i < m_ranges.size(); ++i) m_ranges[i]->removeFromLegend();
    m_plot->xAxis->setScaleType(QCPAxis::stLogarithmic);
    m_plot->xAxis->setTicker(QSharedPointer<QCPAxisTickerText>::create());
    m_plot->yAxis->setRange(0.0, kHundred);
    connect(&appearance, &settings::Appearance::changed, this, &SieveChart::refresh);
    refresh();
}

void SieveChart::setView(const SieveView& view) {
    m_view = view;
    refresh();
}

void SieveChart::fillCurve() {
    QVector<double> x, y, sieveX, sieveY;
    if (m_view.parts && !m_view.parts->openings.empty()) {
        const auto& openings = m_view.parts->openings;
        const double low = std::log(openings.back().millimetres());
        const double high = std::log(openings.front().millimetres());
        for (int step = 0; step <= kSteps; ++step) {
            const double mm = std::exp(low + (high - low) * step / kSteps);
            x.append(mm);
            y.append(kHundred - m_view.parts->coarserThanAny(Length::fromMillimetres(mm)).percent());
        }
        for (const Length opening : openings) {
            sieveX.append(opening.millimetres());
            sieveY.append(kHundred - m_view.parts->coarserThanAny(opening).percent());
        }
    }
    m_curve->setData(x, y, true);
    m_sieves->setData(sieveX, sieveY);
}

void SieveChart::fillRanges() {
    const auto wanted = passing(m_view.ranges);
    const auto ticks = QSharedPointer<QCPAxisTickerText>::create();
    for (std::size_t i = 0; i < kChopBounds.size(); ++i) {
        const double mm = kChopBounds[i].millimetres();
        m_ranges[i]->setData({mm, mm}, {wanted[i].low.percent(), wanted[i].high.percent()});
        ticks->addTick(mm, m_appearance.units().text(kChopBounds[i].chopAmount()));
    }
    double low = kSmallestMillimetres, high = kWidestMillimetres;
    if (m_view.parts && !m_view.parts->openings.empty()) {
        low = std::min(low, m_view.parts->openings.back().millimetres());
        high = std::max(high, m_view.parts->openings.front().millimetres() * 1.1);
    }
    m_plot->xAxis->setTicker(ticks);
    m_plot->xAxis->setRange(low, high);
}

void SieveChart::refresh() {
    setAccessibleName(tr("Where the sample lies between the sieves"));
    setAccessibleDescription(sentence());
    if (!isVisible()) return;  // a plot on a hidden page would be drawn all the same
    m_plot->setLocale(m_appearance.units().locale());
    m_plot->yAxis->setLabel(tr("passes, %"));
    m_curve->setName(tr("this sample"));
    m_ranges.front()->setName(tr("what should pass"));
    fillCurve();
    fillRanges();
    style();
    m_plot->replot(QCustomPlot::rpQueuedReplot);
}

void SieveChart::style() {
    const settings::Theme& theme = m_appearance.theme();
    styleAxes(*m_plot, theme, font());
    m_curve->setPen(QPen{theme.density, theme.lineWidth + 1.0});
    const QPen mark{theme.density, theme.lineWidth};
    m_sieves->setPen(mark);
    m_sieves->setScatterStyle(QCPScatterStyle{QCPScatterStyle::ssDisc, mark, theme.panel, 9.0});
    QPen range{theme.target, theme.lineWidth * 3.0};
    range.setCapStyle(Qt::FlatCap);
    for (QCPGraph* bar : m_ranges) bar->setPen(range);
}

QString SieveChart::sentence() const {
    if (!m_view.parts) return tr("No sieve test yet.");
    const settings::DisplayUnits& units = m_appearance.units();
    const samples::JudgedChop judged = samples::judge(*m_view.parts, m_view.ranges);
    const std::array names{tr("on 19 mm"), tr("on 8 mm"), tr("on 4 mm"), tr("below")};
    QStringList parts;
    for (std::size_t i = 0; i < judged.parts.size(); ++i) {
        const samples::JudgedPart& part = judged.parts[i];
        parts << tr("%1 %2, should be %3", "where, part, range")
                     .arg(names[i], units.text(part.part),
                          units.rangeText(part.range.low.amount(), part.range.high.amount()));
    }
    return parts.join(QStringLiteral("; ")) + u'.';
}

void SieveChart::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
}

void SieveChart::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange) refresh();
}

}  // namespace treadwell::plots
