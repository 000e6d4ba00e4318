#include "app/desktop/fill/day_trace.h"

#include "core/density/delivery_limit.h"

#include <algorithm>

namespace treadwell::fill {

namespace {

constexpr std::chrono::minutes kGrid{10};  // between the loads, since in a pause the rate falls on
// Points nearer than this cannot be told apart in a plot of a day.
constexpr std::chrono::minutes kClosestPoints{2};

TracePoint pointAt(density::ReadingsHistory& history, const season::Season& season, farm::SiloId silo,
                   Instant at) {
    const density::Readings readings = history.at(season, silo, at);
    TracePoint point;
    point.at = at;
    point.laid = true;
    point.delivered = readings.rolling.rateInWindow;
    if (!readings.layer.estimate) return point;
    const density::Estimate& layer = *readings.layer.estimate;
    point.density = {layer.density.median(), layer.density.low80(), layer.density.high80()};
    point.target = layer.target.density;
    const auto limit = density::deliveryLimit(readings.layer.situation, readings.layer.options,
                                              season.farm().rules.wantedChance);
    if (limit && limit->outcome != density::DeliveryLimit::Outcome::anyDelivery) point.capacity = limit->rate;
    return point;
}

TracePoint ratePointAt(const season::Season& season, farm::SiloId silo, Instant at) {
    TracePoint point;
    point.at = at;
    point.delivered = season::rollingAt(season, silo, at).rateInWindow;
    return point;
}

/// The moment before which the loads of two states of a day saw the same: that of the first fact that
/// differs.
Instant sameUntil(const season::Day& old, const season::Day& young) {
    if (!(old.before == young.before) || old.farm() != young.farm()) return Instant::min();
    const auto differs =
        std::mismatch(old.facts.begin(), old.facts.end(), young.facts.begin(), young.facts.end()).second;
    return differs == young.facts.end() ? Instant::max() : (*differs)->happened();
}

Instant holdsUntil(const DayTrace& previous, const season::Season& season, farm::SiloId silo, Instant now) {
    if (previous.silo != silo || previous.season.zone() != season.zone()) return Instant::min();
    const LocalDay today = season.zone().dayOf(now);
    const season::Day* old = previous.season.day(today);
    const season::Day* young = season.day(today);
    if (old == nullptr || young == nullptr) return Instant::min();
    return old == young ? Instant::max() : sameUntil(*old, *young);
}

struct Moment {
    Instant at;
    bool load;
};

std::vector<Moment> momentsOf(const season::Season& season, farm::SiloId silo, Instant now) {
    const Instant midnight = season.zone().startOf(season.zone().dayOf(now));
    std::vector<Moment> moments;
    const auto fillUp = [&moments](Instant until) {
        while (!moments.empty() && until - moments.back().at >= kGrid + kClosestPoints) {
            moments.push_back({moments.back().at + kGrid, false});
        }
    };
    for (const season::LoadTipped* load : season::loadsOf(season, silo, midnight, now)) {
        fillUp(load->at);
        if (moments.empty() || load->at - moments.back().at >= kClosestPoints) {
            moments.push_back({load->at, true});
        }
    }
    fillUp(now);
    return moments;
}

}  // namespace

DayTrace traceAt(const season::Season& season, farm::SiloId silo, Instant now, const DayTrace& previous) {
    const Instant holds = holdsUntil(previous, season, silo, now);
    DayTrace trace{season, silo, {}, previous.history};
    if (!trace.history) trace.history = std::make_shared<density::ReadingsHistory>();
    density::ReadingsHistory& history = *trace.history;
    auto known = previous.points.begin();
    for (const Moment& moment : momentsOf(season, silo, now)) {
        if (!moment.load) {
            trace.points.push_back(ratePointAt(season, silo, moment.at));
            continue;
        }
        known = std::find_if(known, previous.points.end(),
                             [&moment](const TracePoint& point) { return point.at >= moment.at; });
        const bool stillHolds = known != previous.points.end() && known->at == moment.at && moment.at < holds;
        trace.points.push_back(stillHolds ? *known : pointAt(history, season, silo, moment.at));
    }
    trace.points.push_back(pointAt(history, season, silo, now));
    return trace;
}

}  // namespace treadwell::fill
