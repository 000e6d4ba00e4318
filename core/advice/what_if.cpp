#include "core/advice/what_if.h"

#include "core/base/codes.h"
#include "core/density/delivery_limit.h"
#include "core/packing/passes.h"
#include "core/quantity/range.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace treadwell::advice {

namespace {

std::vector<std::size_t> orderOf(const std::vector<Tractor>& tractors) {
    std::vector<std::size_t> order(tractors.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        if (tractors[a].mass != tractors[b].mass) return tractors[a].mass > tractors[b].mass;
        return tractors[a].name < tractors[b].name;
    });
    return order;
}

bool atWork(farm::Activity activity) {
    return activity != farm::Activity::away;
}

}  // namespace

Comparer::Comparer(const AdviceSituation& situation)
    : m_situation{situation},
      m_density{densitySituation(situation)},
      m_frame{density::caseFrame(m_density, situation.options)},
      m_target{density::targetFor(situation.target, situation.dryMatter, situation.crop)},
      m_order{orderOf(situation.tractors)} {
    for (const Tractor& tractor : situation.tractors) {
        m_dearest = std::max(m_dearest, tractor.hourlyCost.value_or(CostRate{}));
    }
}

std::vector<Share> Comparer::sharesWith(const std::vector<Duty>& duties) const {
    std::vector<Share> shares;
    shares.reserve(m_density.machines.size());
    for (const density::Machine& machine : m_density.machines) shares.push_back(machine.share);
    for (const Duty& duty : duties) {
        shares[duty.tractor] = duty.activity == farm::Activity::packing ? duty.share : Share{};
    }
    return shares;
}

double Comparer::passesOf(const std::vector<Share>& shares, AsFedRate delivery, Length layer) const {
    std::vector<packing::Roller> rollers;
    rollers.reserve(shares.size());
    for (const std::size_t i : m_order) {
        const density::Machine& machine = m_density.machines[i];
        rollers.push_back({PackingIntensity::fromSi(shares[i].fraction() / delivery.si()),
                           machine.speed.value_or(packing::kUsualSpeed),
                           machine.trackWidth.value_or(packing::kUsualTrackWidth)});
    }
    return packing::passesPerLayer(rollers, crop::looseAsFed(m_situation.crop, m_situation.dryMatter), layer);
}

void Comparer::price(const Change& change, Outcome& outcome) const {
    CostRate cost;
    bool known = !change.delivery;
    for (const Duty& duty : change.duties) {
        const Tractor& tractor = m_situation.tractors[duty.tractor];
        const bool before = atWork(tractor.activity);
        const bool after = atWork(duty.activity);
        if (before == after) continue;
        known = known && tractor.hourlyCost.has_value();
        // Unknown hours must not win a comparison: dear when added, worth nothing when saved.
        const CostRate hour = tractor.hourlyCost.value_or(after ? m_dearest : CostRate{});
        cost += after ? hour : -hour;
    }
    outcome.costForRanking = cost.si();
    if (known) outcome.cost = cost;
}

Outcome Comparer::outcomeOf(const Change& change) const {
    const std::vector<Share> shares = sharesWith(change.duties);
    const AsFedRate delivery = change.delivery.value_or(m_situation.delivery);
    const double minutesPerTonne = 60.0 / delivery.tonnesPerHour();

    std::vector<density::MachineTime> fleet;
    fleet.reserve(shares.size());
    Share all;
    for (const std::size_t i : m_order) {
        fleet.push_back({m_situation.tractors[i].mass.kilograms(), shares[i].fraction() * minutesPerTonne});
        all += shares[i];
    }
    const double strength = density::strongestPrefix(fleet).value;
    const auto valueAt = [&](Length layer) {
        return density::evaluateCase(
            m_frame,
            density::packingFactorOf(strength, m_frame.dryMatter, density::heldLayer(layer).centimetres()));
    };

    const Length now = m_situation.layer.value_or(density::kAssumedLayer);
    const Length then = change.layer.value_or(now);
    const density::CaseValue counted = valueAt(std::max(now, then));
    Outcome outcome{.density = DryDensity::fromSi(counted.density_kg_m3),
                    .chance = Chance::fromFraction(counted.chance()),
                    .upTo = {},
                    .saturated = m_target.limit.saturation && counted.uncapped_kg_m3 >= m_frame.limit_kg_m3,
                    .passes = passesOf(shares, delivery, then),
                    .packing = PackingIntensity::fromSi(all.fraction() / delivery.si()),
                    .cost = {}};
    if (then < now) outcome.upTo = DryDensity::fromSi(valueAt(then).density_kg_m3);
    price(change, outcome);
    return outcome;
}

std::optional<AsFedRate> Comparer::limitWith(const std::vector<Duty>& duties) const {
    density::Situation situation = m_density;
    const std::vector<Share> shares = sharesWith(duties);
    for (std::size_t i = 0; i < shares.size(); ++i) situation.machines[i].share = shares[i];
    const auto limit = density::deliveryLimit(situation, m_situation.options, m_situation.wantedChance);
    if (!limit || limit->outcome != density::DeliveryLimit::Outcome::limited) return std::nullopt;
    return AsFedRate::fromTonnesPerHour(std::floor(limit->rate.tonnesPerHour()));
}

std::optional<AsFedRate> Comparer::slowerDelivery(const std::vector<Duty>& duties) const {
    const auto limit = limitWith(duties);
    if (!limit || *limit < AsFedRate::fromTonnesPerHour(1) || *limit >= m_situation.delivery)
        return std::nullopt;
    return limit;
}

std::optional<AsFedRate> Comparer::steadyDelivery() const {
    const auto limit = limitWith({});
    if (!limit || *limit < AsFedRate::fromTonnesPerHour(1) || *limit >= m_situation.delivery * kHeldPart)
        return std::nullopt;
    return std::min(*limit, m_situation.delivery);
}

Result<Outcome> whatIf(const AdviceSituation& situation, const Change& change) {
    if (const auto checked = check(situation); !checked) return tl::unexpected{checked.error()};
    for (const Duty& duty : change.duties) {
        if (duty.tractor >= situation.tractors.size()) {
            return fail(code::valueOutOfRange, "tractor", static_cast<std::int64_t>(duty.tractor),
                        std::int64_t{0}, static_cast<std::int64_t>(situation.tractors.size()) - 1);
        }
        const auto share = within(duty.share, Share{}, Share::fromFraction(1), "share");
        if (!share) return tl::unexpected{share.error()};
    }
    if (change.layer) {
        const auto layer = within(*change.layer, Length::fromCentimetres(1), Length::fromMetres(2), "layer");
        if (!layer) return tl::unexpected{layer.error()};
    }
    if (change.delivery) {
        const auto delivery = within(*change.delivery, AsFedRate::fromTonnesPerHour(0.1),
                                     AsFedRate::fromTonnesPerHour(5000), "delivery");
        if (!delivery) return tl::unexpected{delivery.error()};
    }
    return Comparer{situation}.outcomeOf(change);
}

}  // namespace treadwell::advice
