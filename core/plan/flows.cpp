#include "core/plan/flows.h"

#include "core/plan/codes.h"
#include "core/plan/fleet_density.h"

#include <algorithm>
#include <cmath>

namespace treadwell::plan {

namespace {

/// The median density of a day by its delivery; the tractors and the silo stay.
class DayDensity final {
  public:
    explicit DayDensity(const Inputs& inputs) : m_inputs{inputs} {
        const density::Situation situation = situationOf(inputs, inputs.harvester.rate, meanDepthOf(inputs));
        m_frame = density::caseFrame(situation, {});
        m_layer_cm = density::layerUsed(situation).centimetres();
    }

    [[nodiscard]] double at(AsFedRate delivery) const {
        std::vector<density::MachineTime> machines;
        for (const PlannedTractor& tractor : m_inputs.tractors)
            machines.push_back(
                {tractor.mass.kilograms(), tractor.share.fraction() * 60.0 / delivery.tonnesPerHour()});
        std::sort(machines.begin(), machines.end(),
                  [](const auto& a, const auto& b) { return a.mass_kg > b.mass_kg; });
        const double strength = density::strongestPrefix(machines).value;
        const double factor = density::packingFactorOf(strength, m_frame.dryMatter, m_layer_cm);
        return density::evaluateCase(m_frame, factor).density_kg_m3;
    }

  private:
    const Inputs& m_inputs;
    density::CaseFrame m_frame{};
    double m_layer_cm = 0.0;
};

std::optional<int> trucksWanted(const Inputs& inputs, const PlannedField& field) {
    constexpr int kDays = 60;
    for (int trucks = 1; trucks <= kMostTrucks; ++trucks) {
        Round round = roundOf(inputs, field);
        round.trucks = trucks;
        std::vector<double> waiting;
        for (const SimulatedDay& day : simulateDays(round, kDays, inputs.draw))
            waiting.push_back(day.harvesterWaiting);
        if (bandOf(waiting).median <= kAcceptedWaiting) return trucks;
    }
    return std::nullopt;
}

Unexpected roundTooLong(const Inputs& inputs, const PlannedField& field, const Chain& chain) {
    return fail(code::planRoundTooLong, "fields", field.name, durationAmount(chain.round),
                durationAmount(inputs.workday));
}

Result<FieldFlow> fieldFlow(const Inputs& inputs, const PlannedField& field, AsFedRate packing) {
    const Chain chain = chainFrom(inputs, field, packing);
    const DaysBand days = daysBandOf(inputs, field, inputs.haulage.trucks, inputs.days);
    const AsFedMass load = inputs.haulage.load;
    const AsFedRate delivery = load / Seconds{std::chrono::hours{1}} * days.loadsPerHour.median;
    if (!(delivery > AsFedRate{})) return roundTooLong(inputs, field, chain);
    auto estimated = density::estimate(situationOf(inputs, delivery, meanDepthOf(inputs)));
    if (!estimated) return Unexpected{estimated.error()};
    const double busy = queueBusyShare(inputs.haulage.trucks, chain.fill / (chain.round - chain.fill));
    std::optional<DaysBand> fewer;
    if (inputs.haulage.trucks > 1) fewer = daysBandOf(inputs, field, inputs.haulage.trucks - 1, inputs.days);
    return FieldFlow{.field = field.name,
                     .chain = chain,
                     .queueLoadsPerHour = busy * (Seconds{std::chrono::hours{1}} / chain.fill),
                     .days = days,
                     .oneFewer = fewer,
                     .trucksWanted = trucksWanted(inputs, field),
                     .estimate = *std::move(estimated),
                     .harvestDays = field.crop.si() / (delivery.si() * inputs.workday.count())};
}

}  // namespace

Result<void> checkRounds(const Inputs& inputs) {
    for (const PlannedField& field : inputs.grounds) {
        const Chain chain = chainFrom(inputs, field, inputs.harvester.rate);
        if (chain.round * 2.0 > inputs.workday) return roundTooLong(inputs, field, chain);
    }
    return {};
}

DaysBand daysBandOf(const Inputs& inputs, const PlannedField& field, int trucks, int days) {
    Round round = roundOf(inputs, field);
    round.trucks = trucks;
    const DayDensity density{inputs};
    std::vector<double> loads, waiting, truckWaiting, minutes, densities, passes;
    DaysBand band;
    for (const SimulatedDay& day : simulateDays(round, days, inputs.draw)) {
        loads.push_back(day.loads * (Seconds{std::chrono::hours{1}} / inputs.workday));
        waiting.push_back(day.harvesterWaiting);
        truckWaiting.push_back(day.truckWaiting_s / conversion::kSecondsPerMinute);
        if (day.loads == 0) {
            ++band.daysWithoutLoad;
            continue;
        }
        const AsFedRate delivery = inputs.haulage.load * day.loads / inputs.workday;
        minutes.push_back(packingAt(inputs, delivery).minutesPerTonne());
        densities.push_back(density.at(delivery));
        passes.push_back(passesAt(inputs, delivery));
    }
    band.loadsPerHour = bandOf(loads);
    band.harvesterWaiting = bandOf(waiting);
    band.truckWaiting_min = bandOf(truckWaiting);
    if (minutes.empty()) return band;
    band.minutesPerTonne = bandOf(minutes);
    band.density_kg_dm_m3 = bandOf(densities);
    band.passes = bandOf(passes);
    return band;
}

Result<Flow> flowOf(const Inputs& inputs) {
    const auto usable = validate(inputs).and_then([&] { return checkRounds(inputs); });
    if (!usable) return Unexpected{usable.error()};
    const auto packing = packingLimit(inputs);
    if (!packing) return Unexpected{packing.error()};
    Flow flow{*packing, {}};
    for (const PlannedField& field : inputs.grounds) {
        auto found = fieldFlow(inputs, field, packing->rate);
        if (!found) return Unexpected{found.error()};
        flow.fields.push_back(*std::move(found));
    }
    return flow;
}

}  // namespace treadwell::plan
