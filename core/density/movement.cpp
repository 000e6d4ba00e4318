#include "core/density/movement.h"

#include "core/density/codes.h"

#include <algorithm>
#include <cmath>

namespace treadwell::density {

namespace {

/// (b - a) / ln(b / a), and its limit where they meet.
double logarithmicMean(double a, double b) {
    const double log = std::log(b / a);
    return std::abs(log) < 1e-9 ? 0.5 * (a + b) : (b - a) / log;
}

/// One reading at two moments.
class Comparison {
  public:
    Comparison(const Readings& before, const Readings& after, SiloReading Readings::*which)
        : m_before(before), m_after(after), m_old(before.*which), m_young(after.*which), m_which(which) {}

    [[nodiscard]] Movement movement() const {
        Movement movement{was().density.median(), is().density.median(), {}};
        double left = std::log(movement.after / movement.before);
        const double scale = logarithmicMean(movement.before.si(), movement.after.si());
        const auto add = [&](MovedBy by, double part, Message what) {
            left -= part;
            if (part != 0.0)
                movement.moves.push_back({by, DryDensity::fromSi(part * scale), std::move(what)});
        };
        addPacking(add);
        add(MovedBy::depth, depthLog(m_young) - depthLog(m_old),
            {code::movedDepth, {m_old.situation.meanDepth.amount(), m_young.situation.meanDepth.amount()}});
        add(MovedBy::measurement, m_young.options.residual.level - m_old.options.residual.level,
            measurement());
        add(isLimited() ? MovedBy::limit : MovedBy::other, left, other());
        std::stable_sort(movement.moves.begin(), movement.moves.end(), [](const Move& a, const Move& b) {
            return std::abs(a.change.si()) > std::abs(b.change.si());
        });
        return movement;
    }

  private:
    [[nodiscard]] const Estimate& was() const { return *m_old.estimate; }
    [[nodiscard]] const Estimate& is() const { return *m_young.estimate; }

    template <class Add>
    void addPacking(Add add) const {
        const double oldFactor = was().packing.factor.si, youngFactor = is().packing.factor.si;
        if (!(oldFactor > 0.0) || !(youngFactor > 0.0)) {
            // Where nobody packs no logarithm of minutes can be taken: all of the factor's part is theirs.
            add(MovedBy::packingTime,
                std::log(FieldEquation::bracket(youngFactor) / FieldEquation::bracket(oldFactor)), time());
            return;
        }
        const double elasticity = 0.5 * (was().elasticity + is().elasticity);
        const double minutes = std::log(is().packing.countedTime / was().packing.countedTime);
        const double dryMatter = std::log(m_young.situation.dryMatter / m_old.situation.dryMatter);
        const double thickness = std::log(is().layer / was().layer);
        const double factor = std::log(youngFactor / oldFactor);
        add(MovedBy::packingTime, 0.5 * elasticity * minutes, time());
        add(MovedBy::dryMatter, 0.5 * elasticity * dryMatter, sample());
        add(MovedBy::layer, -elasticity * thickness,
            {code::movedLayer, {was().layer.layerAmount(), is().layer.layerAmount()}});
        add(MovedBy::machines, elasticity * (factor - 0.5 * (minutes + dryMatter) + thickness),
            {code::movedMachines, {meanMass(m_old).amount(), meanMass(m_young).amount()}});
    }

    [[nodiscard]] static double depthLog(const SiloReading& reading) {
        return std::log(FieldEquation::meanFactor(reading.situation.meanDepth.metres()));
    }

    /// Of the machines that count, by their time.
    [[nodiscard]] static MachineMass meanMass(const SiloReading& reading) {
        const std::vector<MachineWork> work = machineWork(reading.situation);
        double mass_kg = 0.0, time = 0.0;
        for (const std::size_t i : reading.estimate->packing.counted) {
            mass_kg += work[i].mass.kilograms() * work[i].packing.si();
            time += work[i].packing.si();
        }
        return MachineMass::fromKilograms(time > 0.0 ? mass_kg / time : 0.0);
    }

    /// Minutes a tonne change because the trucks do, or because the tractors do: what changed more is said.
    [[nodiscard]] Message time() const {
        const Message minutes{code::movedPackingTime,
                              {was().packing.countedTime.amount(), is().packing.countedTime.amount()}};
        const auto& old = m_before.pace;
        const auto& young = m_after.pace;
        if (m_which != &Readings::layer || !old || !young || !(old->packing > 0.0) || !(young->packing > 0.0))
            return minutes;
        const double trucks = std::log(young->delivery / old->delivery);
        if (std::abs(trucks) <= std::abs(std::log(young->packing / old->packing))) return minutes;
        const std::int64_t loads = m_after.rolling.siloIn.loads - m_before.rolling.siloIn.loads;
        if (loads <= 0) return {code::movedNoLoad, {old->delivery.amount(), young->delivery.amount()}};
        return {trucks > 0.0 ? code::movedFasterLoads : code::movedSlowerLoads,
                {loads, old->delivery.amount(), young->delivery.amount()}};
    }

    [[nodiscard]] Message sample() const {
        const Amount old = m_old.situation.dryMatter.amount(), young = m_young.situation.dryMatter.amount();
        const auto& last = m_after.rolling.lastSample;
        const auto& known = m_before.rolling.lastSample;
        if (!last || (known && known->entry == last->entry)) return {code::movedDryMatter, {old, young}};
        return {code::movedSample, {last->reading.dryMatter.amount(), last->at, old, young}};
    }

    [[nodiscard]] Message measurement() const {
        const auto newest = [](const Readings& readings) {
            return readings.surveyed ? readings.surveyed->newest : std::nullopt;
        };
        const auto heights = newest(m_after);
        if (!heights || heights == newest(m_before)) return {code::movedMeasurement, {}};
        return {code::movedHeights, {*heights}};
    }

    [[nodiscard]] bool isLimited() const { return was().density.isLimited() || is().density.isLimited(); }

    [[nodiscard]] Message other() const {
        if (!isLimited()) return {code::movedOther, {}};
        return {code::movedLimit, {was().density.limit().amount(), is().density.limit().amount()}};
    }

    const Readings& m_before;
    const Readings& m_after;
    const SiloReading& m_old;
    const SiloReading& m_young;
    SiloReading Readings::*m_which;
};

}  // namespace

std::optional<Movement> movementOf(const Readings& before, const Readings& after,
                                   SiloReading Readings::*which) {
    if (!(before.*which).estimate || !(after.*which).estimate) return std::nullopt;
    return Comparison{before, after, which}.movement();
}

}  // namespace treadwell::density
