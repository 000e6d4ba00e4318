#pragma once

#include <QVector>
#include <limits>

namespace treadwell::plots {

/// The points of a curve that can be told apart when it is drawn: of those within one column of pixels the
/// first, the lowest, the highest and the last, in the order of time. Drawn it looks the same.
class ThinnedCurve final {
  public:
    /// Columns of `width` (seconds, above 0) from `from` on.
    ThinnedCurve(double from, double width) : m_from{from}, m_width{width} {}

    /// In the order of time. A value that is not finite is a gap; gaps stay.
    void add(double at, double value);
    /// After the last point.
    void finish();

    [[nodiscard]] const QVector<double>& times() const noexcept { return m_times; }
    [[nodiscard]] const QVector<double>& values() const noexcept { return m_values; }

  private:
    struct Point {
        double at = 0.0;
        double value = 0.0;
    };

    void put(const Point& point);

    double m_from;
    double m_width;
    double m_column = -std::numeric_limits<double>::infinity();
    bool m_open = false;  ///< a column that holds something
    Point m_first, m_lowest, m_highest, m_last;
    QVector<double> m_times;
    QVector<double> m_values;
};

}  // namespace treadwell::plots
