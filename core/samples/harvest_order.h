#pragma once

#include "core/samples/dry_down.h"

#include <string>
#include <vector>

namespace treadwell::samples {

/// A field that is still to be cut.
struct FieldToCut {
    DryDown dryDown;
    AsFedMass mass;      ///< it will yield
    std::string hybrid;  ///< between fields of one hybrid there is no change; empty: not known, a change
};

/// What the harvest can do.
struct HarvestPlan {
    LocalDay first;                  ///< day on which cutting may begin
    AsFedMass perDay;                ///< capacity
    double changeDays = 0.0;         ///< lost between fields of different hybrids
    std::vector<LocalDay> rainDays;  ///< on which nothing is cut
    DryMatter goalLow = DryMatter::fromPercent(34);
    DryMatter goalHigh = DryMatter::fromPercent(36);
};

/// One field in the order.
struct FieldTurn {
    std::size_t field = 0;  ///< its place in the list given
    LocalDay first;
    LocalDay last;
    DryMatter dryMatter;  ///< mean of what is cut, by mass
    GoalDistance distance;
};

struct HarvestOrder {
    std::vector<FieldTurn> turns;
    DryMatter siloMean;             ///< by mass
    double tonnePointsOutside = 0;  ///< what the order is chosen by
    double tonnesOutside = 0;       ///< cut on days on which the field lies outside the goal
    bool everyOrderTried = true;
};

/// The order of fields that keeps the dry matter inside the goal: the least sum over tonnes of points outside
/// it, a point too dry counting twice (too dry is worse than slightly wet, published; the two is assumed).
/// Every order is tried up to eight fields; beyond, the order by the day each reaches the goal's middle, then
/// exchanges of neighbours until none helps. Cutting begins on `first` and goes on at capacity; it does not
/// wait for a field to dry. Errors: readingsMissing without fields; valueNotFinite; valueOutOfRange for a
/// mass of 0.1-100,000 t, a capacity of 1-20,000 t a day, 0-10 days a change, goals 15-70 % with low below
/// high; harvestTooLong where a field is not cut within 200 days.
[[nodiscard]] Result<HarvestOrder> bestOrder(const std::vector<FieldToCut>& fields, const HarvestPlan& plan);

/// The same for an order that is given: places in the list. Errors: as bestOrder; orderWrong unless each
/// field stands in it once.
[[nodiscard]] Result<HarvestOrder> reckonOrder(const std::vector<FieldToCut>& fields, const HarvestPlan& plan,
                                               const std::vector<std::size_t>& order);

}  // namespace treadwell::samples
