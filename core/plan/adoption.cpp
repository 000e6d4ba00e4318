#include "core/plan/adoption.h"

#include "core/plan/codes.h"
#include "core/plan/compare.h"
#include "core/plan/fleet_density.h"
#include "core/plan/flows.h"

#include <algorithm>

namespace treadwell::plan {

namespace {

/// Goes through the fields day by day.
class Harvest final {
  public:
    Harvest(const Inputs& inputs, const Flow& flow) : m_inputs{inputs} {
        for (std::size_t i = 0; i < inputs.grounds.size(); ++i) {
            const double loadsPerHour = flow.fields[i].days.loadsPerHour.median;
            m_delivery.push_back(inputs.haulage.load / Seconds{std::chrono::hours{1}} * loadsPerHour);
        }
        m_left = inputs.grounds.front().crop;
    }

    [[nodiscard]] bool isOver() const { return m_field == m_delivery.size(); }

    [[nodiscard]] Result<entries::PlannedDay> nextDay(LocalDay date) {
        entries::PlannedDay day;
        day.day = date;
        Seconds worked{};
        while (!isOver() && worked < m_inputs.workday) {
            const AsFedRate delivery = m_delivery[m_field];
            const AsFedMass mass = std::min(m_left, delivery * (m_inputs.workday - worked));
            day.mass += mass;
            worked += Seconds{mass.si() / delivery.si()};
            m_left -= mass;
            if (m_left > kDregs) break;
            ++m_field;
            if (!isOver()) m_left += m_inputs.grounds[m_field].crop;
        }
        day.delivery = day.mass / worked;
        for (const PlannedTractor& tractor : m_inputs.tractors)
            day.packing += worked * tractor.share.fraction();
        return density::estimate(situationOf(m_inputs, day.delivery, meanDepthOf(m_inputs)))
            .map([&](const density::Estimate& estimate) {
                day.low80 = estimate.density.low80();
                day.density = estimate.density.median();
                day.high80 = estimate.density.high80();
                return day;
            });
    }

  private:
    static constexpr AsFedMass kDregs = AsFedMass::fromKilograms(1);  // no day of its own
    const Inputs& m_inputs;
    std::vector<AsFedRate> m_delivery;  ///< by field
    std::size_t m_field = 0;
    AsFedMass m_left;  ///< on that field
};

}  // namespace

Result<std::vector<entries::PlannedDay>> daysOf(const Inputs& inputs) {
    const auto flow = flowOf(inputs);
    if (!flow) return Unexpected{flow.error()};
    Harvest harvest{inputs, *flow};
    std::vector<entries::PlannedDay> days;
    for (LocalDay date = inputs.begins; !harvest.isOver(); date = dayAfter(date)) {
        if (days.size() == kMostDays) return fail(code::planTooManyDays, "fields", std::int64_t{kMostDays});
        auto day = harvest.nextDay(date);
        if (!day) return Unexpected{day.error()};
        days.push_back(*day);
    }
    return days;
}

Result<entries::PlanAdopted> adoptionOf(const Inputs& inputs) {
    auto days = daysOf(inputs);
    if (!days) return Unexpected{days.error()};
    return summaryOf(inputs).map([&](const Summary& summary) {
        entries::PlanAdopted plan;
        plan.name = inputs.name;
        plan.inputs = toJson(inputs);
        plan.layer = inputs.layer;
        plan.figures = summary;
        plan.days = *std::move(days);
        return plan;
    });
}

}  // namespace treadwell::plan
