#include "core/samples/harvest_order.h"

#include "core/quantity/range.h"
#include "core/samples/codes.h"
#include "core/samples/item.h"

#include <algorithm>
#include <numeric>

namespace treadwell::samples {

namespace {

using LocalDays = std::chrono::local_days;
using Order = std::vector<std::size_t>;

constexpr int kMostDays = 200;
constexpr std::size_t kTriedInFull = 8;
constexpr double kDryCountsFor = 2.0;

/// Cuts the fields one after the other, day by day.
class Cutting {
  public:
    Cutting(const std::vector<FieldToCut>& fields, const HarvestPlan& plan) : m_fields(fields), m_plan(plan) {
        beginDay(0);
    }

    /// False where the days run out.
    bool cut(std::size_t field, const FieldToCut* before) {
        if (before != nullptr && (before->hybrid.empty() || before->hybrid != m_fields[field].hybrid)) {
            if (!lose(m_plan.changeDays)) return false;
        }
        FieldTurn turn;
        turn.field = field;
        DryMass dry;
        AsFedMass left = m_fields[field].mass;
        bool begun = false;
        while (left > AsFedMass{}) {
            if (!haveTime()) return false;
            const LocalDay today = day();
            if (!begun) turn.first = today;
            begun = true;
            turn.last = today;
            const AsFedMass now = std::min(left, m_plan.perDay * m_dayLeft);
            count(now, m_fields[field].dryDown.on(today).mean, dry);
            m_dayLeft -= now / m_plan.perDay;
            left = now < left ? left - now : AsFedMass{};
        }
        turn.dryMatter = dry / m_fields[field].mass;
        turn.distance = distanceFromGoal(turn.dryMatter, m_plan.goalLow, m_plan.goalHigh);
        m_result.turns.push_back(turn);
        return true;
    }

    [[nodiscard]] HarvestOrder result() const {
        HarvestOrder result = m_result;
        result.siloMean = m_dry / m_mass;
        return result;
    }

  private:
    static constexpr double kRounding = 1e-9;

    [[nodiscard]] LocalDay day() const {
        return LocalDay{LocalDays{m_plan.first} + std::chrono::days{m_day}};
    }

    void beginDay(int number) {
        m_day = number;
        m_dayLeft = std::ranges::find(m_plan.rainDays, day()) == m_plan.rainDays.end() ? 1.0 : 0.0;
    }

    bool haveTime() {
        while (m_dayLeft < kRounding) {
            if (m_day + 1 >= kMostDays) return false;
            beginDay(m_day + 1);
        }
        return true;
    }

    bool lose(double days) {
        while (days > kRounding) {
            if (!haveTime()) return false;
            const double now = std::min(days, m_dayLeft);
            m_dayLeft -= now;
            days -= now;
        }
        return true;
    }

    void count(AsFedMass mass, DryMatter dryMatter, DryMass& dry) {
        const GoalDistance distance = distanceFromGoal(dryMatter, m_plan.goalLow, m_plan.goalHigh);
        const bool isDry = distance.side == GoalSide::dry || distance.side == GoalSide::veryDry;
        m_result.tonnePointsOutside += mass.tonnes() * distance.off.percent() * (isDry ? kDryCountsFor : 1.0);
        if (distance.side != GoalSide::within) m_result.tonnesOutside += mass.tonnes();
        dry += mass * dryMatter;
        m_dry += mass * dryMatter;
        m_mass += mass;
    }

    const std::vector<FieldToCut>& m_fields;
    const HarvestPlan& m_plan;
    HarvestOrder m_result;
    int m_day = 0;
    double m_dayLeft = 0.0;
    DryMass m_dry;
    AsFedMass m_mass;
};

std::optional<HarvestOrder> reckon(const std::vector<FieldToCut>& fields, const HarvestPlan& plan,
                                   const Order& order) {
    Cutting cutting{fields, plan};
    const FieldToCut* before = nullptr;
    for (const std::size_t field : order) {
        if (!cutting.cut(field, before)) return std::nullopt;
        before = &fields[field];
    }
    return cutting.result();
}

Result<void> check(const std::vector<FieldToCut>& fields, const HarvestPlan& plan) {
    if (fields.empty()) return fail(code::readingsMissing, "fields");
    const auto tonnes = [](double t) { return AsFedMass::fromTonnes(t); };
    const auto percent = [](double value) { return DryMatter::fromPercent(value); };
    for (std::size_t i = 0; i < fields.size(); ++i) {
        const auto held =
            holdsWithin(fields[i].mass, tonnes(0.1), tonnes(100'000), item("fields", i) + ".mass");
        if (!held) return held;
    }
    return firstFailure(holdsWithin(plan.perDay, tonnes(1), tonnes(20'000), "perDay"),
                        holdsWithin(plan.changeDays, 0.0, 10.0, "changeDays"),
                        holdsWithin(plan.goalHigh, percent(15), percent(70), "goalHigh"),
                        holdsWithin(plan.goalLow, percent(15), plan.goalHigh, "goalLow"));
}

Result<HarvestOrder> reckoned(std::optional<HarvestOrder> reckoned) {
    if (!reckoned) return fail(code::harvestTooLong, "perDay", std::int64_t{kMostDays});
    return *std::move(reckoned);
}

bool isBetter(const std::optional<HarvestOrder>& candidate, const std::optional<HarvestOrder>& best) {
    return candidate && (!best || candidate->tonnePointsOutside < best->tonnePointsOutside);
}

/// The order by the day on which each field reaches the goal's middle, were it a straight line.
Order byReadiness(const std::vector<FieldToCut>& fields, const HarvestPlan& plan) {
    const DryMatter middle = (plan.goalLow + plan.goalHigh) / 2.0;
    std::vector<double> onFirst;
    for (const FieldToCut& field : fields)
        onFirst.push_back((middle - field.dryDown.on(plan.first).mean).fraction() /
                          std::max(1e-9, field.dryDown.rate.si()));
    Order order(fields.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&](std::size_t field) { return onFirst[field]; });
    return order;
}

}  // namespace

Result<HarvestOrder> bestOrder(const std::vector<FieldToCut>& fields, const HarvestPlan& plan) {
    if (const auto checked = check(fields, plan); !checked) return Unexpected{checked.error()};
    Order order = byReadiness(fields, plan);
    std::optional<HarvestOrder> best = reckon(fields, plan, order);
    if (fields.size() <= kTriedInFull) {
        std::ranges::sort(order);
        do {
            if (auto candidate = reckon(fields, plan, order); isBetter(candidate, best))
                best = std::move(candidate);
        } while (std::ranges::next_permutation(order).found);
        return reckoned(std::move(best));
    }
    for (bool helped = true; helped;) {
        helped = false;
        for (std::size_t i = 0; i + 1 < order.size(); ++i) {
            std::swap(order[i], order[i + 1]);
            if (auto candidate = reckon(fields, plan, order); isBetter(candidate, best)) {
                best = std::move(candidate);
                helped = true;
            } else {
                std::swap(order[i], order[i + 1]);
            }
        }
    }
    if (best) best->everyOrderTried = false;
    return reckoned(std::move(best));
}

Result<HarvestOrder> reckonOrder(const std::vector<FieldToCut>& fields, const HarvestPlan& plan,
                                 const std::vector<std::size_t>& order) {
    if (const auto checked = check(fields, plan); !checked) return Unexpected{checked.error()};
    Order sorted = order, all(fields.size());
    std::ranges::sort(sorted);
    std::iota(all.begin(), all.end(), std::size_t{0});
    if (sorted != all) return fail(code::orderWrong, "order", std::int64_t(fields.size()));
    return reckoned(reckon(fields, plan, order));
}

}  // namespace treadwell::samples
