#include "core/density/doubts.h"

#include "core/density/codes.h"
#include "core/density/measured.h"
#include "core/stats/square.h"

#include <algorithm>
#include <cmath>

namespace treadwell::density {

namespace {

constexpr double kLeastFall = 0.04;  ///< of the variance (2 % of the band) that a measurement must bring

using stats::square;

/// One independent error: its variance, what it does to ln(density) and what heights see of it.
struct DoubtPart {
    DoubtOf of;
    double variance;
    double weight = 1.0;
    double seenByHeights = 1.0;
    /// Variance and own error of what a measurement of it alone would find.
    double measurable = 0.0;
};

class Splitter {
  public:
    Splitter(const Situation& situation, const Options& options, const Estimate& estimate,
             const EntriesBehind& behind)
        : m_situation{situation}, m_options{options}, m_estimate{estimate}, m_behind{behind} {
        addFixed();
        addEntries();
        for (const DoubtPart& error : m_errors) m_total += effect(error);
    }

    [[nodiscard]] Doubts split() const {
        Doubts doubts;
        for (const DoubtPart& error : m_errors) {
            if (!(error.variance > 0.0)) continue;
            const double share = effect(error) / m_total;
            doubts.parts.push_back({error.of, effect(error), share, named(error.of, share)});
        }
        std::stable_sort(doubts.parts.begin(), doubts.parts.end(),
                         [](const Doubt& a, const Doubt& b) { return a.variance > b.variance; });
        rank(doubts);
        return doubts;
    }

  private:
    [[nodiscard]] static double effect(const DoubtPart& error) {
        return square(error.weight) * error.variance;
    }

    void addFixed() {
        const SpreadParts& spread = m_estimate.spread;
        m_errors.push_back({DoubtOf::site, spread[SpreadPart::site]});
        m_errors.push_back({DoubtOf::silo, spread[SpreadPart::silo]});
        // Heights measure the whole; what one place or depth differs from it they do not see.
        const auto unseen = [&](DoubtOf of, SpreadPart part) {
            m_errors.push_back({of, spread[part], 1.0, 0.0});
        };
        unseen(DoubtOf::face, SpreadPart::face);
        unseen(DoubtOf::place, SpreadPart::place);
        unseen(DoubtOf::depthSlope, SpreadPart::depthSlope);
    }

    void addEntries() {
        const InputSpread spread = inputSpread(m_situation, m_options);
        const double s = m_estimate.elasticity;
        m_errors.push_back({DoubtOf::machineMass, square(spread.machineMass), s, s, 1.0});
        m_errors.push_back({DoubtOf::layer, square(spread.layer), -s, -s, 1.0});
        m_errors.push_back({DoubtOf::packingTime, square(spread.packingTime), 0.5 * s, 0.5 * s});
        m_errors.push_back({DoubtOf::loadMass, square(spread.loadMass), 0.5 * s, 1.0 + 0.5 * s, 1.0});
        const double sampling = std::max(0.0, square(spread.dryMatter) - square(kDryMatterMethodLogSd));
        m_errors.push_back({DoubtOf::dryMatter, square(spread.dryMatter), -0.5 * s, 1.0 - 0.5 * s,
                            sampling / std::max(square(spread.dryMatter), 1e-12)});
        const double all = m_estimate.spread[SpreadPart::ordinaryInputs] +
                           m_estimate.spread[SpreadPart::inputsBeyondOrdinary];
        double named = 0.0;
        const auto isEntry = [](const DoubtPart& error) { return error.of >= DoubtOf::machineMass; };
        for (const DoubtPart& error : m_errors) {
            if (isEntry(error)) named += effect(error);
        }
        // What was measured has told of the entries' errors too: each has lost its part.
        const double left = named > all ? all / named : 1.0;
        for (DoubtPart& error : m_errors) {
            if (isEntry(error)) error.variance *= left;
        }
        m_errors.push_back({DoubtOf::otherEntries, std::max(0.0, all - named)});
    }

    [[nodiscard]] Message named(DoubtOf of, double share) const {
        std::vector<Argument> arguments{Share::fromFraction(share).amount()};
        switch (of) {
            case DoubtOf::site:
                return {code::doubtSite, arguments};
            case DoubtOf::silo:
                return {code::doubtSilo, arguments};
            case DoubtOf::face:
                return {code::doubtFace, arguments};
            case DoubtOf::place:
                return {code::doubtPlace, arguments};
            case DoubtOf::depthSlope:
                return {code::doubtDepthSlope, arguments};
            case DoubtOf::machineMass:
                return {code::doubtMachineMass, arguments};
            case DoubtOf::layer:
                if (!m_situation.layer) return {code::doubtLayerAssumed, arguments};
                return named(code::doubtLayerSeen, code::doubtLayer, m_behind.layer, std::move(arguments));
            case DoubtOf::packingTime:
                return {code::doubtPackingTime, arguments};
            case DoubtOf::loadMass:
                return {code::doubtLoadMass, arguments};
            case DoubtOf::dryMatter:
                return named(code::doubtSample, code::doubtDryMatter, m_behind.sample, std::move(arguments));
            case DoubtOf::otherEntries:
                break;
        }
        return {code::doubtOtherEntries, arguments};
    }
    [[nodiscard]] static Message named(Code dated, Code undated, std::optional<Instant> at,
                                       std::vector<Argument> arguments) {
        if (!at) return {undated, std::move(arguments)};
        arguments.emplace_back(*at);
        return {dated, std::move(arguments)};
    }

    void rank(Doubts& doubts) const {
        const auto add = [&](Measurement measurement, double fall, Code code, std::vector<Argument> first) {
            if (!(fall >= kLeastFall * m_total)) return;
            const double after = std::sqrt(std::max(0.0, m_total - fall));
            first.emplace_back(halfBand(std::sqrt(m_total)).amount());
            first.emplace_back(halfBand(after).amount());
            doubts.next.push_back({measurement, fall, after, {code, std::move(first)}});
        };
        if (!m_behind.heightsRead) {
            add(Measurement::heights, fallByHeights(), code::measureHeights, {kHeightsToRead});
        }
        const double sample = square(samples::kSampleSd / m_situation.dryMatter);
        add(Measurement::dryMatterSample, fallOf(DoubtOf::dryMatter, sample), code::measureDryMatter, {});
        add(Measurement::layerThickness, fallOf(DoubtOf::layer, square(kLayerSeenLogSd)), code::measureLayer,
            {});
        add(Measurement::tractorWeights, fallOf(DoubtOf::machineMass, square(kWeighbridgeLogSd)),
            code::measureTractors, {});
        add(Measurement::loadWeights,
            fallOf(DoubtOf::loadMass, square(crop::kLooseLoadLogSd) / static_cast<double>(kLoadsToWeigh)),
            code::measureLoads, {kLoadsToWeigh});
        std::stable_sort(doubts.next.begin(), doubts.next.end(), [](const Narrowing& a, const Narrowing& b) {
            return a.varianceFall > b.varianceFall;
        });
    }

    [[nodiscard]] double fallByHeights() const {
        const Length height = m_behind.height.value_or(m_situation.meanDepth);
        if (!(height > Length{})) return 0.0;
        double common = 0.0;
        double seen = square(volumeLogSdOf(kHeightsToRead, height)) + square(kMassBalanceLogSd) +
                      square(kToOpeningLogSd);
        for (const DoubtPart& error : m_errors) {
            common += error.weight * error.seenByHeights * error.variance;
            seen += square(error.seenByHeights) * error.variance;
        }
        return square(common) / seen;
    }

    /// By a measurement with the variance `own` of that error alone.
    [[nodiscard]] double fallOf(DoubtOf of, double own) const {
        const auto found = std::find_if(m_errors.begin(), m_errors.end(),
                                        [of](const DoubtPart& error) { return error.of == of; });
        const double variance = found->variance * found->measurable;
        return variance > 0.0 ? square(found->weight * variance) / (variance + own) : 0.0;
    }

    [[nodiscard]] DryDensity halfBand(double sigma) const {
        return m_estimate.density.median() * std::sinh(m_estimate.density.halfBand80() * sigma);
    }

    const Situation& m_situation;
    const Options& m_options;
    const Estimate& m_estimate;
    const EntriesBehind& m_behind;
    std::vector<DoubtPart> m_errors;
    double m_total = 0.0;
};

}  // namespace

Doubts doubtsOf(const Situation& situation, const Options& options, const Estimate& estimate,
                const EntriesBehind& behind) {
    return Splitter{situation, options, estimate, behind}.split();
}

}  // namespace treadwell::density
