#include "core/plan/pays.h"

#include "core/outcome/loss.h"
#include "core/plan/chain.h"
#include "core/plan/flows.h"
#include "core/plan/machine_hour.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace treadwell::plan {

namespace {

/// Everything the money of a plan is reckoned from.
class Ledger final {
  public:
    explicit Ledger(const Inputs& inputs)
        : m_inputs{inputs}, m_loss{frameOf(inputs), inputs.prices}, m_order(inputs.tractors.size()) {
        std::iota(m_order.begin(), m_order.end(), 0U);
        std::stable_sort(m_order.begin(), m_order.end(), [&](std::size_t a, std::size_t b) {
            return inputs.tractors[a].mass > inputs.tractors[b].mass;
        });
        const density::Situation situation = situationOf(inputs, inputs.harvester.rate, meanDepthOf(inputs));
        m_choice.layer_cm = density::layerUsed(situation).centimetres();
        m_choice.dryMatter = inputs.dryMatter.fraction();
        m_choice.value_per_t_dm = inputs.prices.crop_per_tonne_dm;
        for (const std::size_t i : m_order) {
            const PlannedTractor& tractor = inputs.tractors[i];
            m_choice.tractors.push_back({tractor.mass.kilograms(), tractor.share.fraction(),
                                         hourOf(tractor.price, inputs.prices).total().perHour()});
        }
        addTrucks();
    }

    [[nodiscard]] Pay pay() const {
        Pay pay{moneyOf(allTractors(), plannedTrucks()), bestMoney(), {}, oneByOne(), {}};
        for (const PlannedTractor& tractor : m_inputs.tractors)
            pay.tractorHours.push_back(hourOf(tractor.price, m_inputs.prices).total());
        pay.compared = allTractors() * m_choice.trucks.size();
        return pay;
    }

  private:
    static density::CaseFrame frameOf(const Inputs& inputs) {
        return density::caseFrame(situationOf(inputs, inputs.harvester.rate, meanDepthOf(inputs)), {});
    }
    [[nodiscard]] std::uint32_t allTractors() const { return (1U << m_choice.tractors.size()) - 1; }
    [[nodiscard]] std::size_t plannedTrucks() const {
        return static_cast<std::size_t>(m_inputs.haulage.trucks) - 1;
    }

    /// Mean delivery over all fields with each number of trucks, by simulation.
    [[nodiscard]] double delivery_t_h(int trucks) const {
        constexpr int kDays = 30;
        double hours = 0.0, tonnes = 0.0;
        for (const PlannedField& field : m_inputs.grounds) {
            Round round = roundOf(m_inputs, field);
            round.trucks = trucks;
            double loads = 0.5 / kDays;  // a day on which nothing comes is slow, not endless
            for (const SimulatedDay& day : simulateDays(round, kDays, m_inputs.draw)) loads += day.loads;
            const double perHour = loads / kDays * (Seconds{std::chrono::hours{1}} / m_inputs.workday);
            tonnes += field.crop.tonnes();
            hours += field.crop.tonnes() / (perHour * m_inputs.haulage.load.tonnes());
        }
        return tonnes / hours;
    }

    /// One truck and more, beyond the plan as long as the harvester still waits for them.
    void addTrucks() {
        int most = m_inputs.haulage.trucks;
        for (const PlannedField& field : m_inputs.grounds)
            most = std::max(most, chainFrom(m_inputs, field, m_inputs.harvester.rate).trucksToKeepUp + 3);
        for (int trucks = 1; trucks <= std::min(most, kMostTrucks); ++trucks) {
            const CostRate hour =
                m_inputs.harvester.hourlyCost + m_inputs.haulage.hourlyCost * static_cast<double>(trucks);
            m_choice.trucks.push_back({trucks, delivery_t_h(trucks), hour.perHour()});
        }
    }

    [[nodiscard]] FleetMoney moneyOf(std::uint32_t tractors, std::size_t trucks) const {
        const FleetChoice::Trucks& haulage = m_choice.trucks[trucks];
        Inputs chosen = m_inputs;
        chosen.tractors.clear();
        Fleet fleet;
        double hour = haulage.hour;
        for (std::size_t i = 0; i < m_order.size(); ++i) {
            if ((tractors >> i & 1U) == 0) continue;
            fleet.tractors.push_back(m_order[i]);
            chosen.tractors.push_back(m_inputs.tractors[m_order[i]]);
            hour += m_choice.tractors[i].hour;
        }
        std::sort(fleet.tractors.begin(), fleet.tractors.end());
        fleet.trucks = haulage.count;
        fleet.delivery = AsFedRate::fromTonnesPerHour(haulage.delivery_t_h);
        fleet.hour = CostRate::fromPerHour(hour);
        fleet.margin_per_t_dm = marginOf(m_choice, m_loss, tractors, trucks);
        fleet.loss = Loss::fromFraction(lossOf(tractors, haulage.delivery_t_h));
        auto estimated = density::estimate(situationOf(chosen, fleet.delivery, meanDepthOf(chosen)));
        return {std::move(fleet), estimated.value()};
    }

    [[nodiscard]] FleetMoney bestMoney() const {
        const FoundFleet found = bestFleet(m_choice, m_loss);
        return moneyOf(found.tractors, found.trucks);
    }

    [[nodiscard]] double lossOf(std::uint32_t tractors, double delivery) const {
        return m_loss.at(packingFactorOf(m_choice, tractors, delivery));
    }

    [[nodiscard]] OneMore joining(std::size_t place) const {
        const std::uint32_t with = (2U << place) - 1, without = (1U << place) - 1;
        const double hour = m_choice.tractors[place].hour;
        const auto margin = [&](double delivery) {
            return delivery * m_choice.dryMatter * m_choice.value_per_t_dm *
                       (lossOf(without, delivery) - lossOf(with, delivery)) -
                   hour;
        };
        const double planned = m_choice.trucks[plannedTrucks()].delivery_t_h;
        OneMore more{
            .tractor = m_inputs.tractors[m_order[place]].name,
            .hour = CostRate::fromPerHour(hour),
            .breakEven = breakEvenOf(CostRate::fromPerHour(hour), AsFedRate::fromTonnesPerHour(planned),
                                     m_inputs.prices.cropPerTonne(m_inputs.dryMatter)),
            .gain = DryDensity::fromSi(medianAt(with, planned) - medianAt(without, planned)),
            .margin_per_h = margin(planned),
            .paysFrom = {}};
        for (int delivery = 10; delivery <= kFastestDelivery.tonnesPerHour(); ++delivery) {
            if (margin(delivery) < 0.0) continue;
            more.paysFrom = AsFedRate::fromTonnesPerHour(delivery);
            break;
        }
        return more;
    }

    [[nodiscard]] double medianAt(std::uint32_t tractors, double delivery) const {
        return density::evaluateCase(frameOf(m_inputs), packingFactorOf(m_choice, tractors, delivery))
            .density_kg_m3;
    }

    [[nodiscard]] std::vector<OneMore> oneByOne() const {
        std::vector<OneMore> all;
        for (std::size_t place = 0; place < m_order.size(); ++place) all.push_back(joining(place));
        return all;
    }

    const Inputs& m_inputs;
    ExpectedLoss m_loss;
    std::vector<std::size_t> m_order;  ///< heaviest first
    FleetChoice m_choice;
};

}  // namespace

BreakEven breakEvenOf(CostRate hour, AsFedRate delivery, double value_per_tonne) noexcept {
    const double part = hour.perHour() / (delivery.tonnesPerHour() * value_per_tonne);
    const auto rows = outcome::lossRows();
    const auto at = [](DryDensity density) { return outcome::lossAt(density)->fraction(); };
    const DryDensity span = rows.back().density - rows.front().density;
    const double slope = (at(rows.front().density) - at(rows.back().density)) / span.si();
    return {.loss = Loss::fromFraction(part), .density = DryDensity::fromSi(part / slope)};
}

Result<Pay> payOf(const Inputs& inputs) {
    const auto usable = validate(inputs).and_then([&] { return checkRounds(inputs); });
    if (!usable) return Unexpected{usable.error()};
    return Ledger{inputs}.pay();
}

}  // namespace treadwell::plan
