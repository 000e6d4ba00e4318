#include "app/desktop/plots/wall_clock_ticker.h"

#include "app/desktop/settings/dates.h"

#include <QDate>
#include <array>
#include <cmath>

namespace treadwell::plots {

namespace {

constexpr double kMinute = 60.0;
constexpr double kDay = 86400.0;
constexpr int kMostTicks = 10;
constexpr double kMicroseconds = 1e6;

}  // namespace

double secondsOf(Instant at) {
    return static_cast<double>(toMicroseconds(at)) / kMicroseconds;
}

Instant instantOf(double seconds) {
    return instantFromMicroseconds(static_cast<std::int64_t>(std::llround(seconds * kMicroseconds)));
}

double WallClockTicker::getTickStep(const QCPRange& range) {
    for (const double minutes : {1.0, 2.0, 5.0, 10.0, 15.0, 30.0, 60.0, 120.0, 180.0, 360.0, 720.0}) {
        if (range.size() / (minutes * kMinute) <= kMostTicks) return minutes * kMinute;
    }
    return kDay * std::max(1.0, std::ceil(range.size() / kDay / kMostTicks));
}

int WallClockTicker::getSubTickCount(double) {
    return 0;
}

QVector<double> WallClockTicker::createTickVector(double tickStep, const QCPRange& range) {
    // Counted in local time, so that the ticks stay round where the offset is not a whole step; one offset
    // serves all ticks, and beyond a change of the clocks the labels still tell the time that it was.
    const std::chrono::duration<double> offset = m_zone.offsetAt(instantOf(range.lower));
    QVector<double> ticks;
    for (double local = std::ceil((range.lower + offset.count()) / tickStep) * tickStep;
         local - offset.count() <= range.upper; local += tickStep) {
        ticks.append(local - offset.count());
    }
    return ticks;
}

QString WallClockTicker::getTickLabel(double tick, const QLocale& locale, QChar, int) {
    const Instant at = instantOf(tick);
    const std::string clock = clockText(m_zone, at);
    if (clock != "00:00") return QString::fromStdString(clock);
    return settings::dayText(m_zone.dayOf(at), locale);
}

}  // namespace treadwell::plots
