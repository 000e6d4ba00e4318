#include "core/plan/feeds.h"

#include "core/base/codes.h"
#include "core/farm/geometry.h"
#include "core/outcome/effluent.h"
#include "core/plan/seals.h"

#include <algorithm>
#include <cmath>

namespace treadwell::plan {

namespace {

constexpr std::chrono::days kGas{21};
constexpr double kLongest_days = 3650.0;

Area faceOf(const farm::Shape& shape) {
    if (shape.kind == farm::ShapeKind::pile)
        return shape.height * (shape.width - shape.height * shape.rampSlope.runPerRise());
    const Length wall = std::min(shape.height, shape.wallHeight);
    return farm::crownedSection(shape.width, wall, shape.height - wall, farm::kCrownSide);
}

Length widthOf(Area face, Length height) {
    return Length::fromSi(face.si() / height.si());
}

int slowDaysOf(const Feed& feed, const Feeding& feeding) {
    int slow = 0;
    for (LocalDay day = feed.opens; day != feed.empty; day = dayAfter(day)) {
        if (feed.advance < feeding.leastAdvance(day)) ++slow;
    }
    return slow;
}

}  // namespace

Result<FeedPlan> feedsOf(const Inputs& inputs) {
    using std::chrono::local_days;
    const auto fit = fitOf(inputs);
    if (!fit) return Unexpected{fit.error()};
    const auto effluent = outcome::effluent_L_per_t(inputs.dryMatter);
    if (!effluent) return Unexpected{effluent.error()};
    const std::vector<LocalDay> full = daysFull(inputs, *fit);
    const Feeding& feeding = inputs.feeding;
    FeedPlan plan;
    for (std::size_t i = 0; i < fit->silos.size(); ++i) {
        const SiloFit& silo = fit->silos[i];
        if (!(silo.placed > AsFedMass{})) continue;
        Feed feed;
        feed.silo = silo.name;
        feed.face = faceOf(inputs.silos[i].shape);
        const DryDensity density = silo.density.median();
        feed.summerFace = outcome::largestFace(feeding.daily, density, feeding.summerAdvance);
        feed.winterFace = outcome::largestFace(feeding.daily, density, feeding.winterAdvance);
        feed.summerWidth = widthOf(feed.summerFace, inputs.silos[i].shape.height);
        feed.winterWidth = widthOf(feed.winterFace, inputs.silos[i].shape.height);
        feed.advance = outcome::advanceOf(feeding.daily, density, feed.face);
        feed.left = silo.placed * inputs.dryMatter * (1.0 - inputs.prices.lossLevel.fraction());
        feed.days = feed.left / feeding.daily;
        if (feed.days > kLongest_days) {
            return fail(code::valueOutOfRange, "feeding.daily", feeding.daily.amount(),
                        (feed.left / kLongest_days).amount(), DryMass::fromTonnes(500).amount());
        }
        feed.effluent_L = *effluent * silo.placed.tonnes();
        feed.gasUntil = LocalDay{local_days{full[i]} + kGas};
        const local_days ready = local_days{full[i]} + std::chrono::days{feeding.closedDays};
        const local_days wanted = plan.silos.empty() ? ready : local_days{plan.silos.back().empty};
        plan.daysWithout += static_cast<int>(std::max(ready - wanted, std::chrono::days{0}).count());
        feed.opens = LocalDay{std::max(ready, wanted)};
        feed.empty = LocalDay{local_days{feed.opens} + std::chrono::days{static_cast<int>(feed.days)}};
        feed.slowDays = slowDaysOf(feed, feeding);
        plan.silos.push_back(feed);
    }
    return plan;
}

}  // namespace treadwell::plan
