#include "core/density/situation.h"

#include "core/base/number_text.h"
#include "core/density/codes.h"
#include "core/quantity/range.h"
#include "core/stats/square.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace treadwell::density {

namespace {

/// Gathers range checks and keeps the first that fails.
class Checks final {
  public:
    template <class V>
    Checks& hold(V value, V lowest, V highest, std::string field) {
        if (m_held) m_held = holdsWithin(value, lowest, highest, std::move(field));
        return *this;
    }
    void fault(Unexpected error) {
        if (m_held) m_held = std::move(error);
    }
    [[nodiscard]] Result<void> result() const { return m_held; }

  private:
    Result<void> m_held;
};

std::string indexed(std::string_view list, std::size_t i, std::string_view part = {}) {
    return std::string{list} + '[' + shortestText(static_cast<double>(i)) + ']' + std::string{part};
}

constexpr PackingIntensity minutesPerTonne(double value) {
    return PackingIntensity::fromMinutesPerTonne(value);
}

void checkWork(const Situation& situation, Checks& checks) {
    if (const auto* rate = std::get_if<AsFedRate>(&situation.work)) {
        checks.hold(*rate, AsFedRate::fromTonnesPerHour(0.1), AsFedRate::fromTonnesPerHour(5000), "rate");
    } else if (const auto* time = std::get_if<PackingIntensity>(&situation.work)) {
        checks.hold(*time, PackingIntensity{}, minutesPerTonne(1000), "packingTime");
    } else {
        const auto& packed = std::get<PackedMass>(situation.work);
        checks.hold(packed.mass, AsFedMass::fromKilograms(1), AsFedMass::fromTonnes(1e6), "mass");
        if (packed.packing.size() != situation.machines.size()) {
            checks.fault(fail(code::packingTimesMismatch, "packing",
                              static_cast<std::int64_t>(packed.packing.size()),
                              static_cast<std::int64_t>(situation.machines.size())));
        }
        for (std::size_t i = 0; i < packed.packing.size(); ++i) {
            const std::string field = indexed("packing", i);
            checks.hold(packed.packing[i].count(), 0.0, 1e8, field);
            checks.hold(packed.packing[i] / packed.mass, PackingIntensity{}, minutesPerTonne(1000), field);
        }
    }
}

void checkMachines(const Situation& situation, Checks& checks) {
    for (std::size_t i = 0; i < situation.machines.size(); ++i) {
        const Machine& machine = situation.machines[i];
        checks.hold(machine.mass, MachineMass::fromKilograms(100), MachineMass::fromTonnes(200),
                    indexed("machines", i, ".mass"));
        checks.hold(machine.share, Share{}, Share::fromFraction(1), indexed("machines", i, ".share"));
        if (machine.trackWidth) {
            checks.hold(*machine.trackWidth, Length::fromMetres(0.1), Length::fromMetres(10),
                        indexed("machines", i, ".trackWidth"));
        }
        if (machine.speed) {
            checks.hold(*machine.speed, Speed{}, Speed::fromKilometresPerHour(50),
                        indexed("machines", i, ".speed"));
        }
    }
}

// Evidence lies within e^2 of what was predicted; a survey is then corrected by how far cores and surveys lie
// apart, which is e^4 at most.
constexpr double kFarthestLevel = 6.0;

void checkOptions(const Options& options, Checks& checks) {
    checks.hold(options.effectiveLayers, 1.0, 1e6, "effectiveLayers");
    const Residual& residual = options.residual;
    checks.hold(residual.site, 0.0, 4.0, "residual.site")
        .hold(residual.silo, 0.0, 4.0, "residual.silo")
        .hold(residual.face, 0.0, 4.0, "residual.face")
        .hold(residual.layer, 0.0, 4.0, "residual.layer")
        .hold(residual.spot, 0.0, 4.0, "residual.spot")
        .hold(residual.ordinaryInputs, 0.0, 4.0, "residual.ordinaryInputs")
        .hold(residual.inputsCounted, 0.0, 4.0, "residual.inputsCounted")
        .hold(residual.varianceDoubt, 0.0, 16.0, "residual.varianceDoubt")
        .hold(residual.level, -kFarthestLevel, kFarthestLevel, "residual.level");
    const EntrySpread& entries = options.entries;
    checks.hold(entries.machineMass.value_or(0.0), 0.0, 2.0, "entries.machineMass")
        .hold(entries.layer.value_or(0.0), 0.0, 2.0, "entries.layer")
        .hold(entries.packingTime.value_or(0.0), 0.0, 2.0, "entries.packingTime")
        .hold(entries.loadMass.value_or(0.0), 0.0, 2.0, "entries.loadMass")
        .hold(entries.dryMatter.value_or(0.0), 0.0, 2.0, "entries.dryMatter");
}

using stats::square;

}  // namespace

double dryMatterLogSd(DryMatter dryMatter, DryMatter sd) noexcept {
    return std::hypot(kDryMatterMethodLogSd, sd / dryMatter);
}

Result<void> check(const Situation& situation, const Options& options) {
    Checks checks;
    checkWork(situation, checks);
    checks.hold(situation.dryMatter, DryMatter::fromPercent(10), DryMatter::fromPercent(90), "dryMatter");
    if (situation.layer) {
        checks.hold(*situation.layer, Length::fromCentimetres(1), Length::fromMetres(2), "layer");
    }
    checks.hold(situation.meanDepth, Length{}, Length::fromMetres(20), "meanDepth");
    checkMachines(situation, checks);
    checks.hold(situation.target.minimum, DryDensity::fromSi(1), DryDensity::fromSi(1000), "target.minimum");
    checks.hold(situation.target.porosity, Porosity{}, Porosity::fromFraction(0.99), "target.porosity");
    checkOptions(options, checks);
    return checks.result();
}

std::vector<MachineWork> machineWork(const Situation& situation) {
    std::vector<MachineWork> works;
    works.reserve(situation.machines.size());
    Share shares;
    for (const Machine& machine : situation.machines) shares += machine.share;
    for (std::size_t i = 0; i < situation.machines.size(); ++i) {
        const Machine& machine = situation.machines[i];
        PackingIntensity packing;
        if (const auto* rate = std::get_if<AsFedRate>(&situation.work)) {
            packing = PackingIntensity::fromSi(machine.share.fraction() / rate->si());
        } else if (const auto* time = std::get_if<PackingIntensity>(&situation.work)) {
            if (shares > Share{}) packing = *time * (machine.share / shares);
        } else {
            const auto& packed = std::get<PackedMass>(situation.work);
            packing = packed.packing[i] / packed.mass;
        }
        works.push_back({machine.mass, packing});
    }
    return works;
}

Length layerUsed(const Situation& situation) noexcept {
    return heldLayer(situation.layer.value_or(kAssumedLayer));
}

InputSpread inputSpread(const Situation& situation, const Options& options) noexcept {
    const double layer = situation.layer ? kLayerSeenLogSd : kLayerAssumedLogSd;
    return {.machineMass = options.entries.machineMass.value_or(kMachineMassLogSd),
            .layer = options.entries.layer.value_or(layer),
            .packingTime = options.entries.packingTime.value_or(kPackingTimeLogSd),
            .loadMass = options.entries.loadMass.value_or(0.0),
            .dryMatter =
                options.entries.dryMatter.value_or(dryMatterLogSd(situation.dryMatter, samples::kSampleSd))};
}

CaseFrame caseFrame(const Situation& situation, const Options& options) {
    const Target target = targetFor(situation.target, situation.dryMatter, situation.crop);
    const InputSpread inputs = inputSpread(situation, options);
    const SpreadParts fixed =
        fixedParts(options.residual, options.reading, options.effectiveLayers, situation.meanDepth);
    return {.dryMatter = situation.dryMatter.fraction(),
            .depthFactor =
                FieldEquation::meanFactor(situation.meanDepth.metres()) * std::exp(options.residual.level),
            .limit_kg_m3 = target.limit.density.si(),
            .logTarget = std::log(target.density.si()),
            .porosityGoverns = target.governs == Governs::porosity,
            .fixedVariance = fixed.total(),
            .ordinaryInputs = options.residual.ordinaryInputs,
            .inputsCounted = options.residual.inputsCounted,
            .varianceDoubt = options.residual.varianceDoubt,
            .wholeVariance = square(inputs.machineMass) + square(inputs.layer),
            .halfVariance = square(inputs.packingTime) + square(inputs.loadMass),
            .dryMatterVariance = square(inputs.dryMatter)};
}

}  // namespace treadwell::density
