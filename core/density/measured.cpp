#include "core/density/measured.h"

#include "core/crop/porosity.h"
#include "core/density/codes.h"
#include "core/density/field_equation.h"
#include "core/density/situation.h"
#include "core/packing/layers.h"
#include "core/season/dry_matter.h"
#include "core/season/rolling.h"
#include "core/stats/square.h"

#include <algorithm>
#include <cmath>

namespace treadwell::density {

namespace {

constexpr std::chrono::microseconds kTick{1};
/// Crop never lies much looser than it is tipped.
constexpr double kLoosestPart = 0.5;

using stats::square;

double slopeIntegral(double depth_m, double slope) {
    const double surface = 1.0 - slope * FieldEquation::kUnitDepth;
    return depth_m * (surface + 0.5 * slope * depth_m);
}

using Loads = std::vector<const season::LoadTipped*>;

double massVariance(const Loads& loads) {
    std::vector<packing::LayerLoad> whole;
    std::int64_t weighed = 0;
    for (const season::LoadTipped* load : loads) {
        whole.push_back({load, load->load.mass});
        weighed += load->load.source == entries::MassSource::weighed;
    }
    const packing::MassSpread spread = packing::massSpread(whole, weighed);
    return square(spread.common) + square(spread.own);
}

/// Collects the surveys of one silo.
class Surveyor {
  public:
    Surveyor(const season::Season& season, const farm::Silo& silo) : m_season{season}, m_silo{silo} {}

    void take(const season::Survey& survey) {
        MeasuredSilo measured{.survey = survey.entry, .at = survey.at};
        auto surface = surfaceOf(m_silo, survey.what.readings);
        if (!surface) {
            measured.reason = measured.placedReason = surface.error().message;
        } else {
            measured.surface = std::move(*surface);
            balanceWhole(measured);
            balancePlaced(measured);
        }
        m_measured.push_back(std::move(measured));
    }
    [[nodiscard]] std::vector<MeasuredSilo> result() && { return std::move(m_measured); }

  private:
    void balanceWhole(MeasuredSilo& measured) const {
        const Loads loads = season::loadsOf(m_season, m_silo.id, Instant{}, measured.at + kTick);
        MeasuredParts parts;
        parts.heights = square(measured.surface->volumeLogSd);
        if (auto balance = balanceOf(loads, measured.surface->volume, parts)) {
            measured.whole = std::move(*balance);
        } else {
            measured.reason = balance.error().message;
        }
    }

    void balancePlaced(MeasuredSilo& measured) const {
        const auto before = std::find_if(m_measured.rbegin(), m_measured.rend(),
                                         [](const MeasuredSilo& each) { return each.whole.has_value(); });
        if (before == m_measured.rend()) {
            measured.placed = measured.whole;
            measured.placedReason = measured.reason;
            return;
        }
        const Loads loads = season::loadsOf(m_season, m_silo.id, before->at + kTick, measured.at + kTick);
        MeasuredParts parts;
        const Volume volume = roomOf(*before->surface, *measured.surface, parts);
        if (auto balance = balanceOf(loads, volume, parts)) {
            measured.placed = std::move(*balance);
        } else {
            measured.placedReason = balance.error().message;
        }
    }

    /// The room of what was laid between two surveys, with the variances of its logarithm.
    static Volume roomOf(const Surface& below, const Surface& now, MeasuredParts& parts) {
        constexpr double kSlope = FieldEquation::kFactorSlope;
        double laid = 0.0, steeper = 0.0, covered = 0.0;
        for (std::size_t i = 0; i < now.height_m.size(); ++i) {
            const double thickness = laidThickness(below.height_m[i], now.height_m[i], kSlope);
            laid += thickness;
            steeper += laidThickness(below.height_m[i], now.height_m[i], 1.5 * kSlope);
            covered += thickness > 0.0;
        }
        if (!(laid > 0.0)) return {};
        const Volume room = now.cell() * Length::fromMetres(laid);
        // Both surfaces err; each moves the room by the factor at its height over that below what was laid.
        const double under = FieldEquation::factor(laid / std::max(1.0, covered));
        const auto moved = [&](const Surface& surface) {
            return surface.volumeLogSd * (surface.volume / room) *
                   FieldEquation::factor(surface.meanHeight.metres()) / under;
        };
        parts.heights = square(moved(below)) + square(moved(now));
        parts.settling = square(std::log(std::max(steeper, 1e-3 * laid) / laid));
        return room;
    }

    /// Completes `parts` by mass and dry matter.
    [[nodiscard]] Result<MassBalance> balanceOf(const Loads& loads, Volume volume,
                                                MeasuredParts parts) const {
        season::Delivered delivered;
        for (const season::LoadTipped* load : loads) delivered.add(*load);
        const auto dryMatter = season::meanDryMatter(loads);
        if (!dryMatter) return fail(code::surveyWithoutLoads, "loads");
        if (!(volume > Volume{})) return fail(code::surveyWithoutRoom, "readings", delivered.mass.amount());
        parts.mass = massVariance(loads);
        parts.dryMatter = square(dryMatterLogSd(dryMatter->mean, dryMatter->sd));

        const DryDensity density = delivered.dry / volume;
        const crop::Crop crop = m_season.farm().cropOf(loads.back()->load.field);
        const auto solids = crop::Solids::fromOrganicMatter(crop::factsOf(crop).organicMatter);
        const DryDensity highest = crop::poreFreeDensity(dryMatter->mean, solids);
        const DryDensity lowest = crop::factsOf(crop).loose * kLoosestPart;
        if (density < lowest || density > highest) {
            return fail(code::surveyImpossible, "readings", density.amount(), delivered.dry.amount(),
                        volume.amount(), lowest.amount(), highest.amount());
        }
        return MassBalance{
            delivered.loads,
            delivered.mass,
            delivered.dry,
            volume,
            Distribution{{density.si(), std::sqrt(parts.total())}, limitOf(dryMatter->mean, crop).density},
            parts};
    }

    const season::Season& m_season;
    const farm::Silo& m_silo;
    std::vector<MeasuredSilo> m_measured;
};

}  // namespace

std::vector<MeasuredSilo> measuredIn(const season::Season& season, const farm::Silo& silo, Instant now) {
    Surveyor surveyor{season, silo};
    for (const auto& day : season.days()) {
        for (const season::Survey& survey : day->surveys) {
            if (survey.what.silo == silo.id && survey.at <= now) surveyor.take(survey);
        }
    }
    return std::move(surveyor).result();
}

std::vector<Message> messagesOf(const MeasuredSilo& survey) {
    std::vector<Message> messages;
    if (survey.whole) {
        const Distribution& density = survey.whole->density;
        messages.push_back(
            {code::measuredWhole,
             {survey.at, density.median().amount(), density.low80().amount(), density.high80().amount()}});
    } else if (survey.reason) {
        messages.push_back(*survey.reason);
    }
    if (survey.placed && survey.whole && survey.placed->loads < survey.whole->loads) {
        const Distribution& density = survey.placed->density;
        messages.push_back(
            {code::measuredPlaced,
             {density.median().amount(), density.low80().amount(), density.high80().amount()}});
    } else if (survey.whole && survey.placedReason) {
        messages.push_back(*survey.placedReason);
    }
    return messages;
}

double laidThickness(double below_m, double now_m, double slope) noexcept {
    const double integral = slopeIntegral(now_m, slope) - slopeIntegral(below_m, slope);
    // The inverse of slopeIntegral(), odd so that the errors of readings without crop between them cancel.
    const double surface = 1.0 - slope * FieldEquation::kUnitDepth;
    const double size = std::abs(integral);
    const double thickness = 2.0 * size / (surface + std::sqrt(surface * surface + 2.0 * slope * size));
    return integral < 0.0 ? -thickness : thickness;
}

double logRatioVariance(const MeasuredParts& parts, double elasticity) noexcept {
    return square(1.0 + 0.5 * elasticity) * parts.mass + square(1.0 - 0.5 * elasticity) * parts.dryMatter +
           parts.heights + parts.settling;
}

}  // namespace treadwell::density
