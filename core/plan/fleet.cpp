#include "core/plan/fleet.h"

#include "core/outcome/loss.h"
#include "core/stats/log_normal.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <limits>

namespace treadwell::plan {

namespace {

constexpr std::size_t kMostTractors = kMostListed;
constexpr std::uint32_t kOne = 1;

/// Packing factor of a choice at a delivery of 1 t/h.
double strengthOf(const FleetChoice& choice, std::uint32_t tractors) {
    std::array<density::MachineTime, kMostTractors> machines;
    std::size_t count = 0;
    for (std::uint32_t left = tractors; left != 0; left &= left - 1) {
        const auto& tractor = choice.tractors[static_cast<std::size_t>(std::countr_zero(left))];
        machines[count++] = {tractor.mass_kg, tractor.share * 60.0};
    }
    const double strength = density::strongestPrefix({machines.data(), count}).value;
    return density::packingFactorOf(strength, choice.dryMatter, choice.layer_cm);
}

double hourOf(const FleetChoice& choice, std::uint32_t tractors) {
    double hour = 0.0;
    for (std::uint32_t left = tractors; left != 0; left &= left - 1)
        hour += choice.tractors[static_cast<std::size_t>(std::countr_zero(left))].hour;
    return hour;
}

/// What the hours cost a tonne of dry matter.
double costOf(const FleetChoice& choice, double tractorHour, const FleetChoice::Trucks& trucks) {
    return (tractorHour + trucks.hour) / (trucks.delivery_t_h * choice.dryMatter);
}

/// The least loss over stretches of the packing factor from 0 up.
class LeastLoss final {
  public:
    LeastLoss(const ExpectedLoss& loss, double highest) : m_perFactor{kCells / std::max(highest, 1e-9)} {
        double before = loss.at(0.0);
        for (std::size_t i = 0; i < kCells; ++i) {
            const double after = loss.at(static_cast<double>(i + 1) / m_perFactor);
            m_least[i] = std::min(before, after) - kSlack;
            before = after;
        }
    }
    [[nodiscard]] double near(double packingFactor) const {
        return m_least[std::min(static_cast<std::size_t>(packingFactor * m_perFactor), kCells - 1)];
    }

  private:
    static constexpr std::size_t kCells = 256;
    static constexpr double kSlack = 1e-6;  // far more than the loss bends within a stretch
    std::array<double, kCells> m_least{};
    double m_perFactor;
};

}  // namespace

ExpectedLoss::ExpectedLoss(const density::CaseFrame& frame, const Prices& prices)
    : m_frame{frame},
      m_level{prices.lossLevel.fraction()},
      m_levelAt_kg_m3{prices.lossLevelAt.si()},
      m_lowest_kg_m3{outcome::lossRows().front().density.si()},
      m_highest_kg_m3{outcome::lossRows().back().density.si()} {
    const auto atLowest = outcome::lossAt(outcome::lossRows().front().density);
    const auto atHighest = outcome::lossAt(outcome::lossRows().back().density);
    m_slope_m3_kg = (*atLowest - *atHighest).fraction() / (m_highest_kg_m3 - m_lowest_kg_m3);
}

double ExpectedLoss::at(double packingFactor) const noexcept {
    const density::CaseValue value = density::evaluateCase(m_frame, packingFactor);
    const stats::LogNormal density{value.uncapped_kg_m3, std::sqrt(value.variance)};
    // The mean of the density held between the rows' ends: low + E min(X, high) - E min(X, low).
    const double held = m_lowest_kg_m3 + density.meanUpTo(std::min(m_highest_kg_m3, m_frame.limit_kg_m3)) -
                        density.meanUpTo(std::min(m_lowest_kg_m3, m_frame.limit_kg_m3));
    return std::max(0.0, m_level - m_slope_m3_kg * (held - m_levelAt_kg_m3));
}

double packingFactorOf(const FleetChoice& choice, std::uint32_t tractors, double delivery_t_h) {
    return strengthOf(choice, tractors) * std::sqrt(1.0 / delivery_t_h);
}

double marginOf(const FleetChoice& choice, const ExpectedLoss& loss, std::uint32_t tractors,
                std::size_t trucks) {
    const FleetChoice::Trucks& haulage = choice.trucks[trucks];
    const double factor = packingFactorOf(choice, tractors, haulage.delivery_t_h);
    return choice.value_per_t_dm * (1.0 - loss.at(factor)) -
           costOf(choice, hourOf(choice, tractors), haulage);
}

FoundFleet bestFleet(const FleetChoice& choice, const ExpectedLoss& loss) {
    const std::uint32_t end = kOne << choice.tractors.size();
    std::vector<double> roots;
    for (const auto& trucks : choice.trucks) roots.push_back(std::sqrt(1.0 / trucks.delivery_t_h));
    // The best part of all tractors is the best of all.
    const double strongest = strengthOf(choice, end - 1);
    const LeastLoss least{loss, strongest * *std::max_element(roots.begin(), roots.end())};

    FoundFleet best{.margin_per_t_dm = -std::numeric_limits<double>::max()};
    for (std::uint32_t fleet = 1; fleet < end; ++fleet) {
        const double strength = strengthOf(choice, fleet);
        const double hour = hourOf(choice, fleet);
        for (std::size_t i = 0; i < choice.trucks.size(); ++i) {
            const double factor = strength * roots[i];
            const double cost = costOf(choice, hour, choice.trucks[i]);
            if (choice.value_per_t_dm * (1.0 - least.near(factor)) - cost <= best.margin_per_t_dm) continue;
            const double margin = choice.value_per_t_dm * (1.0 - loss.at(factor)) - cost;
            if (margin > best.margin_per_t_dm) best = {fleet, i, margin};
        }
    }
    return best;
}

}  // namespace treadwell::plan
