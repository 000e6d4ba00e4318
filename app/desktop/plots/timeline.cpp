#include "app/desktop/plots/timeline.h"

#include "app/desktop/plots/timeline_plot.h"

#include <QAccessible>
#include <QGestureEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QPinchGesture>
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
constexpr double kAtEdge = 1.0;          // s

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
    setMouseTracking(true);
    setAttribute(Qt::WA_AcceptTouchEvents);
    grabGesture(Qt::PinchGesture);
    setMinimumSize(200, 120);
    // Wheel and keys are taken here; the plot alone has neither keys nor a name.
    m_plot->setAttribute(Qt::WA_TransparentForMouseEvents);
    m_plot->setFocusPolicy(Qt::NoFocus);
    connect(&appearance, &settings::Appearance::changed, this, [this] {
        restyle();
        refill();
    });
    refill();
}

Timeline::~Timeline() = default;

void Timeline::setView(const TimelineView& view) {
    const QCPRange shown = m_plot->xAxis->range();
    const double went = secondsOf(view.to) - secondsOf(m_view.to);
    const bool live = m_zoomed && went > 0.0 && shown.upper >= secondsOf(m_view.to) - kAtEdge;
    m_view = view;
    if (live) m_plot->xAxis->setRange(shown.lower + went, shown.upper + went);
    refill();
}

void Timeline::showAll() {
    m_zoomed = false;
    refill();
}

Instant Timeline::shownFrom() const {
    return instantOf(m_plot->xAxis->range().lower);
}

Instant Timeline::shownTo() const {
    return instantOf(m_plot->xAxis->range().upper);
}

void Timeline::restyle() {
    if (!isVisible()) return;
    m_curves->style(m_appearance.theme(), font());
}

void Timeline::refill() {
    setAccessibleName(tr("Timeline of the filling"));
    describe();
    if (!m_zoomed) {
        const double from = secondsOf(m_view.from);
        m_plot->xAxis->setRange(from, std::max(secondsOf(m_view.to), from + kShortestSpan));
    }
    if (!isVisible()) return;  // a plot on a hidden page would be drawn all the same
    m_curves->fill(m_view, m_appearance.units());
    m_curves->fit(size(), font());
    m_plot->replot(QCustomPlot::rpQueuedReplot);
}

void Timeline::describe() {
    setAccessibleDescription(m_cursor ? sentenceAt(*m_cursor) : sentence());
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
    if (isVisible()) m_curves->fillShown(m_view, m_appearance.units());
    m_plot->replot(QCustomPlot::rpQueuedReplot);
}

void Timeline::keyPressEvent(QKeyEvent* event) {
    const QCPRange shown = m_plot->xAxis->range();
    const bool atCursor = m_cursor && shown.contains(secondsOf(*m_cursor));
    const double middle = atCursor ? secondsOf(*m_cursor) : shown.center();
    switch (event->key()) {
        case Qt::Key_Plus:
            return zoom(kZoomStep, middle);
        case Qt::Key_Minus:
            return zoom(1.0 / kZoomStep, middle);
        case Qt::Key_PageUp:
            return pan(-kPanStep);
        case Qt::Key_PageDown:
            return pan(kPanStep);
        case Qt::Key_Left:
            return stepCursor(-1);
        case Qt::Key_Right:
            return stepCursor(1);
        case Qt::Key_End:
            return moveCursor(m_view.to);
        case Qt::Key_Home:
            return showAll();
        default:
            QWidget::keyPressEvent(event);
    }
}

bool Timeline::event(QEvent* event) {
    if (event->type() != QEvent::Gesture) return QWidget::event(event);
    auto* pinch = static_cast<QPinchGesture*>(static_cast<QGestureEvent*>(event)->gesture(Qt::PinchGesture));
    if (pinch == nullptr || !(pinch->scaleFactor() > 0.0)) return QWidget::event(event);
    const QPoint centre = mapFromGlobal(pinch->centerPoint().toPoint());
    zoom(1.0 / pinch->scaleFactor(), m_plot->xAxis->pixelToCoord(centre.x() - kFrame));
    return true;
}

void Timeline::mousePressEvent(QMouseEvent* event) {
    pointAt(event->position().x());
}

void Timeline::mouseMoveEvent(QMouseEvent* event) {
    pointAt(event->position().x());
}

void Timeline::pointAt(double pixel) {
    const double at = m_plot->xAxis->pixelToCoord(pixel - kFrame);
    moveCursor(instantOf(std::clamp(at, secondsOf(m_view.from), secondsOf(m_view.to))));
}

void Timeline::stepCursor(int direction) {
    // From reading to reading: there the curves bend.
    const Instant from = m_cursor.value_or(m_view.to);
    std::optional<Instant> next;
    if (direction > 0) {
        const auto later = std::find_if(m_view.rates.begin(), m_view.rates.end(),
                                        [from](const RatePoint& point) { return point.at > from; });
        if (later != m_view.rates.end()) next = later->at;
    } else {
        const auto earlier = std::find_if(m_view.rates.rbegin(), m_view.rates.rend(),
                                          [from](const RatePoint& point) { return point.at < from; });
        if (earlier != m_view.rates.rend()) next = earlier->at;
    }
    if (next) moveCursor(*next);
}

void Timeline::moveCursor(Instant at) {
    m_cursor = at;
    const QCPRange shown = m_plot->xAxis->range();
    const double seconds = secondsOf(at);
    if (!shown.contains(seconds)) {
        const double by = seconds - shown.center();
        keepWithin(shown.lower + by, shown.upper + by);
    }
    describe();
    if (QAccessible::isActive()) {
        QAccessibleEvent event{this, QAccessible::DescriptionChanged};
        QAccessible::updateAccessibility(&event);
    }
    m_curves->showCursor(seconds, sentenceAt(at));
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
    restyle();
    refill();
}

void Timeline::followScreen() {
    m_plot->setBufferDevicePixelRatio(devicePixelRatioF());
    m_plot->replot(QCustomPlot::rpQueuedReplot);
}

void Timeline::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    m_curves->fit(size(), font());
    if (isVisible()) m_curves->fillShown(m_view, m_appearance.units());
}

void Timeline::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::LanguageChange && event->type() != QEvent::FontChange) return;
    restyle();
    refill();
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
    if (!m_view.advice.empty())
        parts << tr("Advice: %n time(s).", "", static_cast<int>(m_view.advice.size()));
    return parts.join(u' ');
}

QString Timeline::sentenceAt(Instant at) const {
    const settings::DisplayUnits& units = m_appearance.units();
    QStringList parts{QString::fromStdString(clockText(m_view.zone, at))};
    const auto load = std::find_if(m_view.deliveries.begin(), m_view.deliveries.end(),
                                   [at](const DeliveryMark& mark) { return mark.at == at; });
    if (load != m_view.deliveries.end()) parts << tr("load %1").arg(units.text(load->mass));
    const auto until = [at](const auto& list) {
        return std::upper_bound(list.begin(), list.end(), at,
                                [](Instant moment, const auto& point) { return moment < point.at; });
    };
    if (const auto rate = until(m_view.rates); rate != m_view.rates.begin()) {
        const RatePoint& point = *std::prev(rate);
        parts << tr("delivery %1").arg(units.text(point.delivered));
        if (point.capacity) parts << tr("capacity %1").arg(units.text(*point.capacity));
    }
    if (const auto density = until(m_view.densities); density != m_view.densities.begin()) {
        const DensityPoint& point = *std::prev(density);
        if (point.median && point.low80 && point.high80) {
            parts << tr("density %1, 80 % band %2")
                         .arg(units.text(*point.median),
                              units.rangeText(point.low80->amount(), point.high80->amount()));
        }
    }
    for (const Pause& pause : m_view.pauses) {
        if (pause.from <= at && at <= pause.to) parts << tr("pause");
    }
    return parts.join(QStringLiteral(", "));
}

QString adviceName(entries::AdviceDecision decision) {
    switch (decision) {
        case entries::AdviceDecision::accepted:
            return Timeline::tr("advice accepted");
        case entries::AdviceDecision::declined:
            return Timeline::tr("advice declined");
        case entries::AdviceDecision::shown:
            break;
    }
    return Timeline::tr("advice shown");
}

}  // namespace treadwell::plots
