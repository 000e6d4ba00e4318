#include "core/stats/minimise.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace treadwell::stats {

namespace {

using Place = std::vector<double>;

struct Corner {
    Place at;
    double value;
};

class Simplex {
  public:
    Simplex(const std::function<double(const Place&)>& function, const Place& start, double step)
        : m_function(function) {
        m_corners.push_back(evaluated(start));
        for (std::size_t i = 0; i < start.size(); ++i) {
            Place moved = start;
            moved[i] += step;
            m_corners.push_back(evaluated(std::move(moved)));
        }
        sort();
    }

    /// One move: the worst corner is mirrored, stretched or drawn in; if nothing helps, all are drawn in.
    void move() {
        const Place middle = middleOfBest();
        Corner& worst = m_corners.back();
        Corner mirrored = evaluated(along(middle, worst.at, -1.0));
        const double secondWorst = m_corners[m_corners.size() - 2].value;
        if (mirrored.value < m_corners.front().value) {
            Corner stretched = evaluated(along(middle, worst.at, -2.0));
            worst = stretched.value < mirrored.value ? std::move(stretched) : std::move(mirrored);
        } else if (mirrored.value < secondWorst) {
            worst = std::move(mirrored);
        } else {
            const bool outside = mirrored.value < worst.value;
            Corner drawn = evaluated(along(middle, worst.at, outside ? -0.5 : 0.5));
            if (drawn.value < std::min(mirrored.value, worst.value)) {
                worst = std::move(drawn);
            } else {
                for (std::size_t i = 1; i < m_corners.size(); ++i)
                    m_corners[i] = evaluated(along(m_corners.front().at, m_corners[i].at, 0.5));
            }
        }
        sort();
    }

    [[nodiscard]] bool isSmall() const {
        const Place& best = m_corners.front().at;
        for (const Corner& corner : m_corners) {
            for (std::size_t i = 0; i < best.size(); ++i) {
                if (std::abs(corner.at[i] - best[i]) > 1e-9 * (1e-3 + std::abs(best[i]))) return false;
            }
        }
        return true;
    }
    [[nodiscard]] const Corner& best() const { return m_corners.front(); }
    [[nodiscard]] int evaluations() const { return m_evaluations; }

  private:
    Corner evaluated(Place at) {
        ++m_evaluations;
        const double value = m_function(at);
        return {std::move(at), std::isfinite(value) ? value : std::numeric_limits<double>::max()};
    }
    [[nodiscard]] static Place along(const Place& from, const Place& to, double part) {
        Place at = from;
        for (std::size_t i = 0; i < at.size(); ++i) at[i] += part * (to[i] - from[i]);
        return at;
    }
    [[nodiscard]] Place middleOfBest() const {
        Place middle(m_corners.front().at.size(), 0.0);
        for (std::size_t corner = 0; corner + 1 < m_corners.size(); ++corner) {
            for (std::size_t i = 0; i < middle.size(); ++i)
                middle[i] += m_corners[corner].at[i] / static_cast<double>(m_corners.size() - 1);
        }
        return middle;
    }
    void sort() {
        std::stable_sort(m_corners.begin(), m_corners.end(),
                         [](const Corner& a, const Corner& b) { return a.value < b.value; });
    }

    const std::function<double(const Place&)>& m_function;
    std::vector<Corner> m_corners;
    int m_evaluations = 0;
};

}  // namespace

Minimum minimised(const std::function<double(const Place&)>& function, const Place& start, double step,
                  int mostEvaluations) {
    Minimum minimum{start, 0.0, 0, false};
    for (int search = 0; search < 2; ++search) {
        Simplex simplex{function, minimum.at, step};
        while (!simplex.isSmall() && minimum.evaluations + simplex.evaluations() < mostEvaluations)
            simplex.move();
        minimum = {simplex.best().at, simplex.best().value, minimum.evaluations + simplex.evaluations(),
                   simplex.isSmall()};
    }
    return minimum;
}

}  // namespace treadwell::stats
