#include "core/face/feeding.h"

#include "core/quantity/range.h"
#include "core/stats/normal.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace treadwell::face {

namespace {

constexpr int kDaysAhead = 7;
constexpr int kHalvings = 50;
constexpr int kAlong = 5;  ///< places looked at within a day's cut
constexpr int kUp = 24;

LocalDay later(LocalDay day, std::int64_t days) {
    return LocalDay{std::chrono::local_days{day} + std::chrono::days{days}};
}

/// The crop between the back wall and the face.
class Silo {
  public:
    Silo(const season::Season& season, const density::SiloLayers& layers, const density::Field& field,
         std::optional<Length> face)
        : m_season{season}, m_layers{layers}, m_field{field}, m_whole{field.whole()} {
        if (face) m_whole.high.along = std::clamp(*face, Length{}, m_whole.high.along);
    }

    [[nodiscard]] DryMass dry() const { return before(Length{}); }

    /// Where the face stands once `dry` has gone from it; the back wall where that is all.
    [[nodiscard]] Length faceAfter(DryMass dry) const {
        double low = 0.0, high = m_whole.high.along.metres();
        for (int i = 0; i < kHalvings; ++i) {
            const double middle = 0.5 * (low + high);
            (before(Length::fromMetres(middle)) > dry ? low : high) = middle;
        }
        return Length::fromMetres(high);
    }

    [[nodiscard]] std::optional<FeedDay> cut(LocalDay day, Length from, Length to) const {
        const auto mean = m_field.mean(between(to, from));
        if (!mean) return std::nullopt;
        FeedDay fed{day, from, to, {}, mean->density, mean->density.median()};
        std::set<LocalDay> laid;
        for (int i = 0; i < kAlong; ++i) {
            const Length along = to + (from - to) * ((i + 0.5) / kAlong);
            for (int j = 0; j < kUp; ++j) {
                const Length up = m_field.surface(along) * ((j + 0.5) / kUp);
                const auto point = m_field.at({along, up, m_whole.high.across * 0.5});
                if (!point) continue;
                laid.insert(m_season.zone().dayOf(m_layers.layers[point->layer].layer->begin));
                fed.loosest = std::min(fed.loosest, point->density.median());
            }
        }
        fed.laid.assign(laid.begin(), laid.end());
        return fed;
    }

  private:
    [[nodiscard]] density::Box between(Length low, Length high) const {
        density::Box box = m_whole;
        box.low.along = low;
        box.high.along = high;
        return box;
    }
    [[nodiscard]] DryMass before(Length face) const {
        const auto mean = m_field.mean(between(face, m_whole.high.along));
        return mean ? mean->dry : DryMass{};
    }

    const season::Season& m_season;
    const density::SiloLayers& m_layers;
    const density::Field& m_field;
    density::Box m_whole;
};

Result<void> check(const FeedPlan& plan) {
    return firstFailure(
        holdsWithin(plan.perDay, AsFedMass::fromTonnes(0.01), AsFedMass::fromTonnes(500), "perDay"),
        holdsWithin(plan.dryMatter, DryMatter::fromPercent(10), DryMatter::fromPercent(90), "dryMatter"),
        holdsWithin(plan.loss, Loss{}, Loss::fromPercent(60), "loss"),
        holdsWithin(plan.lowLoss, Loss{}, plan.loss, "loss"),
        holdsWithin(plan.highLoss, plan.loss, Loss::fromPercent(60), "loss"));
}

constexpr double kRounding = 1e-6;  ///< of a day

/// A part of a day counts as one on which there is feed.
LocalDay lastDay(LocalDay from, double days) {
    return later(from, std::max<std::int64_t>(0, static_cast<std::int64_t>(std::ceil(days - kRounding)) - 1));
}

}  // namespace

Result<FeedOut> feedOutOf(const season::Season& season, const density::SiloLayers& layers,
                          const density::Field& field, const FeedPlan& plan, LocalDay week) {
    if (const auto valid = check(plan); !valid) return Unexpected{valid.error()};
    const Silo silo{season, layers, field, plan.face};
    const DryMass placed = silo.dry(), perDay = plan.perDay * plan.dryMatter;
    const auto left = [](Loss loss) { return 1.0 - loss.fraction(); };
    FeedOut out;
    out.placed = placed;
    out.toFeed = placed * left(plan.loss);
    out.days = out.toFeed / perDay;
    const auto daysBy = [&](Loss loss, double side) {
        const double ofLoss = std::log(left(loss) / left(plan.loss));
        const double ofMass = stats::kHalfBand80 * kPlacedLogSd;
        return out.days * std::exp(side * std::hypot(ofLoss, ofMass));
    };
    out.end = lastDay(plan.from, out.days);
    out.earlyEnd = lastDay(plan.from, daysBy(plan.highLoss, -1.0));
    out.lateEnd = lastDay(plan.from, daysBy(plan.lowLoss, 1.0));
    const auto first = (std::chrono::local_days{week} - std::chrono::local_days{plan.from}).count();
    const auto faceOn = [&](std::int64_t day) {
        return silo.faceAfter(perDay * (static_cast<double>(day) / left(plan.loss)));
    };
    for (std::int64_t day = std::max<std::int64_t>(0, first);
         day < std::max<std::int64_t>(0, first) + kDaysAhead; ++day) {
        if (static_cast<double>(day) >= out.days - kRounding) break;
        auto fed = silo.cut(later(plan.from, day), faceOn(day), faceOn(day + 1));
        if (fed) out.coming.push_back(*std::move(fed));
    }
    return out;
}

Result<Balance> balanceOf(AsFedMass massIn, DryMass dryIn, AsFedMass massOut, DryMass dryOut) {
    const auto atMost = [](AsFedMass mass) { return DryMass::fromKilograms(mass.kilograms()); };
    const auto valid =
        firstFailure(holdsWithin(massIn, AsFedMass::fromTonnes(0.01), AsFedMass::fromTonnes(1e6), "massIn"),
                     holdsWithin(massOut, AsFedMass{}, massIn, "massOut"),
                     holdsWithin(dryIn, DryMass::fromKilograms(1e-3), atMost(massIn), "dryIn"),
                     holdsWithin(dryOut, DryMass{}, std::min(dryIn, atMost(massOut)), "dryOut"));
    if (!valid) return Unexpected{valid.error()};
    return Balance{Shrink::fromFraction(1.0 - massOut / massIn), Loss::fromFraction(1.0 - dryOut / dryIn)};
}

}  // namespace treadwell::face
