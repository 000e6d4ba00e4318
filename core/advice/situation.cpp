#include "core/advice/situation.h"

#include "core/advice/codes.h"
#include "core/base/codes.h"
#include "core/base/number_text.h"
#include "core/quantity/range.h"

#include <set>

namespace treadwell::advice {

namespace {

Result<void> checkTractors(const std::vector<Tractor>& tractors) {
    std::set<std::string_view> names;
    for (std::size_t i = 0; i < tractors.size(); ++i) {
        const Tractor& tractor = tractors[i];
        const std::string field = "tractors[" + shortestText(static_cast<double>(i)) + ']';
        if (tractor.name.empty()) return fail(code::textEmpty, field + ".name");
        if (!names.insert(tractor.name).second) {
            return fail(code::tractorNameTwice, field + ".name", tractor.name);
        }
        if (!tractor.hourlyCost) continue;
        const auto cost =
            within(*tractor.hourlyCost, CostRate{}, CostRate::fromPerHour(2000), field + ".hourlyCost");
        if (!cost) return tl::unexpected{cost.error()};
    }
    return {};
}

}  // namespace

density::Situation densitySituation(const AdviceSituation& situation) {
    density::Situation density{.work = situation.delivery,
                               .dryMatter = situation.dryMatter,
                               .layer = situation.layer,
                               .meanDepth = situation.meanDepth,
                               .machines = {},
                               .crop = situation.crop,
                               .target = situation.target};
    density.machines.reserve(situation.tractors.size());
    for (const Tractor& tractor : situation.tractors) {
        const bool packs = tractor.activity == farm::Activity::packing;
        density.machines.push_back({.mass = tractor.mass,
                                    .share = packs ? tractor.share : Share{},
                                    .trackWidth = tractor.trackWidth,
                                    .speed = tractor.speed});
    }
    return density;
}

Result<void> check(const AdviceSituation& situation) {
    if (auto density = density::check(densitySituation(situation), situation.options); !density) {
        return density;
    }
    if (auto tractors = checkTractors(situation.tractors); !tractors) return tractors;
    const auto chance =
        within(situation.wantedChance, Chance::fromPercent(5), Chance::fromPercent(99), "wantedChance");
    if (!chance) return tl::unexpected{chance.error()};
    const auto layer = within(situation.maximumLayer, Length::fromCentimetres(5), Length::fromCentimetres(40),
                              "maximumLayer");
    if (!layer) return tl::unexpected{layer.error()};
    return {};
}

}  // namespace treadwell::advice
