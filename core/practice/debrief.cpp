#include "core/practice/debrief.h"

#include "core/density/regression.h"
#include "core/farm/site_rules.h"
#include "core/packing/passes.h"
#include "core/passes/replay.h"
#include "core/practice/codes.h"
#include "core/practice/limits.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace treadwell::practice {

namespace {

using attention::Caution;
using passes::Patch;

constexpr double kDensityPoints = 30, kCoveragePoints = 25, kEvennessPoints = 15, kMinutesPoints = 10,
                 kCautionPoints = 20;
/// Beside a wall, as definitions of the density field have it.
constexpr double kWallStrip_m = 0.5;
/// On 20 English farms the outer half metre had 0.72 of the density of the core (AHDB, published): told where
/// it is looser than that.
constexpr double kLooseWall = 0.72;
/// In the way of another, told from here on (assumed).
constexpr Seconds kClose{60.0};

/// Dry mass over volume as rolled, of the columns in a patch and all layers.
std::optional<double> rolledDensity(const passes::Pad& pad, const Patch& patch) {
    const auto middle_m = [&](std::size_t column) {
        return (static_cast<double>(column) + 0.5) * pad.shape.cellAlong.si();
    };
    std::size_t first = 0;
    while (first < pad.along && middle_m(first) < patch.x0_m) ++first;
    std::size_t end = first;
    while (end < pad.along && middle_m(end) < patch.x1_m) ++end;
    double mass = 0.0, volume = 0.0;
    for (std::size_t layer = 0; layer < pad.layers.size(); ++layer) {
        for (std::size_t row = 0; row < pad.across; ++row) {
            const double y_m = (static_cast<double>(row) + 0.5) * pad.shape.cellAcross.si();
            if (y_m < patch.y0_m || y_m >= patch.y1_m) continue;
            for (std::size_t column = first; column < end; ++column) {
                const std::size_t cell = pad.indexOf(layer, row, column);
                mass += pad.areal_kg_m2[cell];
                volume += pad.areal_kg_m2[cell] * pad.volume_m3_kg[cell];
            }
        }
    }
    if (volume <= 0.0) return std::nullopt;
    return mass / volume;
}

class Reader final {
  public:
    explicit Reader(const LessonRun& run)
        : m_run{run}, m_lesson{run.lesson()}, m_plan{run.plan()}, m_pad{run.pad()} {
        for (std::size_t layer = 0; layer < m_pad.layers.size(); ++layer) {
            m_layers.push_back(passes::coverageOf(m_pad, layer));
        }
        const auto count = static_cast<double>(std::max<std::size_t>(1, m_layers.size()));
        double unrolled = 0.0, three = 0.0;
        for (const passes::Coverage& layer : m_layers) {
            m_mean.meanPasses += layer.meanPasses / count;
            m_mean.variation += layer.variation / count;
            unrolled += layer.unrolled.fraction() / count;
            three += layer.threeOrMore.fraction() / count;
        }
        m_mean.unrolled = Share::fromFraction(unrolled);
        m_mean.threeOrMore = Share::fromFraction(three);
        m_density_kg_m3 = rolledDensity(m_pad, whole()).value_or(m_lesson.pad.loose.si());
    }

    Debrief read() {
        findings();
        const DryDensity limit = DryDensity::fromSi(
            m_pad.layers.empty() ? m_lesson.pad.loose.si() : 1.0 / m_pad.layers.front().saturated_m3_kg);
        const double sigma =
            std::hypot(density::fieldRegression().residualLogSd.value(), passes::kSimulationLogSd);
        Debrief debrief{0.0, {}, {}, m_lesson.cautions, {{m_density_kg_m3, sigma}, limit}, m_mean};
        score(debrief);
        std::stable_sort(m_findings.begin(), m_findings.end(),
                         [](const Finding& a, const Finding& b) { return a.weight > b.weight; });
        for (const Finding& finding : m_findings) {
            auto& all = debrief.cautions;
            if (finding.caution && std::find(all.begin(), all.end(), *finding.caution) == all.end()) {
                all.push_back(*finding.caution);
            }
        }
        debrief.findings = std::move(m_findings);
        return debrief;
    }

  private:
    [[nodiscard]] Patch whole() const { return {0.0, m_pad.shape.length.si(), 0.0, m_pad.shape.width.si()}; }

    void tell(double weight, Message message, std::optional<Patch> place = {},
              std::optional<Caution> caution = {}) {
        m_findings.push_back({std::move(message), place, caution, weight});
    }

    void findings() {
        const farm::SiteRules usual;
        if (m_plan.layer > usual.maximumLayer) {
            tell(m_plan.layer / usual.maximumLayer,
                 {code::debriefLayerThick, {m_plan.layer.layerAmount(), usual.maximumLayer.layerAmount()}});
        }
        walls();
        if (m_mean.unrolled.fraction() > kUnrolled) {
            tell(2.0 + m_mean.unrolled.fraction(), {code::debriefUnrolled, {m_mean.unrolled.amount()}},
                 loosestStrip());
        }
        if (m_mean.meanPasses < packing::kLeastPasses) {
            tell(2.0, {code::debriefFewPasses, {m_mean.meanPasses, packing::kLeastPasses}});
        }
        if (m_plan.speed > kHurried) {
            tell(1.5, {code::debriefTooFast, {m_plan.speed.amount(), packing::kUsualSpeed.amount()}});
        }
        outrun();
        behaviour();
    }

    void walls() {
        const double width_m = m_pad.shape.width.si(), length_m = m_pad.shape.length.si();
        const Patch left{0.0, length_m, 0.0, kWallStrip_m},
            right{0.0, length_m, width_m - kWallStrip_m, width_m};
        const Patch middle{0.0, length_m, 0.25 * width_m, 0.75 * width_m};
        const auto centre = rolledDensity(m_pad, middle);
        for (const auto& [wall, text] :
             {std::pair{left, code::debriefLeftWallLoose}, std::pair{right, code::debriefRightWallLoose}}) {
            const auto density = rolledDensity(m_pad, wall);
            if (!centre || !density || *density > kLooseWall * *centre) continue;
            tell(1.0 + *centre / *density,
                 {text,
                  {DryDensity::fromSi(*density).amount(), DryDensity::fromSi(*centre).amount(),
                   Length::fromMetres(kWallStrip_m).amount()}},
                 wall);
        }
    }

    /// The tenth of the width, or of the length, that lies loosest.
    [[nodiscard]] Patch loosestStrip() const {
        const double width_m = m_pad.shape.width.si() / 10.0, length_m = m_pad.shape.length.si() / 10.0;
        Patch loosest = whole();
        double least = std::numeric_limits<double>::infinity();
        for (int i = 0; i < 10; ++i) {
            const Patch lane{0.0, 10.0 * length_m, i * width_m, (i + 1) * width_m};
            const Patch belt{i * length_m, (i + 1) * length_m, 0.0, 10.0 * width_m};
            for (const Patch& strip : {lane, belt}) {
                const auto density = rolledDensity(m_pad, strip);
                if (!density || *density >= least) continue;
                least = *density;
                loosest = strip;
            }
        }
        return loosest;
    }

    /// The later layers got far fewer passes than the first ones; the very last is still under the wheels.
    void outrun() {
        const std::size_t third = m_layers.size() / 3;
        if (third == 0) return;
        double first = 0.0, last = 0.0;
        for (std::size_t i = 0; i < third; ++i) {
            first += m_layers[i].meanPasses;
            last += m_layers[m_layers.size() - 2 - i].meanPasses;
        }
        if (first <= 0.0 || last > kOutrun * first) return;
        const auto count = static_cast<double>(third);
        tell(2.5, {code::debriefOutrun, {first / count, last / count}});
    }

    void behaviour() {
        const auto* ramp = std::get_if<Amount>(&*attention::factsOf(Caution::rampSlope).limit);
        if (ramp != nullptr && m_plan.ramp.runPerRise() < ramp->si) {
            tell(4.0, {code::debriefRampSteep, {m_plan.ramp.amount(), *ramp}}, {}, Caution::rampSlope);
        }
        if (m_run.facts().beside.count() > 0.0) {
            tell(5.0, {code::debriefPeople, {durationAmount(m_run.facts().beside)}}, {},
                 Caution::peopleOnFoot);
        }
        if (!m_plan.oneWay && m_run.facts().tractors > 1) {
            tell(3.0, {code::debriefTraffic, {static_cast<std::int64_t>(m_run.facts().tractors)}}, {},
                 Caution::workingWidth);
        }
        if (m_run.facts().close > kClose) {
            tell(3.5, {code::debriefClose, {durationAmount(m_run.facts().close)}}, {}, Caution::workingWidth);
        }
        if (m_lesson.dark && !m_plan.lights) {
            tell(4.5, {code::debriefDark, {}}, {}, Caution::peopleOnFoot);
        }
    }

    void score(Debrief& debrief) const {
        const LessonGoal& goal = m_lesson.goal;
        const auto give = [&](ScorePart part, double share, double most, Message why) {
            const double points = most * std::clamp(share, 0.0, 1.0);
            debrief.points.push_back({part, points, most, std::move(why)});
            debrief.score += points;
        };
        const double goal_kg_m3 = goal.density.si();
        give(ScorePart::density, (m_density_kg_m3 / goal_kg_m3 - 0.8) / 0.2, kDensityPoints,
             {code::scoreDensity, {DryDensity::fromSi(m_density_kg_m3).amount(), goal.density.amount()}});
        give(ScorePart::coverage,
             goal.threePasses.si() > 0.0 ? m_mean.threeOrMore.si() / goal.threePasses.si() : 1.0,
             kCoveragePoints,
             {code::scoreCoverage, {m_mean.threeOrMore.amount(), goal.threePasses.amount()}});
        give(
            ScorePart::evenness, 1.5 - 0.5 * m_mean.variation / goal.variation, kEvennessPoints,
            {code::scoreEvenness,
             {Share::fromFraction(m_mean.variation).amount(), Share::fromFraction(goal.variation).amount()}});
        // Twice as many passes as are worth it: no points.
        const double enough = 2.5 * packing::kLeastPasses;
        give(ScorePart::minutes, 2.0 - m_mean.meanPasses / enough, kMinutesPoints,
             {code::scoreMinutes, {durationAmount(m_run.facts().rolled), m_mean.meanPasses}});
        const auto broken = std::count_if(m_findings.begin(), m_findings.end(),
                                          [](const Finding& finding) { return finding.caution.has_value(); });
        give(ScorePart::cautions, std::pow(0.5, static_cast<double>(broken)), kCautionPoints,
             {code::scoreCautions, {static_cast<std::int64_t>(broken)}});
    }

    const LessonRun& m_run;
    const Lesson& m_lesson;
    const Plan& m_plan;
    const passes::Pad& m_pad;
    std::vector<passes::Coverage> m_layers;
    passes::Coverage m_mean;
    double m_density_kg_m3;
    std::vector<Finding> m_findings;
};

}  // namespace

Debrief debriefOf(const LessonRun& run) {
    return Reader{run}.read();
}

std::vector<Message> cautionTexts(const LessonRun& run, const std::vector<Caution>& cautions) {
    farm::Silo silo;
    silo.length = run.lesson().pad.length;
    silo.width = run.lesson().pad.width;
    silo.rampSlope = run.plan().ramp;
    std::vector<Message> texts;
    for (const attention::CautionNow& now : attention::cautionsFor(silo, {}, Instant{})) {
        if (std::find(cautions.begin(), cautions.end(), now.caution) != cautions.end())
            texts.push_back(now.message);
    }
    texts.push_back(attention::standingText());
    return texts;
}

}  // namespace treadwell::practice
