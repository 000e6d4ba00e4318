#pragma once

#include "core/base/farm_zone.h"

#include <qcustomplot.h>

namespace treadwell::plots {

/// Ticks at round times of the farm's wall clock over an axis in seconds since the epoch; midnight shows the
/// date.
class WallClockTicker final : public QCPAxisTicker {
  public:
    void setZone(const FarmZone& zone) { m_zone = zone; }

  protected:
    double getTickStep(const QCPRange& range) override;
    int getSubTickCount(double tickStep) override;
    QVector<double> createTickVector(double tickStep, const QCPRange& range) override;
    QString getTickLabel(double tick, const QLocale& locale, QChar formatChar, int precision) override;

  private:
    FarmZone m_zone;
};

[[nodiscard]] double secondsOf(Instant at);
[[nodiscard]] Instant instantOf(double seconds);

}  // namespace treadwell::plots
