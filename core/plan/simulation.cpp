#include "core/plan/simulation.h"

#include "core/stats/bisect.h"

#include <algorithm>
#include <cmath>
#include <queue>
#include <stdexcept>

namespace treadwell::plan {

namespace {

/// The power p of E^p, E exponential, that has this coefficient of variation; Weibull's is
/// sqrt(gamma(1 + 2p) / gamma(1 + p)^2 - 1), which rises with p.
double powerFor(double variation) {
    if (variation <= 0.0) return 0.0;
    if (variation >= 1.0) return 1.0;
    const auto square = [](double power) {
        const double mean = std::tgamma(1.0 + power);
        return std::tgamma(1.0 + 2.0 * power) / (mean * mean) - 1.0;
    };
    return stats::bisected(square, variation * variation, 0.0, 1.0);
}

struct Arrival {
    double at_s;
    bool atSilo;
    friend bool operator>(const Arrival& a, const Arrival& b) { return a.at_s > b.at_s; }
};

/// A day under way.
class Day final {
  public:
    Day(const Round& round, std::mt19937_64 random)
        : m_round{round},
          m_random{random},
          m_placeFree_s(static_cast<std::size_t>(round.tippingPlaces), 0.0),
          m_spread_s(static_cast<std::size_t>(round.heaps), 0.0) {
        for (int i = 0; i < round.trucks; ++i) m_arrivals.push({0.0, false});
    }

    SimulatedDay run() {
        const double end_s = m_round.day.count();
        while (m_arrivals.top().at_s < end_s) {
            const Arrival next = m_arrivals.top();
            m_arrivals.pop();
            next.atSilo ? tip(next.at_s) : fill(next.at_s);
        }
        m_idle_s += std::max(0.0, end_s - m_harvesterFree_s);
        return {.loads = m_loads,
                .harvesterWaiting = m_idle_s / end_s,
                .truckWaiting_s = m_started > 0 ? m_waited_s / m_started : 0.0};
    }

  private:
    void fill(double at_s) {
        m_idle_s += std::max(0.0, at_s - m_harvesterFree_s);
        const double start_s = std::max(at_s, m_harvesterFree_s);
        m_waited_s += start_s - at_s;
        ++m_started;
        m_harvesterFree_s = start_s + m_round.fill.draw_s(m_random);
        m_arrivals.push({m_harvesterFree_s + m_round.road.draw_s(m_random), true});
    }

    void tip(double at_s) {
        double& place_s = *std::min_element(m_placeFree_s.begin(), m_placeFree_s.end());
        double& heap_s = m_spread_s[m_tipped++ % m_spread_s.size()];  // of the load `heaps` before
        const double start_s = std::max({at_s, place_s, heap_s});
        m_waited_s += start_s - at_s;
        place_s = start_s + m_round.tip.draw_s(m_random);
        m_spreaderFree_s = std::max(place_s, m_spreaderFree_s) + m_round.spread.draw_s(m_random);
        heap_s = m_spreaderFree_s;
        if (place_s <= m_round.day.count()) ++m_loads;
        m_arrivals.push({place_s + m_round.elsewhere.count() + m_round.road.draw_s(m_random), false});
    }

    const Round& m_round;
    std::mt19937_64 m_random;
    std::priority_queue<Arrival, std::vector<Arrival>, std::greater<>> m_arrivals;
    std::vector<double> m_placeFree_s;
    std::vector<double> m_spread_s;  ///< when the last loads will be spread, in a ring
    std::size_t m_tipped = 0;
    double m_harvesterFree_s = 0.0, m_spreaderFree_s = 0.0, m_idle_s = 0.0, m_waited_s = 0.0;
    int m_loads = 0, m_started = 0;
};

}  // namespace

VaryingTime::VaryingTime(Seconds mean, double variation)
    : m_scale_s{mean.count() / std::tgamma(1.0 + powerFor(variation))}, m_power{powerFor(variation)} {}

double VaryingTime::draw_s(std::mt19937_64& random) const {
    if (m_power == 0.0) return m_scale_s;
    const double unit = (static_cast<double>(random() >> 11U) + 0.5) * 0x1p-53;  // never 0 or 1
    const double exponential = -std::log(unit);
    return m_scale_s * (m_power == 1.0 ? exponential : std::pow(exponential, m_power));
}

Round roundOf(const Inputs& inputs, const PlannedField& field) {
    const Haulage& haulage = inputs.haulage;
    const AsFedRate harvest = inputs.harvester.rate * inputs.harvester.chopping.fraction();
    return {.trucks = haulage.trucks,
            .fill = {Seconds{haulage.load.si() / harvest.si()}, inputs.variation.fill},
            .road = {Seconds{field.distance.si() / haulage.speed.si()}, inputs.variation.road},
            .tip = {haulage.tip, inputs.variation.tip},
            .spread = {Seconds{haulage.load.si() / inputs.spreading.rate.si()}, inputs.variation.tip},
            .elsewhere = haulage.elsewhere,
            .tippingPlaces = haulage.tippingPlaces,
            .heaps = inputs.spreading.heaps,
            .day = inputs.workday};
}

SimulatedDay simulateDay(const Round& round, std::mt19937_64 random) {
    return Day{round, random}.run();
}

std::vector<SimulatedDay> simulateDays(const Round& round, int days, std::int64_t draw) {
    std::vector<SimulatedDay> all;
    for (int day = 0; day < days; ++day) {
        const auto place = static_cast<std::uint64_t>(draw) * 1'000'003U + static_cast<std::uint64_t>(day);
        all.push_back(simulateDay(round, std::mt19937_64{place}));
    }
    return all;
}

Band bandOf(std::vector<double> values) {
    if (values.empty()) throw std::invalid_argument{"a band of nothing"};
    std::sort(values.begin(), values.end());
    const auto at = [&](double part) {
        const double place = part * static_cast<double>(values.size() - 1);
        const auto below = static_cast<std::size_t>(place);
        const std::size_t above = std::min(below + 1, values.size() - 1);
        return values[below] + (place - static_cast<double>(below)) * (values[above] - values[below]);
    };
    return {.low80 = at(0.1), .median = at(0.5), .high80 = at(0.9)};
}

}  // namespace treadwell::plan
