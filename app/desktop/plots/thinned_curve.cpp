#include "app/desktop/plots/thinned_curve.h"

#include <cmath>

namespace treadwell::plots {

void ThinnedCurve::put(const Point& point) {
    if (!m_times.isEmpty() && m_times.last() == point.at && m_values.last() == point.value) return;
    m_times.append(point.at);
    m_values.append(point.value);
}

void ThinnedCurve::finish() {
    if (!m_open) return;
    m_open = false;
    const bool lowFirst = m_lowest.at <= m_highest.at;
    put(m_first);
    put(lowFirst ? m_lowest : m_highest);
    put(lowFirst ? m_highest : m_lowest);
    put(m_last);
}

void ThinnedCurve::add(double at, double value) {
    if (!std::isfinite(value)) {
        finish();
        if (m_values.isEmpty() || std::isfinite(m_values.last()))
            put({at, std::numeric_limits<double>::quiet_NaN()});
        return;
    }
    const double column = std::floor((at - m_from) / m_width);
    if (!m_open || column != m_column) {
        finish();
        m_open = true;
        m_column = column;
        m_first = m_lowest = m_highest = {at, value};
    }
    m_last = {at, value};
    if (value < m_lowest.value) m_lowest = m_last;
    if (value > m_highest.value) m_highest = m_last;
}

}  // namespace treadwell::plots
