#include "app/desktop/plots/timeline.h"

#include "app/desktop/plots/timeline_plot.h"

#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>
#include <QWheelEvent>
#include <QWindow>
#include <algorithm>
#include <cmath>

namespace treadwell::plots {

namespace {

constexpr double kZoomStep = 0.8;
constexpr double kPanStep = 0.2;
constexpr double kShortestSpan = 600.0;  // s
constexpr double kWheelNotch = 120.0;    // eighths of a degree
constexpr int kFrame = 3;                // pixels round the plot, where the focus shows

}  // namespace

Timeline::Timeline(const settings::Appearance& appearance, QWidget* parent)
    : QWidget{parent},
      m_appearance{appearance},
      m_plot{new QCustomPlot},
      m_curves{std::make_unique<TimelinePlot>(*m_plot)} {
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(kFrame, kFrame, kFrame, kFrame);
    layout->addWidget(m_plot);
    setFocusPolicy(Qt::StrongFocus);
    setMinimumSize(420, 220);
    // Wheel and keys are taken here; the plot alone has neither keys nor a name.
    m_plot->setAttribute(Qt::WA_TransparentForMouseEvents);
    m_plot->setFocusPolicy(Qt::NoFocus);
    connect(&appearance, &settings::Appearance::changed, this, &Timeline::refresh);
    refresh();
}

Timeline::~Timeline() = default;

void Timeline::setView(const TimelineView& view) {
    m_view = view;
    refresh();
}

void Timeline::showAll() {
    m_zoomed = false;
    refresh();
}

Instant Timeline::shownFrom() const {
    return instantOf(m_plot->xAxis->range().lower);
}

Instant Timeline::shownTo() const {
    return instantOf(m_plot->xAxis->range().upper);
}

void Timeline::refresh() {
    setAccessibleName(tr("Timeline of the filling"));
    setAccessibleDescription(sentence());
    if (!m_zoomed) {
        const double from = secondsOf(m_view.from);
        m_plot->xAxis->setRange(from, std::max(secondsOf(m_view.to), from + kShortestSpan));
    }
    if (!isVisible()) return;  // a plot on a hidden page would be drawn all the same
    m_curves->style(m_appearance.theme(), font());
    m_curves->fill(m_view, m_appearance.units());
    m_curves->fit(size(), font());
    m_plot->replot(QCustomPlot::rpQueuedReplot);
}

void Timeline::zoom(double factor, double about) {
    const QCPRange range = m_plot->xAxis->range();
    const double from = about - (about - range.lower) * factor;
    keepWithin(from, from + range.size() * factor);
}

void Timeline::pan(double spans) {
    const QCPRange range = m_plot->xAxis->range();
    const double by = range.size() * spans;
    keepWithin(range.lower + by, range.upper + by);
}

void Timeline::keepWithin(double from, double to) {
    const double first = secondsOf(m_view.from);
    const double last = std::max(secondsOf(m_view.to), first + kShortestSpan);
    const double span = std::clamp(to - from, kShortestSpan, last - first);
    const double start = std::clamp(from, first, last - span);
    m_plot->xAxis->setRange(start, start + span);
    m_zoomed = span < last - first;
    m_plot->replot(QCustomPlot::rpQueuedReplot);
}

void Timeline::keyPressEvent(QKeyEvent* event) {
    const double middle = m_plot->xAxis->range().center();
    switch (event->key()) {
        case Qt::Key_Plus:
            return zoom(kZoomStep, middle);
        case Qt::Key_Minus:
            return zoom(1.0 / kZoomStep, middle);
        case Qt::Key_Left:
            return pan(-kPanStep);
        case Qt::Key_Right:
            return pan(kPanStep);
        case Qt::Key_Home:
            return showAll();
        default:
            QWidget::keyPressEvent(event);
    }
}

void Timeline::wheelEvent(QWheelEvent* event) {
    if (!hasFocus()) {
        event->ignore();  // the page scrolls instead
        return;
    }
    const double notches = event->angleDelta().y() / kWheelNotch;
    zoom(std::pow(kZoomStep, notches), m_plot->xAxis->pixelToCoord(event->position().x() - kFrame));
}

void Timeline::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    // The plot does not notice by itself that its window has gone to a screen of another density.
    if (QWindow* handle = window()->windowHandle(); handle != nullptr) {
        connect(handle, &QWindow::screenChanged, this, &Timeline::followScreen, Qt::UniqueConnection);
    }
    refresh();
}

void Timeline::followScreen() {
    m_plot->setBufferDevicePixelRatio(devicePixelRatioF());
    m_plot->replot(QCustomPlot::rpQueuedReplot);
}

void Timeline::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    m_curves->fit(size(), font());
}

void Timeline::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange) refresh();
}

void Timeline::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void Timeline::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

void Timeline::paintEvent(QPaintEvent*) {
    if (!hasFocus()) return;
    QPainter painter{this};
    painter.setPen(QPen{m_appearance.theme().accent, static_cast<double>(kFrame)});
    painter.drawRect(rect().adjusted(1, 1, -2, -2));
}

QString Timeline::sentence() const {
    const settings::DisplayUnits& units = m_appearance.units();
    const auto clock = [this](Instant at) { return QString::fromStdString(clockText(m_view.zone, at)); };
    AsFedMass mass;
    for (const DeliveryMark& mark : m_view.deliveries) mass += mark.mass;
    QStringList parts{
        tr("%1 to %2: %n load(s), %3.", "from, to, mass", static_cast<int>(m_view.deliveries.size()))
            .arg(clock(m_view.from), clock(m_view.to), units.text(mass))};
    if (!m_view.rates.empty()) {
        const RatePoint& last = m_view.rates.back();
        parts << tr("Delivery in the last 60 minutes %1.").arg(units.text(last.delivered));
        if (last.capacity) parts << tr("Packing capacity %1.").arg(units.text(*last.capacity));
    }
    const auto known =
        std::find_if(m_view.densities.rbegin(), m_view.densities.rend(),
                     [](const DensityPoint& point) { return point.median && point.low80 && point.high80; });
    if (known != m_view.densities.rend()) {
        parts << tr("Density %1, 80 % band %2.")
                     .arg(units.text(*known->median),
                          units.rangeText(known->low80->amount(), known->high80->amount()));
    }
    if (m_view.target) parts << tr("Target %1.").arg(units.text(*m_view.target));
    parts << tr("%n sample(s).", "", static_cast<int>(m_view.samples.size()));
    parts << tr("%n pause(s).", "", static_cast<int>(m_view.pauses.size()));
    return parts.join(u' ');
}

}  // namespace treadwell::plots
