#pragma once

#include "core/plan/inputs.h"

#include <cstdint>
#include <random>
#include <span>

namespace treadwell::plan {

/// Draws times of a Weibull distribution of a given mean and coefficient of variation (0-1): 0 is the mean
/// itself, 1 exponential. By inversion, so that one random number makes one time.
class VaryingTime {
  public:
    VaryingTime() = default;
    VaryingTime(Seconds mean, double variation);

    [[nodiscard]] double draw_s(std::mt19937_64& random) const;

  private:
    double m_scale_s = 0.0;
    double m_power = 0.0;  ///< 1 / shape of the distribution; 0: fixed
};

/// How trucks go round between one harvester and one silo.
struct Round {
    int trucks = 1;
    VaryingTime fill;
    VaryingTime road;  ///< one way
    VaryingTime tip;
    VaryingTime spread;  ///< of a load
    Seconds elsewhere{};
    int tippingPlaces = 1;
    int heaps = 1;  ///< loads that may lie unspread
    Seconds day{};
};

[[nodiscard]] Round roundOf(const Inputs& inputs, const PlannedField& field);

/// One day of it.
struct SimulatedDay {
    int loads = 0;                ///< tipped by the day's end
    double harvesterWaiting = 0;  ///< part of the day
    double truckWaiting_s = 0;    ///< a load, at the harvester and at the silo together
};

/// Simulates a day by events: the day begins with all trucks at the harvester; whoever comes first is served
/// first; a truck tips when a place is free and fewer than `heaps` loads lie unspread. The same `random`
/// gives the same day.
[[nodiscard]] SimulatedDay simulateDay(const Round& round, std::mt19937_64 random);

/// `days` days, each with random numbers of its own that depend on `draw` and its place alone.
[[nodiscard]] std::vector<SimulatedDay> simulateDays(const Round& round, int days, std::int64_t draw);

/// Over the days: the middle and the ends of the central 80 %.
struct Band {
    double low80 = 0.0;
    double median = 0.0;
    double high80 = 0.0;
};

/// `values` not empty (std::invalid_argument); the order does not matter.
[[nodiscard]] Band bandOf(std::vector<double> values);

}  // namespace treadwell::plan
